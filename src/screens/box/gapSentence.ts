/** What is missing for the sheet of a box, as a sentence. */
import type { Gap } from '#findings/gaps.ts';
import { type BoxGapKey, gapSentences } from '#words/boxGaps.ts';

export const gapSentence = ({ key, params }: Gap): string => gapSentences[key as BoxGapKey](params);
