/** A page about the book's files while no book is open: says where one begins. */
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/keep.ts';

export function NoBook({ heading }: { readonly heading: string }) {
  return (
    <Page heading={heading} action={<MainAction to="/start">{words.noBook.toStart}</MainAction>}>
      <p>{words.noBook.text}</p>
    </Page>
  );
}
