/** Duties towards one worker, and of records: what to do, what fulfils it, where it lies. Read by the office. */
import { type KindInWords, paper } from './dutySaid.ts';

export const people: Readonly<Record<string, KindInWords>> = {
  bloodTests: {
    what: (said) => `Offer ${said.workers} a blood test for lead and ZPP`,
    fulfils: 'That it was offered and on which day. No value is kept in this book.',
    lies: paper('The paper of the offer, and who keeps the medical record'),
    whose: 'The firm has to offer it; whether to have it, the worker decides.',
  },
  bloodResultsTold: {
    what: (said) =>
      `See that ${said.workers} has the blood test's result in writing within ${said.params.workingDaysCount} working days of its arrival`,
    fulfils: 'That it was told in writing and on which day. No value is kept in this book.',
    lies: paper('A copy of it, with the medical record'),
  },
  surveillance: {
    what: (said) => `Put ${said.workers} under medical surveillance`,
    fulfils: 'The programme was set up with a physician: blood tests at its intervals. No value is kept in this book.',
    lies: paper('The medical record'),
    whose: 'The firm has to set it up; what is done in it, the physician decides.',
  },
  physicianTold: {
    what: (said) => `Give the physician of ${said.workers} the level of exposure`,
    fulfils: 'The exposure record was sent, and on which day.',
    lies: paper('A copy of the letter'),
  },
  training: {
    what: (said) => `Train ${said.workers} about lead before the work`,
    fulfils: 'Training held, in a language that is understood, with the day and who held it.',
    lies: paper('The list of who was there'),
  },
  trainingYearly: {
    what: (said) => `Train ${said.workers} about lead again: every year`,
    fulfils: 'Training held, in a language that is understood, with the day and who held it.',
    lies: paper('The list of who was there'),
  },
  keepRecords: {
    what: (said) => `Keep the exposure records of ${said.site} until ${said.day('keepUntilOn')} at least`,
    fulfils: 'A backup that is kept elsewhere, and who looks after it.',
    lies: paper('The backup'),
  },
  recordsTold: {
    what: (said) => `Tell ${said.workers}, on hiring, that exposure records are kept and may be seen`,
    fulfils: 'Told: that the records exist, where they are, who looks after them, and the right to see them.',
    lies: paper('A note of it'),
  },
  recordsToldYearly: {
    what: (said) => `Tell ${said.workers} again that exposure records are kept and may be seen: every year`,
    fulfils: 'Told: that the records exist, where they are, who looks after them, and the right to see them.',
    lies: paper('A note of it'),
  },
  recordsAccess: {
    what: (said) => `Show the records that ${said.params.by} asked for on ${said.day('askedOn')}`,
    fulfils: 'Shown or copied, the first copy free; or told within the same days why not yet, and when.',
    lies: paper('A note of what was given to whom'),
  },
};
