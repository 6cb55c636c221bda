/** An address of an earlier version: what is in dispute is settled on a page of its own, whatever record it is about. */
import { Redirect, useSearch } from 'wouter';
import { openMatters } from '#findings/openMatters.ts';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/settle.ts';
import type { Sampling } from './useSampling.ts';

export function Settle({ sampling }: { readonly sampling: Sampling }) {
  const asked = new URLSearchParams(useSearch());
  const matter = openMatters(sampling.book).find(
    (one) =>
      one.kind === 'conflict' && one.conflict.factId === asked.get('fact') && one.conflict.path === asked.get('path'),
  );
  if (matter !== undefined) return <Redirect to={`/settle/${encodeURIComponent(matter.key)}`} replace />;
  return (
    <Page heading={words.heading} back={`/sample/${sampling.sample.id}`}>
      <ErrorSummary errors={[{ field: null, text: words.gone }]} />
    </Page>
  );
}
