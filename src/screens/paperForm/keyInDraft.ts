/** What is typed from one paper form, as typed; kept until it is saved. */
import type { ChosenConditions } from '#parts/ConditionChoices.tsx';
import type { FloatReading } from '#parts/FloatField.tsx';
import { emptyLot, type LotText } from '#parts/LotLines.tsx';
import { emptyMeter, type MeterText } from '#parts/meterText.ts';
import { emptyPerson, type PersonText } from '#parts/PersonFields.tsx';
import { emptyPump, type PumpText } from '#parts/PumpLines.tsx';
import { notNoted } from '#parts/RespiratorField.tsx';
import { emptySite, type SiteText } from '#parts/SiteLines.tsx';
import type { FactBody } from '#records/fact.ts';

/** A time on the paper; `which` only where the clock showed it twice that night. */
export interface TimeText {
  readonly time: string;
  readonly which: 'first' | 'second' | null;
}
export interface FlowText {
  readonly at: TimeText;
  readonly readings: readonly FloatReading[];
  readonly temperature: string;
  readonly pressure: string;
  /** The paper has none. */
  readonly none: boolean;
}
export type LookHow = 'good' | 'notRunning' | 'notInPlace';
export interface LookText {
  readonly at: TimeText;
  readonly how: LookHow;
}

export interface FittingText {
  readonly mode: FactBody<'fittingChecked.v1'>['mode'] | 'notStated' | null;
  /** Points, and `offered` for the right to watch. */
  readonly ticked: readonly string[];
  readonly initials: string;
}

export interface KeyInDraft {
  readonly from: string;
  readonly siteId: string | null;
  readonly site: SiteText;
  readonly day: string;
  readonly pastMidnight: 'no' | 'yes';
  readonly meterId: string | null;
  readonly meter: MeterText;
  readonly lotId: string | null;
  readonly lot: LotText;
  readonly inLine: FactBody<'flowChecked.v1'>['inLine'];
  readonly before: FlowText;
  readonly after: FlowText;
  readonly workerId: string | null;
  readonly worker: PersonText;
  readonly pumpId: string | null;
  readonly pump: PumpText;
  readonly number: string;
  readonly fitting: FittingText;
  readonly putOn: TimeText;
  readonly looks: readonly LookText[];
  readonly stopped: TimeText;
  readonly pumpMin: string;
  readonly sealed: TimeText;
  readonly labelled: 'no' | 'yes' | null;
  readonly lockedIn: string;
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly jobId: string | null;
  readonly respirator: string;
  readonly conditions: ChosenConditions;
  readonly conditionsRemark: string;
  readonly regular: 'yes' | 'no' | 'notStated' | null;
  readonly regularReason: string;
}

export const noTime: TimeText = { time: '', which: null };
const noFlow: FlowText = { at: noTime, readings: [], temperature: '', pressure: '', none: false };

export const emptyKeyIn = (zone: string, from: string, siteId: string | null, day: string): KeyInDraft => ({
  from,
  siteId,
  site: emptySite(zone),
  day,
  pastMidnight: 'no',
  meterId: null,
  meter: emptyMeter,
  lotId: null,
  lot: emptyLot,
  inLine: 'representativeCassette',
  before: noFlow,
  after: noFlow,
  workerId: null,
  worker: emptyPerson,
  pumpId: null,
  pump: emptyPump,
  number: '',
  fitting: { mode: null, ticked: [], initials: '' },
  putOn: noTime,
  looks: [],
  stopped: noTime,
  pumpMin: '',
  sealed: noTime,
  labelled: null,
  lockedIn: '',
  taskIds: [],
  find: '',
  jobId: null,
  respirator: notNoted,
  conditions: {},
  conditionsRemark: '',
  regular: null,
  regularReason: '',
});

export interface KeptIds {
  readonly siteId: string;
  readonly meterId: string | null;
  readonly lotId: string;
}

/** The next form of the same day: what was common to all stands there already. */
export const nextForm = (draft: KeyInDraft, { siteId, meterId, lotId }: KeptIds): KeyInDraft => ({
  ...emptyKeyIn(draft.site.zone, draft.from, siteId, draft.day),
  pastMidnight: draft.pastMidnight,
  meterId,
  lotId,
  inLine: draft.inLine,
  taskIds: draft.taskIds,
  lockedIn: draft.lockedIn,
});
