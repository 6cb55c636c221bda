/** Results of a task group by date, against the limits of their day: the chart's names and the table beside it. */
import type { PictureLimit, PicturePoint } from '#findings/season/picture.ts';
import { formatDay, formatInWorking } from './quantity.ts';

const limitNames: Readonly<Record<PictureLimit['which'], string>> = {
  actionLevel: 'Action level',
  pel: 'Permissible exposure limit',
};

const origins: Readonly<Record<PicturePoint['from'], string>> = {
  sampled: 'our own samples',
  consultant: 'a consultant’s',
  ownEarlier: 'our own earlier one',
  inspector: 'an inspector’s',
  otherEmployer: 'another employer’s',
  other: 'reported to us',
};

export const en = {
  heading: 'Results by date',
  intro:
    'Each mark is one worker’s 8-hour average on one day. A bar reaches from the least to the most that it may be; an open end means that nothing bounds it from above.',
  choose: 'Task group',
  none: 'No result of this group is known yet.',
  chart: (from: string, to: string) => `8-hour averages from ${formatDay(from)} to ${formatDay(to)}`,
  axis: '8-hour average, µg/m³',
  days: 'Day of work',
  limit: ({ which, limitUgPerM3 }: Pick<PictureLimit, 'which' | 'limitUgPerM3'>) =>
    `${limitNames[which]} ${formatInWorking(limitUgPerM3, 'µg/m³')}`,
  limitLong: ({ which, limitUgPerM3, document, jurisdiction, fromOn, toOn }: PictureLimit) =>
    `${limitNames[which]} ${formatInWorking(limitUgPerM3, 'µg/m³')}, ${document} (${jurisdiction}), on results from ${formatDay(fromOn)} to ${formatDay(toOn)}`,
  marks: {
    sound: 'Filled mark: nothing stands against it',
    doubtful: 'Hollow mark: in doubt, proves nothing low',
    between: 'Bar: it may lie anywhere on it',
    atLeast: 'Arrow: at least',
  },
  columns: { day: 'Day', worker: 'Worker', site: 'Site', average: '8-hour average', note: 'Note' },
  doubtful: 'in doubt, proves nothing low',
  atLeast: 'at least',
  mayBeOther: 'may have been other work',
  from: (origin: PicturePoint['from']) => origins[origin],
  awaited: 'Measured, and no figure yet',
  someone: 'A worker who is not in the book',
  table: 'The same as a table',
  lowest: 'A result on one day says what that day was, not what the next will be.',
};

export type SeasonPictureWords = typeof en;
