/** What would a day look like? A prediction, said as one: it proves nothing, and what is presumed of the tasks stands. */
import type { PieceAhead } from '#findings/season/dayAhead.ts';
import { formatDay, formatInWorking, formatQuantity } from './quantity.ts';

const samples = (n: number): string => (n === 1 ? '1 sample' : `${n} samples`);

const from: Readonly<Record<PieceAhead['from'], (soundCount: number) => string>> = {
  known: (n) => `From ${samples(n)} of this work alone`,
  presumed: () => 'Nothing sound is known of this work alone: what the rule presumes stands in',
  notKnown: () => 'Nothing is known of this work, and the rule presumes nothing of it',
};

export const en = {
  heading: 'What would a day look like?',
  intro:
    'Minutes at each task, with what earlier samples of the same work found. It is a prediction. It proves nothing and takes nothing off what is to do; what is presumed of the tasks stands until they are measured.',
  prediction: 'Prediction',
  notFinding: 'Predicted, not measured',
  fields: {
    tasks: 'Tasks done together',
    minutes: 'Minutes',
    add: 'Add another piece of the day',
    remove: 'Take this piece out',
    setting: 'Where',
    settings: { indoors: 'Indoors', outdoors: 'Outdoors', both: 'Either' },
    state: 'State',
    day: 'Day of the work',
  },
  restOfDay: 'Minutes that are not named count as none: name the whole day.',
  minutesMissing: 'Give the minutes of each piece, above zero.',
  tasksMissing: 'Say which tasks the piece is.',
  tooLong: 'A day has no more than 24 hours: the minutes together come to more.',
  average: 'Predicted 8-hour average',
  averageNotKnown: 'Nothing bounds it from above',
  spread: (lowest: string, highest: string) => `If the day is like those: from ${lowest} to ${highest}`,
  carefulSide: 'The highest that was found counts, not the middle.',
  mayReach: {
    actionLevel: (level: string) => `It may reach the action level of ${level}.`,
    pel: (level: string) => `It may reach the permissible exposure limit of ${level}.`,
  },
  saysNothing: 'That a prediction does not reach a limit says nothing: measure.',
  longDay: 'The day is longer than 8 hours: all of its minutes are in the average.',
  protection: 'Least protection',
  apf: (factor: number) => `A respirator with an assigned protection factor of ${factor} or more`,
  apfNone:
    'No respirator follows from these figures. That is no leave to work without: ask what is presumed, and measure.',
  apfOpen: 'Nothing bounds the figure: no factor can be named as enough.',
  apfAtLeast: (factor: number) => `Not less than a factor of ${factor}; whether that is enough nobody can say.`,
  beyond: 'No respirator of the table is enough for the highest figure.',
  presumptionStands: 'What is presumed of the tasks is in it, and no prediction takes it out.',
  pieces: 'Piece by piece',
  from: (key: PieceAhead['from'], soundCount: number) => from[key](soundCount),
  columns: { sample: 'Sample', day: 'Day', worker: 'Worker', found: 'Found while it was worn', note: 'Note' },
  lowest: 'Lowest',
  highest: 'Highest',
  count: (n: number) => samples(n),
  geometricSd: (factor: string) => `They lie apart by a factor of ${factor} (geometric standard deviation)`,
  tooFew: 'Fewer than three: how far such days lie apart is not known.',
  doubtful: 'in doubt: it may raise the figure and never lowers it',
  sampleOn: (number: string, day: string) => `${number}, ${formatDay(day)}`,
  reportedOn: (day: string) => `An 8-hour average reported to us, ${formatDay(day)}`,
  value: (ugPerM3: number) => formatQuantity(ugPerM3, 'µg/m³'),
  /** As the rule writes it. */
  limit: (ugPerM3: number) => formatInWorking(ugPerM3, 'µg/m³'),
  someone: 'A worker who is not in the book',
};

export type DayAheadWords = typeof en;
