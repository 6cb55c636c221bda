/** After leaving the work area: stopped, flow after, regular day, sealed, locked in. */

export const en = {
  heading: (worker: string) => `After leaving: ${worker}`,
  open: (count: number) => (count === 1 ? 'One thing is still open.' : `${count} things are still open.`),
  allDone: 'All of it is written down.',
  stopped: {
    heading: 'Stopped',
    not: 'The pump is not stopped yet.',
    now: 'Stopped now',
    at: (time: string, minutes: string) => `Stopped ${time}, after ${minutes} on the worker.`,
    other: 'Stopped at another time',
    mistake: 'Stopped by mistake',
  },
  pumpMin: {
    label: "The pump's own minutes",
    hint: 'As its display shows them: an independent witness. May stay empty',
    action: "Save the pump's minutes",
    why: 'Read off the pump after it was stopped',
    stands: (minutes: string) => `The pump shows ${minutes}.`,
  },
  flow: {
    heading: 'Flow after',
    not: (pump: string) => `Pump ${pump} has no flow after.`,
    nothing:
      'Without a flow after no average is formed, only an "at least" figure. A missing reading is never filled in.',
    action: 'Check the flow after',
    again: 'Check it again',
    notRead: 'not read',
    before: 'Flow before',
    after: 'Flow after',
    change: 'Change',
    average: 'Average flow',
    lower: 'Protective figure, the lower flow',
    minutes: 'Minutes on the worker, running',
    volume: 'Air drawn',
    volumeNone: 'No volume is formed from these readings.',
  },
  regular: {
    heading: 'A regular day?',
    label: 'Was it a regular day?',
    hint: 'The work and crew as they usually are',
    yes: 'Yes, a regular day',
    no: 'No: rained off, half a crew, other work',
    reason: 'What was different',
    reasonMissing: 'Say what was different about the day',
    action: 'Save the day',
    stands: (regular: boolean, reason: string | null) =>
      regular ? 'A regular day.' : `Not a regular day: ${reason ?? 'no reason written'}`,
  },
  seal: {
    heading: 'Sealed and locked in',
    intro: 'Plugs in, seal across both halves, number on the cassette.',
    labelled: 'The number stands on the cassette',
    lockedIn: 'Locked in where',
    lockedInHint: 'Such as: box in the van. May be said later',
    lockedBy: 'By whom',
    action: 'Sealed now',
    lockAction: 'Locked in now',
    stands: (time: string, labelled: boolean) =>
      labelled ? `Sealed ${time}, labelled.` : `Sealed ${time}, not labelled.`,
    lockedStands: (where: string, who: string) =>
      who === '' ? `Locked in: ${where}.` : `Locked in: ${where}, by ${who}.`,
  },
  main: {
    flow: 'Check the flow after',
    toSample: 'The story of this sample',
    toShift: 'To the day',
  },
};

export type AfterWords = typeof en;
