/** What became of a paper that was handed out, and that it is not here where only the fact is. */
import { en as words } from '#words/printPapers.ts';
import { Notice } from './Notice.tsx';

export interface HandedOutProps {
  readonly state: 'none' | 'loading' | 'making' | 'ready' | 'missing' | 'failed';
  readonly outcome: { readonly kind: string; readonly why?: string } | null;
}

export function HandedOut({ state, outcome }: HandedOutProps) {
  if (state === 'missing') return <p>{words.handOut.notHere}</p>;
  if (state === 'failed') return <Notice kind="alert">{words.handOut.notMade}</Notice>;
  if (outcome === null) return null;
  const key = (outcome.kind === 'failed' ? outcome.why : outcome.kind) as keyof typeof words.handOut.outcome;
  return <Notice kind={outcome.kind === 'failed' ? 'alert' : 'quiet'}>{words.handOut.outcome[key]}</Notice>;
}
