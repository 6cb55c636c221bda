/** The page of one site's day, in the order of the day. */

export const en = {
  heading: (site: string) => `The day at ${site}`,
  noShiftHeading: 'This day is not here',
  noShift: 'This shift is not in the book on this device. Take in the backup or hand-over file that holds it.',
  toToday: 'To today',
  flow: {
    heading: 'Flow before',
    none: 'No pump is checked yet',
    noneDetail: 'Each pump, with a cassette of the lot in line',
    pumps: (pumps: string) => `Checked: pump ${pumps}`,
    open: (pumps: string) => `No flow before: pump ${pumps}`,
    more: 'Check another pump',
  },
  before: {
    heading: 'Before entering',
    none: 'No worker is prepared yet',
    prepared: (worker: string, number: string) => `${worker}: cassette ${number} is prepared`,
    preparedDetail: (fitted: boolean) => (fitted ? 'Fitted; not put on yet' : 'The fitting is not checked yet'),
    more: 'Prepare a worker',
  },
  on: {
    heading: 'On the worker',
    none: 'No pump is on a worker',
    since: (worker: string, time: string) => `${worker}: put on ${time}`,
    running: (minutes: string, look: string | null) =>
      look === null ? `${minutes} so far` : `${minutes} so far; look at it by ${look}`,
    overdue: (minutes: string, look: string) => `${minutes} so far; a look was due at ${look}`,
    off: (minutes: string) => `Pump off the worker; ${minutes} so far`,
    away: (minutes: string) => `Away from the lead area; ${minutes} so far`,
    fault: (minutes: string) => `Pump fault found; ${minutes} so far`,
  },
  after: {
    heading: 'After leaving',
    none: 'Nobody is back yet',
    line: (worker: string, number: string) => `${worker}: cassette ${number}`,
    open: (what: string) => `Still open: ${what}`,
    closed: 'Sealed and locked in',
    steps: {
      flowAfter: 'flow after',
      regularDay: 'regular day or not',
      seal: 'seal and label',
      lockIn: 'lock in',
    },
  },
  blanks: {
    heading: 'Field blanks',
    line: (count: number, wanted: number) => `${count} of ${wanted} field blanks`,
    enough: (count: number) =>
      count === 0 ? 'No field blank yet' : count === 1 ? '1 field blank' : `${count} field blanks`,
    detail: 'Opened and closed at the job, no air drawn',
  },
  conditions: {
    heading: 'Conditions of the day',
    none: 'Not written down yet',
    filled: 'Written down',
  },
  paper: {
    heading: 'Written on paper',
    keyIn: 'Key in a paper form',
    keyInDetail: 'What was written on a blank form that day',
    blank: 'Blank forms to print',
  },
  box: {
    heading: 'Box for the laboratory',
    none: 'Nothing is sealed yet',
    waiting: (count: number) => (count === 1 ? '1 sealed cassette, not sent' : `${count} sealed cassettes, not sent`),
    sent: 'All sealed cassettes are in a box',
  },
  file: {
    heading: 'File for the office',
    open: "Send today's file",
    notYet: 'When every cassette is sealed, send the day',
    unsent: 'The shift is over, and its file is not sent yet',
    sent: 'A file left since the shift was over',
  },
  next: {
    heading: 'What follows',
    todo: 'To do for this site',
    determination: 'Initial determination',
    inspector: 'Somebody asks at the door',
  },
  voided: (worker: string, number: string) => `${worker}: cassette ${number} is void`,
  voidedBlank: (number: string) => `Field blank ${number} is void`,
  voidedBecause: (why: string | null) => (why === null ? 'No reason written' : `Because: ${why}`),
  actions: {
    flow: 'Check the flow of a pump',
    prepare: 'Prepare a worker',
    prepareOne: (worker: string) => `Prepare ${worker}`,
    fit: (worker: string) => `Check the fitting with ${worker}`,
    putOn: (worker: string) => `Put the pump on ${worker}`,
    look: (worker: string) => `Look at the pump on ${worker}`,
    after: (worker: string) => `Go on with ${worker}`,
    blank: 'Open a field blank',
    conditions: 'Write down the conditions',
    box: 'Pack the box for the laboratory',
    samples: 'See every sample',
    send: "Send today's file",
  },
};

export type ShiftWords = typeof en;
