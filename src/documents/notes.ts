/** Texts too long for their cell: the cell shows the start and names a note, the note prints the whole. Nothing is cut silently. */
import { en } from '#words/custody.ts';
import { type SetLine, setLines } from './lines.ts';
import type { Measure } from './pageModel.ts';
import type { StyleName } from './typography.ts';

export interface Notes {
  /** Lines for a cell: all of them, or the first ones and the note's number. */
  readonly fit: (text: string, subject: string, style: StyleName, widthPt: number, maxLines: number) => SetLine[];
  readonly taken: () => readonly string[];
}

export function takeNotes(measure: Measure): Notes {
  const taken: string[] = [];
  return {
    taken: () => taken,
    fit: (text, subject, style, widthPt, maxLines) => {
      const lines = setLines(measure, text, style, widthPt);
      if (lines.length <= maxLines) return lines;
      const number = taken.length + 1;
      taken.push(en.note(number, subject, text.replaceAll(/\s*\n\s*/g, ', ')));
      const kept = lines.slice(0, maxLines - 1);
      return [...kept, { text: `… ${en.seeNote(number)}`, style, gluedToNext: false }];
    },
  };
}
