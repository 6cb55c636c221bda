/** The page of a predicted day: what its form says besides, and its pictures of words. */
import { formatMinutes } from './quantity.ts';

export const en = {
  action: 'Work it out',
  looking: 'Looking through the book …',
  waiting: 'The prediction stands here once a piece has its tasks and its minutes.',
  piece: (number: number): string => `Piece ${number} of the day`,
  minutesOf: (number: number): string => `Minutes of piece ${number}`,
  changeTasks: 'Change the tasks',
  dayHint: 'Such as today or tomorrow, or written out',
  stateNotKnown: 'Not known yet',
  answerHeading: 'Predicted, not measured',
  answer: (pieces: number, durationMin: number): string =>
    `This is a prediction, not a result: ${pieces === 1 ? 'one piece' : `${pieces} pieces`} of work, ${formatMinutes(durationMin)} in all.`,
  unknown: (tasks: string): string =>
    `Nothing is known of: ${tasks}. It goes in as at least, so the day is open above. Measure it.`,
  notNamed: 'Only the minutes named here are in it.',
  fromWhat: (text: string, minutes: string): string => `${text}, ${minutes}`,
  nothingFollows: 'No figure follows yet.',
  samplesOpen: 'The samples behind it',
} as const;
