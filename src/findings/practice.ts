/**
 * Numbers that the findings rest on and that no limit set or method states: practice, each with where it comes from. DERIVED and
 * MEMORY are never shown as a citation.
 */
import type { Source } from '#core/formula.ts';

export interface PracticeNumber {
  readonly value: number;
  readonly source: Source;
}

/** Minutes by which the pump's own display may differ from the record before it is a reason. */
export const pumpWitnessMin: PracticeNumber = {
  value: 2,
  source: {
    title: "Fullshift's own choice",
    mark: 'DERIVED',
    note: 'Times are written to the minute at both ends, so a sound pump and a sound record may differ by two',
  },
};

/** Minutes by which the pump's own display may show more than the record and still be of this run: flow checks, and the way to the worker. */
export const pumpSurplusMin: PracticeNumber = {
  value: 60,
  source: {
    title: "Fullshift's own choice",
    mark: 'DERIVED',
    note: 'More than an hour beyond the record is a display that was not set back to zero, and shows nothing of this run',
  },
};

/** Minutes that may be sampled before and after the hours written down before these are in doubt: putting on, and taking off. */
export const outsideHoursMin: PracticeNumber = {
  value: 15,
  source: {
    title: "Fullshift's own choice",
    mark: 'DERIVED',
    note: 'A pump goes on a few minutes before work and comes off after it; more means that the hours are wrong',
  },
};

/** Minutes between looks at a running pump. */
export const lookEveryMin: PracticeNumber = {
  value: 120,
  source: {
    title: 'Training slides on air monitoring of lead',
    section: 'checks during sampling: every couple of hours',
    url: 'https://scribd.com/presentation/715884318/Air-monitoring-of-Lead-Copy',
    mark: 'READ-2',
  },
};

/** Readings that a flow check should have. */
export const readingsCount: PracticeNumber = {
  value: 3,
  source: {
    title: 'NIOSH Manual of Analytical Methods, 4th ed., Chapter D',
    section: 'p. 28, step 5: repeat at least twice',
    url: 'https://en.m.wikisource.org/wiki/Page:NIOSH_Manual_of_Analytical_Methods_-_Chapter_D.pdf/12',
    mark: 'READ',
  },
};

/** Largest share of the lead that was found on the cassette's inner wall, in per cent. */
export const wallDepositPct: PracticeNumber = {
  value: 54,
  source: {
    title: 'Ceballos et al. 2015, J Occup Environ Hyg 12:D225-D231',
    section: '54 area samples, on average 29 % of the lead on the wall, range 8 to 54 %',
    url: 'https://stacks.cdc.gov/view/cdc/34052/cdc_34052_DS3.txt',
    mark: 'READ',
  },
};

/** Difference between the laboratory's figure and ours, in per cent of the laboratory's, from which both are shown and asked about. */
export const laboratoryDifferencePct: PracticeNumber = {
  value: 2,
  source: {
    title: "Fullshift's own choice",
    mark: 'DERIVED',
    note: 'Wider than rounding to three figures, narrower than a slip',
  },
};

/** Days after which a file with the whole book is due when something was recorded since. */
export const backupEveryDays: PracticeNumber = {
  value: 7,
  source: { title: "Fullshift's own choice", mark: 'DERIVED', note: 'One week is what a lost phone may cost' },
};

/** The same where the browser has not promised to keep the book. */
export const backupEveryDaysUnkept: PracticeNumber = {
  value: 1,
  source: { title: "Fullshift's own choice", mark: 'DERIVED', note: 'A browser may empty what it did not promise' },
};

/** Hours that a pump's charge lasts. */
export const pumpChargeHours: PracticeNumber = {
  value: 12,
  source: { title: 'Common practice: a charge lasts 12 to 14 hours', mark: 'MEMORY' },
};

/** Days ahead of its date from which a measurement that is due again stands among what is due soon. */
export const dueSoonDays: PracticeNumber = {
  value: 30,
  source: {
    title: "Fullshift's own choice",
    mark: 'DERIVED',
    note: 'Room to choose a day that is like the others, and to choose another one when it rains',
  },
};
