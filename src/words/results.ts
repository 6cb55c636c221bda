/** Keying in a laboratory's report: its head once, then a line for each cassette. Read by the office. */
import { formatQuantity } from './quantity.ts';

const percent = (value: number): string => formatQuantity(value < 0 ? -value : value, '%');

export const en = {
  heading: 'Key in the results',
  intro: 'The head of the report once, then one line for each cassette. Enter goes to the next field.',
  toToday: 'Go to Today',
  allTheSame: 'Key in a report all the same',
  empty:
    'Nothing waits for a result. A cassette stands here once its pump is stopped, a field blank once it is opened.',
  report: {
    heading: 'The report',
    reportNumber: 'Report number',
    laboratory: 'Laboratory',
    noLaboratory: 'Not in the lists',
    accreditation: 'Accreditation on the report',
    method: 'Method',
    noMethod: 'Not stated',
    receivedOn: 'Received here on',
    receivedHint: 'The day from which telling the workers is counted',
    reportedOn: 'Date of the report',
    analysedOn: 'Analysed on',
    blankCorrected: 'Has the laboratory subtracted the blanks?',
    wallDeposit: 'Is the deposit on the inner wall included?',
    sae: 'Sampling and analytical error',
    saeHint: 'Only if the report gives it; never made up',
    answers: { yes: 'Yes', no: 'No', notStated: 'The report does not say' },
  },
  rows: {
    heading: 'The cassettes',
    number: 'Number',
    mass: 'Lead',
    massHint: 'as reported, such as 12.4 or <2.5',
    limit: 'Reporting limit',
    volume: 'Reported volume',
    concentration: 'Reported figure',
    row: (n: number) => `Line ${n}`,
    remove: 'Take this line away',
    whose: (worker: string, day: string) => `${worker}, ${day}`,
    blank: (day: string) => `Field blank, ${day}`,
    nothing: 'Nothing is keyed in yet. Write the number and the mass of at least one cassette',
    reading: 'Looking the number up',
  },
  mistakes: {
    empty: 'Write the number of the cassette',
    notDigits: 'A number has digits only',
    tooShort: 'Too few digits: write all digits of the label',
    tooLong: 'Too many digits: write the digits of one label',
    checkDigit:
      'These digits do not fit together: one is wrong, or two have changed places. Compare with the report and the label',
  },
  lineThere: (number: string) => `A line for ${number} is there already`,
  numberUnknown: (number: string) =>
    `No cassette of this book has the number ${number}. Compare it with the custody sheet, or take in the file of the device that wrote it`,
  numberTwice: (number: string) => `Two lines have the number ${number}. Take one away`,
  numberShared: (number: string) =>
    `More than one cassette has the number ${number}. Choose the one that the laboratory had`,
  chooser: {
    label: (number: string) => `Which cassette ${number}?`,
    cassette: (whose: string, site: string) => (site === '' ? whose : `${whose}, ${site}`),
    doubt: 'Until the number is settled, its figure stays doubtful.',
    settle: 'Settle the number',
  },
  mass: {
    noNumber: (found: string) =>
      `"${found}" carries no number. Write what the report gives as its reporting limit, such as <2.5`,
    zero: 'A laboratory never finds exactly nothing. Write less than its reporting limit, such as <2.5',
    missing: 'Write the mass, such as 12.4 or <2.5',
  },
  limitsDiffer: 'The reporting limit in its own field differs from the one behind the <. Write one of them',
  /** What the line amounts to, beside what the laboratory says. */
  ours: (concentration: string, volume: string) => `${volume} of air, so ${concentration}`,
  oursNoVolume: 'No volume of our own yet, so no concentration',
  laboratoryAgrees: (pct: number) => `the laboratory's figure is ${percent(pct)} from ours`,
  laboratoryDiffers: (pct: number) =>
    `the laboratory's figure is ${percent(pct)} from ours: look which volume it was given`,
  alreadyIn: (report: string, mass: string) => `A result is in already: ${mass}, report ${report}. Both are kept.`,
  isVoid: 'This sample is void. What the laboratory found is kept all the same.',
  save: (count: number) => (count === 1 ? 'Write the result down' : `Write ${count} results down`),
  awaiting: {
    heading: 'Still without a result',
    fill: (count: number, laboratory: string) => `Put the ${count} numbers of the box for ${laboratory} in`,
    keyed: 'keyed in',
  },
  done: {
    heading: (count: number) => (count === 1 ? 'One result is written down' : `${count} results are written down`),
    intro: 'What they say is on the page of each day.',
    day: (worker: string, day: string) => `${worker}, ${day}`,
    blank: (number: string, mass: string) => `Field blank ${number}: ${mass}`,
    more: 'Key in another report',
    first: (worker: string) => `Go to the day of ${worker}`,
    today: 'Go to Today',
    todo: 'What is to do now, for whom and by when',
  },
};
