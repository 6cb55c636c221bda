/** All bad files, each with what must come of it. */
import type { BadFile } from './badFile.ts';
import { badArchives } from './corpus/archives.ts';
import { badFacts } from './corpus/facts.ts';
import { badHeaders } from './corpus/headers.ts';
import { badPapers } from './corpus/papers.ts';
import { badSeals } from './corpus/seals.ts';
import { badTexts } from './corpus/texts.ts';

export const corpus: readonly BadFile[] = [
  ...badArchives,
  ...badTexts,
  ...badHeaders,
  ...badFacts,
  ...badSeals,
  ...badPapers,
];
