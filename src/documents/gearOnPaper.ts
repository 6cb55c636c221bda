/** The part of a paper that says which gear it rests on that was found bad. Nothing where nothing is in doubt. */
import type { DoubtOnPaper } from '#findings/gear/doubtsOnPaper.ts';
import { en, noticeGear, noticeGearLines } from '#words/gearOnPaper.ts';
import type { PrintedSection } from './exposureRecordValues.ts';
import type { PaperLanguage } from './occasion.ts';
import type { Piece } from './paginate.ts';
import type { Frame } from './pieces.ts';
import { headed, paragraph } from './reading.ts';

/** Kept with the values of a paper: whatever was handed in, plain. */
export const keptDoubts = (doubts: readonly DoubtOnPaper[]): DoubtOnPaper[] =>
  doubts.map(({ gear, gearNumber, foundOn, found, effect, why }) => ({
    ...{ gear, gearNumber, foundOn, found, effect, why },
  }));

export function noticeGearPieces(frame: Frame, doubts: readonly DoubtOnPaper[], language: PaperLanguage): Piece[] {
  if (doubts.length === 0) return [];
  const lines = noticeGearLines(doubts, language);
  return [
    ...headed(frame, noticeGear[language].heading),
    ...lines.flatMap((line, at) => paragraph(frame, line, at === lines.length - 1 ? 'readStrong' : 'read', 2)),
  ];
}

const recordLines = (doubts: readonly DoubtOnPaper[]): readonly string[] => [...doubts.map(en.line), en.means];

/** Of the exposure record; null where nothing is in doubt. */
export const gearSection = (doubts: readonly DoubtOnPaper[]): PrintedSection | null =>
  doubts.length === 0 ? null : { heading: en.heading, fields: [], lines: recordLines(doubts) };

/** Of the determination. */
export const gearPieces = (frame: Frame, doubts: readonly DoubtOnPaper[]): Piece[] =>
  doubts.length === 0
    ? []
    : [...headed(frame, en.heading), ...recordLines(doubts).flatMap((line) => paragraph(frame, line, 'read', 2))];
