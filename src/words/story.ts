/** The story of a sample so far, as sentences with their times; and correcting one of its values. */
import { formatMinutes } from './quantity.ts';

const looks = (running: boolean, inPlace: boolean): string =>
  running && inPlace
    ? 'Looked at: running, in its place'
    : running
      ? 'Looked at: running, not in its place'
      : 'Looked at: standing still';

export const en = {
  heading: 'The story so far',
  prepared: (pump: string, lot: string) => `Prepared: pump ${pump}, cassette of lot ${lot}`,
  follows: (number: string) => `Follows cassette ${number}`,
  tasks: (tasks: string) => `For: ${tasks}`,
  blank: (where: string) => `Opened and closed again: ${where}`,
  fitted: {
    fitted: (initials: string | null) =>
      initials === null ? 'Fitted and checked' : `Fitted and checked, initials ${initials}`,
    declined: () => 'Fitted; asked for initials, declined',
    fittedBySelf: (initials: string | null) =>
      initials === null ? 'Put on by self' : `Put on by self, initials ${initials}`,
  },
  pointsMissed: (count: number) => (count === 1 ? 'One fitting point is not so' : `${count} fitting points are not so`),
  flow: {
    before: (flow: string, pump: string) => `Flow before: ${flow}, pump ${pump}`,
    after: (flow: string, pump: string) => `Flow after: ${flow}, pump ${pump}`,
    between: (flow: string, pump: string) => `Flow between: ${flow}, pump ${pump}`,
  },
  putOn: 'Put on the worker',
  looked: looks,
  away: (reason: string) => `Away from the lead area: ${reason}`,
  backInLead: 'Back in the lead area',
  off: (running: boolean, reason: string | null) =>
    `Pump off the worker${running ? ', running on' : ', switched off'}${reason === null ? '' : `: ${reason}`}`,
  backOn: 'Back on the worker, running',
  fault: {
    stopped: 'Pump fault: it stood still',
    tubingOff: 'Pump fault: the tubing was off',
    flowDropped: 'Pump fault: the flow had dropped',
    other: 'Pump fault',
  },
  mishap: {
    wet: 'The cassette got wet',
    dropped: 'The cassette was dropped',
    overloaded: 'The filter is overloaded',
    inletUp: 'The inlet pointed up',
    opened: 'The cassette came open',
    other: 'Something happened to the cassette',
  },
  stopped: (pumpMin: number | null) =>
    pumpMin === null ? 'Stopped' : `Stopped; the pump shows ${formatMinutes(pumpMin)}`,
  sealed: (labelled: boolean, where: string | null) =>
    `Sealed${labelled ? ' and labelled' : ', not labelled'}${where === null ? '' : `; locked in: ${where}`}`,
  decided: (use: 'average' | 'lower', why: string) =>
    `Decided: ${use === 'average' ? 'the average flow' : 'the lower flow'} counts, because ${why}`,
  result: (report: string) => `Result received, report ${report}`,
  remark: (text: string) => `Remark: ${text}`,
  voided: (why: string) => `Void: ${why}`,
  noReason: 'no reason written',
  setBack: 'The clock of the phone was set back while the pump ran',
  outOfOrder: 'An entry does not fit the order of the times',
  typed: 'typed afterwards',
  struck: (label: string) => `${label}: `,
  added: (label: string, value: string) => `${label}: ${value}, added afterwards`,
  because: (why: string | null, by: string) => `, because ${why ?? 'no reason written'}${by === '' ? '' : ` (${by})`}`,
  conflict: 'Open: the careful side judges until somebody settles it',
  open: {
    voidAgainstResult: 'void, and a result has come in',
    sameNumber: 'the number stands on more than one cassette',
  } as Readonly<Record<string, string>>,
  settle: (label: string) => `Settle it: ${label}`,
  correct: 'Correct a value',
  done: 'Ready',
  correctThis: (label: string) => `Correct: ${label}`,
  correctOf: (sentence: string) => ` of “${sentence}”`,
  correcting: {
    heading: 'Correct a value',
    now: 'Stands there now',
    new: 'Right value',
    why: 'Why',
    whyHint: 'The old value stays visible, struck through, with this reason',
    whyMissing: 'Say why in a few words',
    noTask: 'Choose at least one task',
    action: 'Save the correction',
    gone: 'This value is not there any more. Go back and pick it again.',
  },
  notHere: 'one that is not on this device',
  corrected: (label: string, old: string, now: string) => `Corrected: ${label}, from ${old} to ${now}`,
  settled: (label: string, value: string | undefined) =>
    value === undefined ? `Settled: ${label}` : `Settled: ${label} is ${value}`,
  photoOf: {
    meterReading: 'a flow meter reading',
    label: 'a label',
    certificate: 'a certificate',
    site: 'the site',
    other: 'something else',
  },
  voidStands: 'With the result at hand: the sample stays void',
  voidLifted: 'With the result at hand: the sample is not void, it counts again',
  whole: {
    link: 'Story',
    heading: (record: string) => `Story: ${record}`,
    none: 'No entry about this is in the book on this device. Take in the file of the device that wrote it.',
    notYet: 'The entry that began this record is not on this device. What is here is told all the same.',
    intro: (count: number) =>
      count === 1
        ? 'One entry, the only one about it on this device.'
        : `All ${count} entries about it on this device, in the order in which things happened.`,
    newer: 'An entry that this version of Fullshift does not understand. It is kept as it came.',
    newerHolds: 'It must be understood: until a newer version is here, this record counts as doubtful.',
    unreadable: 'An entry that cannot be read. It is kept as it came.',
    noTime: 'no time',
    by: (who: string) => `by ${who}`,
    nobody: 'nobody said who held the device',
    typedFrom: (from: string | null) => (from === null ? 'typed afterwards' : `typed afterwards, from ${from}`),
    writtenAt: (when: string) => `written down ${when}`,
    thisDevice: 'on this device',
    device: (name: string) => `on ${name}`,
    otherDevice: (code: string) => `on another device (${code})`,
    because: (why: string) => `because ${why}`,
    print: 'Print this story',
    toToday: 'Go to Today',
    settleOpen: 'Something about it is still open: settle it',
  },
};

export type StoryWords = typeof en;
