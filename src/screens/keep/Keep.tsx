/**
 * Keeping the book: supervisor or office, at the end of a day. The backup is made first, so that one tap hands it out; another device's
 * is looked into before it is taken in. Afterwards the book is somewhere else as well.
 */
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { useBookMeta, useBookState } from '#store/hooks.ts';
import { en as words } from '#words/keep.ts';
import { Books } from './Books.tsx';
import { MakeBackup } from './MakeBackup.tsx';
import { Storage } from './Storage.tsx';
import { TakeIn } from './TakeIn.tsx';
import { useBackup } from './useBackup.ts';

export function Keep() {
  const state = useBookState();
  const meta = useBookMeta();
  const backup = useBackup(meta?.book?.id ?? null);
  if (state.kind !== 'open')
    return (
      <Page heading={words.heading} action={<MainAction to="/start">{words.take.toStart}</MainAction>}>
        <p>{words.take.start}</p>
      </Page>
    );
  return (
    <Page
      heading={words.heading}
      action={
        <MainAction busy={backup.made === null || backup.busy} onClick={() => void backup.handOut()}>
          {backup.handedOut ? words.make.again : words.make.action}
        </MainAction>
      }
      aside={
        <>
          <Storage meta={meta} />
          <Books practice={meta?.practice ?? false} />
        </>
      }
    >
      <p>{words.intro}</p>
      <MakeBackup backup={backup} meta={meta} />
      <TakeIn />
    </Page>
  );
}
