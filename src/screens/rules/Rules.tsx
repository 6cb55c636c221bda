/**
 * The office, or an inspector who asks by what a day is judged: which rule judges where, what was read of it and what was not, what stands
 * beside it, and the firm's own stricter limits. Afterwards nobody takes a reference value for the rule, or a figure of memory for a source.
 */
import { Page } from '#parts/Page.tsx';
import { useBookMeta, useBookState, useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/limitsBeside.ts';
import { ChooseLimits } from './ChooseLimits.tsx';
import { ReadOnlyPage } from './ReadOnlyPage.tsx';
import { BesideEntries, RuleEntries } from './SetEntries.tsx';
import { SitesJudged } from './SitesJudged.tsx';

export function Rules() {
  const isOpen = useBookState().kind === 'open';
  const meta = useBookMeta();
  const registers = useRegisters();
  if (!isOpen) return <ReadOnlyPage />;
  if (meta === undefined || registers === undefined || meta.book === null) return <Page heading={words.heading} />;
  return (
    <ChooseLimits key={meta.book.id} book={meta.book} holderId={meta.holderPersonId} beside={<BesideEntries />}>
      <SitesJudged sites={registers.sites.list} />
      <RuleEntries />
    </ChooseLimits>
  );
}
