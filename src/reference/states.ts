/** US states and territories, and which of them run their own plan. */
import { z } from 'zod';
import stateFile from '#shared/states/states.json';
import { period } from './dated.ts';
import { readOnce, source } from './source.ts';

const state = z.strictObject({
  code: z.string().regex(/^[A-Z]{2}$/),
  name: z.string(),
  plan: z.enum(['none', 'publicOnly', 'privateAndPublic']),
  limitSetId: z.string().nullable(),
  source,
});
export type State = z.infer<typeof state>;

export const statesFile = z.strictObject({ effective: period, states: z.array(state) });

const read = readOnce(statesFile, stateFile);

/** For choosing a site's state. */
export const states = (): readonly State[] => read().states;

export const stateByCode = (code: string): State | undefined => read().states.find((one) => one.code === code);
