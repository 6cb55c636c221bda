/**
 * What happened in the season, day by day: above the PEL, between, below, exactly at it, less than the reporting limit, void with a high
 * result, rained off, measured again. Figures are invented; 480 minutes at 2 L/min are 960 L, so 48 µg make exactly 50 µg/m³.
 */
import type { FactBody } from '#records/fact.ts';
import type { Worker } from './seasonIds.ts';

type Conditions = Omit<Pick<FactBody<'conditionsNoted.v1'>, Six>, never>;
type Six = 'tool' | 'method' | 'dustCollection' | 'containment' | 'ventilation' | 'weather' | 'paintLead' | 'area';

export interface Measured {
  readonly worker: Worker;
  readonly massUg: number | { readonly lessThanUg: number };
  /** Fewer minutes than a whole day, and not a regular one. */
  readonly cutShort?: 'rainedOff' | 'powerOff';
  readonly void?: boolean;
  /** No result yet: with the laboratory, or not even sent. */
  readonly waits?: 'withTheLaboratory' | 'notSent';
}

export interface Shift {
  readonly daysAgo: number;
  readonly site: 'site' | 'bridge' | 'readingRoom';
  readonly tasks: readonly string[];
  readonly conditions: Conditions;
  readonly crew: readonly Worker[];
  readonly respirator: string;
  readonly measured?: readonly Measured[];
  readonly resultDaysAgo?: number;
  /** Of the lot that was found bad later. */
  readonly lot?: 'oldLot';
  /** Asked at the start of the job: what is new. */
  readonly asked?: Readonly<Partial<Record<'equipment' | 'process' | 'control' | 'personnel' | 'newTask', 'yes'>>>;
}

const openAir = { containment: 'none', ventilation: 'natural', weather: 'dryCalm', paintLead: 'tested' } as const;
const bare: Conditions = { ...openAir, tool: 'power', method: 'dry', dustCollection: 'none', area: 'large' };
const shrouded: Conditions = { ...bare, dustCollection: 'shroudHepa' };
const inside = { containment: 'partial', ventilation: 'natural', weather: 'indoors', paintLead: 'tested' } as const;
const scraping: Conditions = { ...inside, tool: 'hand', method: 'mixed', dustCollection: 'none', area: 'room' };
const wet: Conditions = { ...scraping, method: 'wet' };

export const gunsOpen = ['powerToolOpen', 'handScraping'];
export const gunsShrouded = ['powerToolCollected', 'handScraping'];
export const sashes = ['windowTakeOut', 'puttyRemoval'];
export const walls = ['handScraping', 'wetSanding'];
export const sanding = ['wetSanding'];
export const sander = ['powerSandingCollected'];
export const tearing = ['tearOut'];

const [full, half] = ['airPurifyingFull', 'airPurifyingHalf'];
const crew: readonly Worker[] = ['rex', 'maya', 'sam'];
const onBridge = { site: 'bridge', tasks: gunsShrouded, conditions: shrouded, crew, respirator: half } as const;
const onWalls = { site: 'site', tasks: walls, conditions: scraping, crew: ['second'], respirator: half } as const;
const onSanding = { site: 'site', tasks: sanding, conditions: wet, crew: ['dora'], respirator: half } as const;

const tornOut: Conditions = { ...scraping, method: 'dry' };
const sanded: Conditions = { ...tornOut, tool: 'power', dustCollection: 'shroudHepa' };
const inReadingRoom = { ...onWalls, site: 'readingRoom', tasks: tearing, conditions: tornOut } as const;

export const measuredShifts: readonly Shift[] = [
  // above the PEL: quarterly, a notice with corrective action, a positive determination
  {
    ...onBridge,
    ...{ daysAgo: 112, resultDaysAgo: 105, tasks: gunsOpen, conditions: bare, respirator: full, asked: {} },
    measured: [{ worker: 'rex', massUg: 172.8 }],
  },
  { ...onWalls, daysAgo: 110, resultDaysAgo: 103, asked: {}, measured: [{ worker: 'second', massUg: 61.44 }] },
  // another control, so measured again; then down by steps
  {
    ...onBridge,
    ...{ daysAgo: 98, resultDaysAgo: 91, asked: { control: 'yes' }, lot: 'oldLot' },
    measured: [{ worker: 'rex', massUg: 69.12 }],
  },
  // low, on a cassette of a lot that was found bad later
  {
    ...inReadingRoom,
    ...{ daysAgo: 92, resultDaysAgo: 85, crew: ['dora'], asked: {}, lot: 'oldLot' },
    measured: [{ worker: 'dora', massUg: 14.4 }],
  },
  // less than the reporting limit, then low: negative may be written
  { ...onSanding, daysAgo: 88, resultDaysAgo: 81, measured: [{ worker: 'dora', massUg: { lessThanUg: 2.5 } }] },
  { ...onWalls, daysAgo: 87, resultDaysAgo: 80, measured: [{ worker: 'second', massUg: 20.16 }] },
  { ...onBridge, daysAgo: 84, resultDaysAgo: 77, measured: [{ worker: 'rex', massUg: 42.24 }] },
  // above the PEL once, never since: due again soon
  {
    ...{ ...onWalls, daysAgo: 82, resultDaysAgo: 75, tasks: sander, conditions: sanded },
    measured: [{ worker: 'second', massUg: 52.8 }],
  },
  {
    ...{ ...onWalls, daysAgo: 81, resultDaysAgo: 74, tasks: sashes, crew: ['first'] },
    measured: [{ worker: 'first', massUg: 31.68 }],
  },
  // exactly at the PEL
  { ...onBridge, daysAgo: 78, resultDaysAgo: 70, measured: [{ worker: 'maya', massUg: 48 }] },
  { ...onWalls, daysAgo: 75, resultDaysAgo: 68, measured: [{ worker: 'second', massUg: 17.28 }] },
  { ...onSanding, daysAgo: 74, resultDaysAgo: 67, measured: [{ worker: 'dora', massUg: 10.56 }] },
  { ...onBridge, daysAgo: 70, resultDaysAgo: 63, measured: [{ worker: 'rex', massUg: 36.48 }] },
  // void, and what the laboratory found on it is high all the same
  { ...onBridge, daysAgo: 56, resultDaysAgo: 49, measured: [{ worker: 'maya', massUg: 201.6, void: true }] },
  // an inspector's sample beside ours
  { ...onBridge, daysAgo: 42, resultDaysAgo: 35, measured: [{ worker: 'rex', massUg: 39.36 }] },
  // rained off, and measured again, the subcontractor's worker too
  { ...onBridge, daysAgo: 35, resultDaysAgo: 28, measured: [{ worker: 'maya', massUg: 14.4, cutShort: 'rainedOff' }] },
  {
    ...{ ...onBridge, daysAgo: 28, resultDaysAgo: 12 },
    measured: [
      { worker: 'maya', massUg: 24.96 },
      { worker: 'sam', massUg: 31.68 },
    ],
  },
  // nothing is known of it yet: void and thrown away, the power off at eleven
  {
    ...{ ...inReadingRoom, daysAgo: 20, crew: ['dora'] },
    measured: [{ worker: 'dora', massUg: 0, void: true, waits: 'notSent' }],
  },
  {
    ...{ ...inReadingRoom, daysAgo: 18, resultDaysAgo: 14 },
    measured: [{ worker: 'second', massUg: 7.2, cutShort: 'powerOff' }],
  },
  // with the new guns: one with the laboratory, one still in the lock box
  {
    ...{ ...onBridge, daysAgo: 5, crew: ['maya', 'sam'] },
    measured: [
      { worker: 'maya', massUg: 0, waits: 'withTheLaboratory' },
      { worker: 'sam', massUg: 0, waits: 'notSent' },
    ],
  },
];

/** A job that rests on an earlier measurement. */
export const restingShift: Shift = {
  ...onSanding,
  daysAgo: 6,
  site: 'readingRoom',
  crew: ['dora', 'second'],
  asked: {},
};

/** Days of the same work without a sample. */
export const otherShifts: readonly Shift[] = [
  // a helper at the walls, who was never measured there
  { ...onWalls, daysAgo: 60, crew: ['dora'] },
  // paint taken off with heat, once, and nobody measured it
  { ...inReadingRoom, daysAgo: 95, tasks: ['heatGunStripping'] },
  // new guns on the footbridge: what was measured before does not speak for them
  { ...onBridge, daysAgo: 10, crew: ['rex', 'sam'], asked: { equipment: 'yes' } },
  ...[111, 109, 108].map(
    (daysAgo): Shift => ({ ...onBridge, daysAgo, tasks: gunsOpen, conditions: bare, respirator: full }),
  ),
  ...[
    97, 95, 94, 92, 91, 85, 83, 81, 80, 77, 76, 73, 71, 69, 66, 64, 63, 59, 57, 55, 52, 50, 49, 45, 43, 41, 38, 36,
  ].map((daysAgo): Shift => ({ ...onBridge, daysAgo, crew: ['rex', 'maya'] })),
];
