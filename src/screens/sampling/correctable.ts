/** The values of a fact that a correction may replace, with what kind of line takes the new one. */
import type { FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { en as words } from '#words/story.ts';

export interface Correctable {
  readonly factId: string;
  /** JSON pointer into the body, or /happened/at. */
  readonly path: string;
  readonly label: string;
  readonly kind: 'time' | 'minutes' | 'flow' | 'text' | 'pump' | 'lot' | 'worker';
  readonly value: string | number | null;
}

export const timeField = (factId: string, at: string): Correctable => ({
  factId,
  path: '/happened/at',
  label: words.labels.time,
  kind: 'time',
  value: at,
});

export const minutesField = (factId: string, value: number | null): Correctable => ({
  factId,
  path: '/pumpMin',
  label: words.labels.pumpMin,
  kind: 'minutes',
  value,
});

export const textField = (factId: string, path: string, label: string, value: string): Correctable => ({
  factId,
  path,
  label,
  kind: 'text',
  value,
});

type Pick = 'pump' | 'lot' | 'worker';
const pathOf: Readonly<Record<Pick, string>> = { pump: '/pumpId', lot: '/lotId', worker: '/workerId' };

export const pickFields = (factId: string, sample: SampleRecord, picks: readonly Pick[]): Correctable[] =>
  picks.map((kind) => ({
    factId,
    path: pathOf[kind],
    label: words.labels[kind],
    kind,
    value: { pump: sample.pumpId, lot: sample.lotId, worker: sample.workerId }[kind],
  }));

/** Each reading's two ends, and when the check was made. */
export const flowFields = (factId: string, check: FlowCheckRecord): Correctable[] => [
  timeField(factId, check.happened.at),
  ...check.readings.flatMap(({ lowLPerMin, highLPerMin }, i) => [
    {
      factId,
      path: `/readings/${i}/lowLPerMin`,
      label: words.labels.low(i + 1),
      kind: 'flow' as const,
      value: lowLPerMin,
    },
    {
      factId,
      path: `/readings/${i}/highLPerMin`,
      label: words.labels.high(i + 1),
      kind: 'flow' as const,
      value: highLPerMin,
    },
  ]),
];
