/**
 * A fact: something that happened, in the trade's own past tense. Its text (one line of JSON) is what is stored, hashed, backed up
 * and handed over, byte for byte; it is never rewritten. Unknown kinds and keys are carried.
 */
import { z } from 'zod';
import { factId, instant, note, recordId, recordKey, text } from './common.ts';
import { boxFacts } from './facts/box.ts';
import { correctionFacts } from './facts/corrections.ts';
import { dutyFacts } from './facts/duties.ts';
import { gearFacts } from './facts/gear.ts';
import { keepingFacts } from './facts/keeping.ts';
import { measurementFacts } from './facts/measurement.ts';
import { moneyFacts } from './facts/money.ts';
import { registerFacts } from './facts/registers.ts';
import { resultFacts } from './facts/result.ts';
import { rosterFacts } from './facts/roster.ts';
import { sampleFacts } from './facts/sample.ts';
import { seasonFacts } from './facts/season.ts';
import { shiftFacts } from './facts/shift.ts';
import { tellingFacts } from './facts/telling.ts';
import { workdayFacts } from './facts/workday.ts';

/** Every kind this version understands: name -> schema of the body. */
export const factBodies = {
  ...registerFacts,
  ...shiftFacts,
  ...sampleFacts,
  ...workdayFacts,
  ...resultFacts,
  ...boxFacts,
  ...correctionFacts,
  ...keepingFacts,
  ...rosterFacts,
  ...measurementFacts,
  ...tellingFacts,
  ...dutyFacts,
  ...seasonFacts,
  ...gearFacts,
  ...moneyFacts,
} as const;

export type FactKind = keyof typeof factBodies;
export type FactBody<K extends FactKind> = z.infer<(typeof factBodies)[K]>;

/** When it happened (the domain uses this) and how we know. */
export const happened = z.looseObject({
  at: instant,
  zone: text.describe('IANA zone of the site'),
  offsetMin: z.number().int().min(-900).max(900).describe('Minutes ahead of UTC at that instant'),
  entry: z.enum(['tapped', 'typed']).describe('Tapped at the moment, or typed afterwards from a watch or paper'),
  from: text.nullable().describe('Typed afterwards: from what, by whom'),
});
export type Happened = z.infer<typeof happened>;

export const envelope = z.looseObject({
  id: factId,
  kind: z.string().regex(/^[a-zA-Z]+\.v\d+$/),
  about: z.array(recordKey).min(1).max(40).describe('The records this fact touches'),
  happened,
  recorded: z
    .string()
    .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z-[0-9a-f]{4}$/)
    .describe('Hybrid logical clock: wall time and counter. Only breaks ties'),
  by: recordId.nullable().describe('Who held the device'),
  why: note.nullable(),
  mustUnderstand: z.boolean().optional().describe('Until this kind is understood its records are doubtful'),
  body: z.looseObject({}),
});
export type Envelope = z.infer<typeof envelope>;

/** A fact of a known kind, typed. */
export type Fact<K extends FactKind = FactKind> = {
  [P in K]: Pick<Envelope, 'id' | 'about' | 'happened' | 'recorded' | 'by' | 'why' | 'mustUnderstand'> & {
    readonly kind: P;
    readonly body: FactBody<P>;
  };
}[K];

/** What someone wants to write down, before the journal gives it an id, a recorded time and a writer. */
export type NewFact<K extends FactKind = FactKind> = {
  [P in K]: {
    readonly kind: P;
    readonly about: readonly string[];
    readonly happened: Happened;
    readonly by: string | null;
    readonly why: string | null;
    readonly body: FactBody<P>;
  };
}[K];
