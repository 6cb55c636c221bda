/** The page of results by date, besides what src/words/seasonPicture.ts says of the picture. */
import { formatDay } from './quantity.ts';

export const en = {
  looking: 'Looking through the book …',
  noGroups: 'No task group is in the book yet. Groups come with the first entries of who did what.',
  toGroups: 'Task groups',
  toSeason: 'What to measure next',
  groupAction: 'Open this task group',
  measured: (count: number): string => (count === 1 ? '1 result' : `${count} results`),
  description: (count: number, doubtful: number, atLeast: number): string =>
    [
      count === 1 ? 'One result by day of work.' : `${count} results by day of work.`,
      doubtful === 0 ? '' : `${doubtful} in doubt.`,
      atLeast === 0 ? '' : `${atLeast} at least.`,
      'The table below says each of them.',
    ]
      .filter((part) => part !== '')
      .join(' '),
  /** '1 Sep' */
  tick: (day: string): string => {
    const [number = '', month = ''] = formatDay(day, 'en', 'short').split(' ');
    return `${number} ${month.slice(0, 3)}`;
  },
  limitShort: {
    actionLevel: (level: string): string => `action level ${level}`,
    pel: (level: string): string => `PEL ${level}`,
  },
  limitsHeading: 'The limits',
} as const;
