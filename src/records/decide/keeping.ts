/** Pictures, and what a person settles after two devices came together. */
import type { Ask } from './ask.ts';
import { needsWhy } from './ask.ts';

export const keepingCases = {
  'photoTaken.v1': (_ask: Ask<'photoTaken.v1'>) => undefined,
  'voidReviewed.v1': (ask: Ask<'voidReviewed.v1'>) => needsWhy(ask as Ask),
  'sheetDifferenceKept.v1': (ask: Ask<'sheetDifferenceKept.v1'>) => needsWhy(ask as Ask),
  'missingEntriesAccepted.v1': (ask: Ask<'missingEntriesAccepted.v1'>) => needsWhy(ask as Ask),
};
