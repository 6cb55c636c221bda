/** The blank form for a whole shift on paper, in the order in which the phone asks. English and Spanish. */
import { conditionKeys, en as conditions } from './conditions.ts';
import { es } from './paperFormEs.ts';

/** Labels of one question and what may be ticked. */
export interface Ticks {
  readonly label: string;
  readonly options: readonly string[];
}

const conditionsEn: readonly Ticks[] = conditionKeys.map((key) => ({
  label: conditions.labels[key],
  options: Object.values<string>(conditions.options[key]),
}));

export const en = {
  title: 'Paper form for a full shift',
  short: 'Paper form',
  lead: 'For two workers. Fill it in before entering and after leaving the work area, not inside. Key it in afterwards, from top to bottom.',
  strike:
    'A wrong figure is struck through once, so that it can still be read, and the right one is written beside it. Leave blank what nobody knows.',
  head: { site: 'Site', workOn: 'Day', by: 'Filled in by', sheet: 'Sheet' },
  sheetOf: (number: number, count: number) => `${number} of ${count}`,
  flowBefore: '1 · Flow before',
  flowAfter: 'Flow after, and between two cassettes',
  flowHint:
    'Cassette in line. Three readings each: write what the float shows lowest and highest, or one figure where it stands still.',
  flow: {
    pump: 'Pump',
    meter: 'Flow meter',
    time: 'Time',
    lot: 'Lot in line',
    reading: (number: number) => `Reading ${number}, L/min`,
    temperature: '°C',
    pressure: 'kPa',
  },
  afterRows: ['A', 'B', 'Between'],
  beforeRows: ['A', 'B'],
  before: '2 · Before entering',
  workers: ['Worker A', 'Worker B'],
  worker: {
    name: 'Name, and the firm’s number',
    job: 'Job classification',
    tasks: 'Tasks',
    respirator: 'Respirator worn',
    pump: 'Pump',
    lot: 'Lot of the cassette',
    number: 'Number on the cassette',
    points: 'Fitting',
    fitted: 'Who fitted it',
    initials: 'Initials',
  },
  points: [
    'pump sits tight',
    'tube fastened',
    'filter near the collar',
    'outside the respirator',
    'hot work: inside the helmet',
    'opening points down',
    'plugs off',
    'pump runs',
    'right to watch offered',
  ],
  modes: ['fitted, saw the check', 'asked, declined to sign', 'put it on without help'],
  on: '3 · On the worker',
  onRows: {
    putOn: 'Put on at',
    looked: 'Looked at, time',
    away: 'Away from lead: from, to, why',
    off: 'Pump off: from, to, why',
    change: 'New cassette: time, no., lot',
    happened: 'What happened',
    happenedNote: 'When, and what',
  },
  lookTicks: ['runs', 'in its place'],
  offTicks: ['ran on', 'was off'],
  mishaps: ['wet', 'dropped', 'overloaded', 'opening up', 'came open', 'pump stood still', 'tube off', 'flow dropped'],
  after: '4 · After leaving',
  afterFields: {
    stopped: 'Stopped at',
    pumpMin: 'The pump’s own minutes',
    regular: 'A regular day?',
    different: 'What was different',
    hours: 'Hours of work: from, to',
    other: 'Other work that day',
    otherHours: 'Where or for whom: from, to',
    minutes: 'Without a pump: from, to, what',
    sealed: 'Sealed at',
    locked: 'Locked in where, by whom',
  },
  regular: ['yes', 'no'],
  others: ['call-out', 'second site', 'second employer'],
  labelled: 'number on the cassette',
  blanks: '5 · Field blanks',
  blank: { number: 'Number', lot: 'Lot', where: 'Opened and closed where', time: 'Time' },
  conditions: '6 · Conditions of the day',
  conditionTicks: conditionsEn,
  roster: '7 · Everyone who was there',
  rosterHint: 'Also those without a pump, and workers of other firms.',
  person: {
    name: 'Name',
    firm: 'Firm',
    job: 'Job classification',
    tasks: 'Tasks',
    respirator: 'Respirator',
    hours: 'From, to',
  },
  box: '8 · Box for the laboratory',
  boxRow: { laboratory: 'Laboratory', packed: 'Packed at', given: 'Handed over to, tracking number' },
  remarks: 'Remarks',
};

export type PaperFormWords = typeof en;

export const paperFormWords = { en, es } as const;
