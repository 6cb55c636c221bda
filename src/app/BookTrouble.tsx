/** The book is there and cannot be opened: says why, and that nothing was lost. */
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { BookState } from '#store/session.ts';
import { en as words } from '#words/shell.ts';

type Trouble = Extract<BookState, { readonly kind: 'newerVersion' | 'failed' }>;

export function BookTrouble({ state }: { readonly state: Trouble }) {
  const newer = state.kind === 'newerVersion';
  return (
    <Page
      heading={newer ? words.book.newerVersion.heading : words.book.failed.heading}
      action={<MainAction onClick={() => window.location.reload()}>{words.failed.again}</MainAction>}
    >
      <p>{newer ? words.book.newerVersion.text : words.book.failed[state.why]}</p>
    </Page>
  );
}
