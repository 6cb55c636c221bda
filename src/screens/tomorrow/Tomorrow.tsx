/** Under way: the page has its place and says nothing yet. */
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/shell.ts';

export function Tomorrow() {
  return (
    <Page heading={words.loading} back="/">
      {null}
    </Page>
  );
}
