/** Ids of what the season names beside the two days of the practice book, drawn anew each time. */
import { newId } from '#store/device.ts';
import type { PracticeIds } from '../practiceBook.ts';

const names = [
  ...([
    'bridge',
    'readingRoom',
    'dora',
    'rex',
    'maya',
    'sam',
    'steelPainter',
    'pumpFour',
    'pumpFive',
    'pumpSix',
  ] as const),
  ...(['oldPiston', 'consultants', 'inspectors', 'reliance'] as const),
  ...(['pumpSeven', 'oldMeter', 'tubeTwo', 'lentPiston', 'oldLot', 'newLot'] as const),
  ...(['planWalls', 'planTakeOut', 'planStripping'] as const),
];

export type SeasonIds = PracticeIds & Readonly<Record<(typeof names)[number], string>>;
export type Worker = 'first' | 'second' | 'dora' | 'rex' | 'maya' | 'sam';

export const seasonIds = (ids: PracticeIds): SeasonIds =>
  ({ ...ids, ...Object.fromEntries(names.map((name) => [name, newId()])) }) as SeasonIds;
