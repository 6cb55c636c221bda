/** Analytical methods for lead in air: of each, exactly what could be verified. What was not read is null. */
import { z } from 'zod';
import nmam7082 from '#shared/methods/niosh-7082.json';
import nmam7105 from '#shared/methods/niosh-7105.json';
import nmam7300 from '#shared/methods/niosh-7300.json';
import nmam7301 from '#shared/methods/niosh-7301.json';
import nmam7303 from '#shared/methods/niosh-7303.json';
import nmam7702 from '#shared/methods/niosh-7702.json';
import id121 from '#shared/methods/osha-id121.json';
import id125g from '#shared/methods/osha-id125g.json';
import { period } from './dated.ts';
import { quantity, range, readOnce, source } from './source.ts';

const said = z.strictObject({ text: z.string(), source });

export const methodFile = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  title: z.string(),
  issue: z.string(),
  technique: z.enum(['flameAas', 'furnaceAas', 'icp', 'xrf', 'aas']),
  effective: period,
  filter: said.nullable(),
  flow: range('L/min').nullable().describe('Flow that the method allows'),
  flowRecommended: quantity('L/min').nullable(),
  volume: range('L').nullable().describe('Sampled volume that the method allows'),
  volumeFor: said.nullable().describe('What the least volume is for'),
  twaVolume: range('L').nullable().describe('Volume recommended for a time-weighted average'),
  upToHours: quantity('h').nullable(),
  maxLoad: quantity('mg').nullable().describe('Total dust on the filter'),
  fieldBlanks: range('').nullable().describe('Per set'),
  detectionLimit: quantity('µg').nullable().describe('Per sample'),
  workingRange: range('µg').nullable().describe('Per sample'),
  accuracy: quantity('%').nullable(),
  shipping: said.nullable(),
  inLine: said.nullable(),
});
export type Method = z.infer<typeof methodFile>;

const held = [nmam7082, nmam7105, nmam7300, nmam7301, nmam7303, nmam7702, id121, id125g].map((file) =>
  readOnce(methodFile, file),
);

export const methods = (): readonly Method[] => held.map((read) => read());

export const methodById = (id: string): Method | undefined => methods().find((method) => method.id === id);
