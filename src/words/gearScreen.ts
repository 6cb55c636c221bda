/** Pumps, flow meters and cassette lots on their pages: what is due, charged, whose they are, certificates. Read by supervisor and office. */
import { formatDay, formatQuantity } from './quantity.ts';

export type GearKind = 'pump' | 'meter' | 'lot';

/** In the middle of a sentence: 'flow meter ROTA-7'. */
export const gearName = (gear: GearKind, name: string): string =>
  ({ pump: `pump ${name}`, meter: `flow meter ${name}`, lot: `lot ${name}` })[gear];
export const gearTitle = (gear: GearKind, name: string): string =>
  ({ pump: `Pump ${name}`, meter: `Flow meter ${name}`, lot: `Lot ${name}` })[gear];

const count = (n: number, one: string, many: string): string => (n === 1 ? `1 ${one}` : `${n} ${many}`);

/** 'August 2026' */
const monthText = (day: string): string => formatDay(`${day.slice(0, 7)}-01`).slice(2);

export const en = {
  heading: 'Pumps, flow meters and lots',
  looking: 'Looking at the pumps, flow meters and lots',
  empty: 'There are no pumps, flow meters or lots yet. Each is written down where it is first needed, or here.',
  dueHeading: 'To see to',
  nothingDue: 'Nothing is due.',
  toFirst: (name: string) => `Go to ${name}`,
  toToday: 'Go to Today',
  toGear: 'To all pumps, flow meters and lots',
  retiredOf: (heading: string) => `${heading} out of use`,
  registers: {
    pump: { heading: 'Pumps', add: 'Add a pump', none: 'No pump yet' },
    meter: { heading: 'Flow meters', add: 'Add a flow meter', none: 'No flow meter yet' },
    lot: { heading: 'Cassette lots', add: 'Add a lot', none: 'No lot yet' },
  },
  goneHeading: 'This is not in the book',
  gone: 'No pump, flow meter or lot with this address is on this device. It may come with a file of another device.',
  story: 'Story',
  correct: 'Put what is written here right',
  more: 'Something else',
  nobody: 'nobody named',
  charge: {
    heading: 'Charged',
    now: 'Charged to the full now',
    other: 'Charged at another time',
    otherHeading: (name: string) => `When was ${name} charged?`,
    none: 'No charge is written down.',
    line: (when: string, full: boolean) => (full ? `Charged to the full, ${when}` : `Charged in part, ${when}`),
    by: (who: string) => `noted by ${who}`,
    earlier: (n: number) => `and ${count(n, 'earlier charge', 'earlier charges')}`,
    full: 'How far?',
    fulls: { full: 'To the full', part: 'In part, or nobody knows' },
    remark: 'Remark, if there is one',
    save: 'Save when it was charged',
  },
  held: {
    heading: (name: string) => `Whose is ${name}?`,
    action: 'Say whose it is, or take it out of use',
    which: 'Whose is it?',
    choices: { owned: 'Owned by the firm', rented: 'Rented', lent: 'Lent to the firm' },
    said: {
      owned: 'Owned by the firm',
      rented: (from: string | null) => (from === null ? 'Rented' : `Rented from ${from}`),
      lent: (from: string | null) => (from === null ? 'Lent to the firm' : `Lent by ${from}`),
    },
    notSaid: 'Whose it is has not been said',
    backOn: (day: string) => `goes back on ${formatDay(day)}`,
    from: 'From whom',
    back: 'Goes back on',
    backHint: 'May stay empty. It then never counts as due to go back',
    save: 'Save whose it is',
    retired: 'Out of use',
    turned: 'It goes back on a day that has passed. Write the day on which it goes back, or take it out of use',
    use: 'Is it in use?',
    uses: { inUse: 'In use', retired: 'Out of use' },
    retiredHint: 'Its records stay, and every sample that rests on it stays as it is. It is no longer due for anything',
    why: 'Why is it taken out of use?',
    whyHint: 'Such as: given back; sold; does not hold its flow any more',
    whyMissing: 'Say in a few words why it is taken out of use',
  },
  flow: {
    heading: 'Flow change over the months',
    intro: 'How far the flow after a run lay from the flow before it, for every run with both.',
    none: 'No run with a flow before and a flow after yet.',
    picture: (name: string) => `Flow change of ${name}, run by run`,
    seen: (runs: number, beyond: number) =>
      `${count(runs, 'run', 'runs')}; ${beyond === 0 ? 'none changed' : `${count(beyond, 'changed', 'changed')}`} more than the first line on either side. Below zero the pump had weakened.`,
    x: (fromOn: string, toOn: string) =>
      monthText(fromOn) === monthText(toOn) ? monthText(fromOn) : `${monthText(fromOn)} to ${monthText(toOn)}`,
    month: (on: string) => monthText(on).slice(0, 3),
    y: 'Change, %',
    limit: (pct: number) => `${pct < 0 ? '\u2212' : '+'}${formatQuantity(Math.abs(pct), '%')}`,
    table: 'The same as a table',
    columns: { day: 'Day', before: 'Before, L/min', after: 'After, L/min', change: 'Change, %' },
    marks: { flagged: '(much)', over: '(too much)' },
    without: (n: number) => `${count(n, 'sample', 'samples')} without a flow before or after: not in the picture.`,
  },
  worn: {
    heading: 'Samples it wore',
    none: 'It has worn no sample yet.',
    line: (number: string, worker: string) => `${number}, ${worker}`,
  },
  certificate: {
    heading: 'Certificates',
    none: 'No certificate is written down. Until one is, the flow counts as doubtful on the low side.',
    line: (day: string) => `Certificate of ${formatDay(day)}`,
    noDate: 'Certificate without a date',
    inForce: 'in force today',
    notYet: 'not in force today',
    due: (day: string) => `next due ${formatDay(day)}`,
    overdue: (day: string) => `was due ${formatDay(day)}`,
    dueNotSaid: 'when the next one is due is not written down',
    by: (who: string) => `by ${who}`,
    conditions: (temperatureC: number | null, pressureKPa: number | null) =>
      `calibrated at ${temperatureC === null ? 'a temperature that is not written down' : formatQuantity(temperatureC, '°C')}, ${pressureKPa === null ? 'a pressure that is not written down' : formatQuantity(pressureKPa, 'kPa')}`,
    pairs: 'Flow read and true flow',
    read: 'Read, L/min',
    true: 'True, L/min',
    noPairs: 'No lines of flow read against true flow',
    enter: 'Enter a newer certificate',
    enterHeading: (name: string) => `A newer certificate of ${name}`,
    intro: 'It holds for flow checks from its day on. What was checked before stays as it was judged then.',
    on: 'Date of the certificate',
    dueOn: 'Next one due on',
    dueHint: 'Put in as twelve months later, which is common practice; write another day where the certificate says so',
    who: 'Who calibrated it',
    future: 'The certificate is dated after today. Look at its date again',
    dueBefore: 'It is due before the date of the certificate. Look at both days again',
    same: 'A certificate of this day is written down already. Correct that one in the lists, or look at the date again',
    save: 'Save the certificate',
    picture: 'A picture of the certificate is kept beside it, once it is saved.',
  },
  lot: {
    expiry: 'Use before',
    noExpiry: 'no day on the bag',
    media: 'Filter and cassette',
    used: 'Used so far',
    usedText: (samples: number, blanks: number) =>
      `${count(samples, 'cassette', 'cassettes')} worn, ${count(blanks, 'field blank', 'field blanks')}`,
    blanksHeading: 'Field blanks by box',
    rules: {
      tenPercent: 'at least two, or one for each ten samples',
      twoPerTen: 'two for each ten samples begun, ten at most',
    },
    byRule: (rule: string) => `By the chosen rule: ${rule}`,
    box: (laboratory: string, day: string) => `Box for ${laboratory}, ${formatDay(day)}`,
    noBox: 'None of it went into a box yet.',
    ofLot: (samples: number, blanks: number, needed: number) =>
      `${count(samples, 'sample', 'samples')} and ${count(blanks, 'field blank', 'field blanks')} of this lot${needed === 0 ? '' : `; so many samples ask for ${count(needed, 'field blank', 'field blanks')}`}`,
    noBlankOfLot: 'no blank of this lot went with it',
    none: 'Nothing of this lot was used yet.',
    usedHeading: 'Samples and blanks of this lot',
    sample: (number: string, worker: string) => `${number}, ${worker}`,
    blank: (number: string) => `${number}, field blank`,
  },
};
