/** The values of a fact that a correction may replace, with what kind of line takes the new one. */
import type { FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { labelOf } from '#words/fieldNames.ts';
import { choicesOf, yesNo } from '#words/valueText.ts';

export type CorrectableValue = string | number | boolean | null | readonly string[];

export interface CorrectableChoice {
  /** As it stands in the form. */
  readonly value: string;
  readonly label: string;
  /** As it stands in the fact. */
  readonly means: string | boolean;
}

export interface Correctable {
  readonly factId: string;
  /** JSON pointer into the body, or /happened/at. */
  readonly path: string;
  readonly label: string;
  readonly kind: 'time' | 'minutes' | 'flow' | 'text' | 'pump' | 'lot' | 'worker' | 'person' | 'tasks' | 'choice';
  readonly value: CorrectableValue;
  readonly choices?: readonly CorrectableChoice[];
}

type Kind = Correctable['kind'];
const field = (factId: string, path: string, kind: Kind, value: CorrectableValue): Correctable => ({
  factId,
  path,
  label: labelOf(path),
  kind,
  value,
});

export const timeField = (factId: string, at: string): Correctable => field(factId, '/happened/at', 'time', at);

export const minutesField = (factId: string, value: number | null): Correctable =>
  field(factId, '/pumpMin', 'minutes', value);

export const textField = (factId: string, path: string, value: string | null): Correctable =>
  field(factId, path, 'text', value);

const yesNoField = (factId: string, path: string, value: boolean): Correctable => ({
  ...field(factId, path, 'choice', value),
  choices: [
    { value: 'yes', label: yesNo(true), means: true },
    { value: 'no', label: yesNo(false), means: false },
  ],
});

type Pick = 'pump' | 'lot' | 'worker';
const pathOf: Readonly<Record<Pick, string>> = { pump: '/pumpId', lot: '/lotId', worker: '/workerId' };

export const pickFields = (factId: string, sample: SampleRecord, picks: readonly Pick[]): Correctable[] =>
  picks.map((kind) =>
    field(factId, pathOf[kind], kind, { pump: sample.pumpId, lot: sample.lotId, worker: sample.workerId }[kind]),
  );

export const tasksField = (factId: string, taskIds: readonly string[]): Correctable =>
  field(factId, '/taskIds', 'tasks', taskIds);

/** Who fitted it, each point that was gone through, the right to watch, the initials. A point that was not asked stays out. */
export function fittingFields({ fitting }: SampleRecord): Correctable[] {
  const factId = fitting?.factId;
  if (!fitting || factId === undefined) return [];
  const modes = Object.entries(choicesOf('mode')).map(([value, label]) => ({ value, label, means: value }));
  return [
    timeField(factId, fitting.at),
    { ...field(factId, '/mode', 'choice', fitting.mode), choices: modes },
    ...Object.entries(fitting.points).flatMap(([point, met]) =>
      typeof met === 'boolean' ? [yesNoField(factId, `/points/${point}`, met)] : [],
    ),
    yesNoField(factId, '/observationOffered', fitting.observationOffered),
    textField(factId, '/initials', fitting.initials),
  ];
}

/** Labelled or not, where it was locked in and by whom; the last two may stand in a later fact than the seal. */
export function sealFields({ sealed }: SampleRecord): Correctable[] {
  if (!sealed) return [];
  const locked = sealed.lockedFactId ?? sealed.factId;
  return [
    yesNoField(sealed.factId, '/labelled', sealed.labelled),
    textField(locked, '/lockedIn', sealed.lockedIn),
    field(locked, '/lockedById', 'person', sealed.lockedById),
  ];
}

/** Each reading's two ends, and when the check was made. */
export const flowFields = (factId: string, check: FlowCheckRecord): Correctable[] => [
  timeField(factId, check.happened.at),
  ...check.readings.flatMap(({ lowLPerMin, highLPerMin }, i) => [
    field(factId, `/readings/${i}/lowLPerMin`, 'flow', lowLPerMin),
    field(factId, `/readings/${i}/highLPerMin`, 'flow', highLPerMin),
  ]),
];
