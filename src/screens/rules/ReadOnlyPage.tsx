/** The same limits without a book: to read, nothing to choose. */
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/limitsBeside.ts';
import { BesideEntries, RuleEntries } from './SetEntries.tsx';

export function ReadOnlyPage() {
  return (
    <Page
      heading={words.heading}
      back="/start"
      aside={<BesideEntries />}
      action={<MainAction to="/start">{words.begin}</MainAction>}
    >
      <p>{words.intro}</p>
      <RuleEntries />
      <p>{words.noBook}</p>
    </Page>
  );
}
