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
  conflict: 'Two corrections contradict each other; the more careful one stands until somebody settles it.',
  settle: (label: string) => `Settle it: ${label}`,
  settling: {
    heading: 'Settle two corrections',
    which: (label: string) => `${label}: which value is right?`,
    by: (value: string, who: string) => (who === '' ? value : `${value}, written by ${who}`),
    stands: 'stands for now',
    why: 'Why',
    action: 'Save what is right',
    gone: 'There is nothing left to settle here.',
  },
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
    action: 'Save the correction',
    gone: 'This value is not there any more. Go back and pick it again.',
  },
  labels: {
    time: 'Time',
    pumpMin: "The pump's own minutes",
    reason: 'Reason',
    remark: 'Remark',
    openedWhere: 'Where it was opened',
    lockedIn: 'Locked in where',
    pump: 'Pump',
    lot: 'Lot',
    worker: 'Worker',
    low: (n: number) => `Reading ${n}, lowest`,
    high: (n: number) => `Reading ${n}, highest`,
    other: 'A value',
  },
};

export type StoryWords = typeof en;
