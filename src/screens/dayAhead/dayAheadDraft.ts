/** What is typed of a day that has not come, and what is read from it. */
import type { DayAheadInput } from '#findings/season/dayAhead.ts';
import { fieldReader } from '#parts/fieldReader.ts';
import { en } from '#words/dayAhead.ts';
import { en as screen } from '#words/dayAheadScreen.ts';
import { en as partsWords } from '#words/parts.ts';

const words = en.fields;
export const stateNotKnown = '-';
/** More pieces than any day has; a page of more would be no help. */
export const mostPieces = 12;
const minutesOfDay = 1440;

export interface PieceText {
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly minutes: string;
}

export interface DayAheadText {
  readonly pieces: readonly PieceText[];
  readonly setting: 'indoors' | 'outdoors' | 'both';
  readonly state: string;
  readonly day: string;
}

export const emptyPiece: PieceText = { taskIds: [], find: '', minutes: '' };

export const fieldOf = (name: 'tasks' | 'minutes', at: number): string => `${name}${at}`;

export function readDayAhead(text: DayAheadText, today: string) {
  const read = fieldReader(partsWords);
  const pieces = text.pieces.map(({ taskIds, minutes }, at) => {
    if (taskIds.length === 0) read.add(fieldOf('tasks', at), `${screen.piece(at + 1)}: ${en.tasksMissing}`);
    const range = { least: 1, most: minutesOfDay };
    const durationMin = read.quantity(fieldOf('minutes', at), screen.minutesOf(at + 1), 'min', minutes, range);
    return { taskIds, durationMin: durationMin ?? 0 };
  });
  const together = pieces.reduce((sum, { durationMin }) => sum + durationMin, 0);
  if (together > minutesOfDay) read.add(fieldOf('minutes', pieces.length - 1), en.tooLong);
  const on = read.day('day', words.day, text.day, today);
  const input: DayAheadInput | null =
    read.errors.length > 0 || on === null
      ? null
      : {
          pieces,
          setting: text.setting === 'both' ? null : text.setting,
          stateCode: text.state === stateNotKnown ? null : text.state,
          on,
        };
  return { errors: read.errors, input };
}
