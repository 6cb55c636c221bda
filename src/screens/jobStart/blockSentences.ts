/** Why an earlier measurement may not be relied on, in sentences, each told once; a doubt about a sample in the words of the doubt. */
import type { DeterminationBlock } from '#findings/duties/determining/determination.ts';
import { reasonSentences } from '#words/reasons.ts';
import { en as words } from '#words/reliance.ts';

type ReasonKey = keyof typeof reasonSentences;

function blockSentence({ key, params }: DeterminationBlock): string {
  const { reason } = params;
  const isReason = key === 'sampleDoubtful' && typeof reason === 'string' && reason in reasonSentences;
  return isReason ? reasonSentences[reason as ReasonKey](params) : words.blocks[key](params);
}

export const blockSentences = (blocks: readonly DeterminationBlock[]): readonly string[] => [
  ...new Set(blocks.map(blockSentence)),
];
