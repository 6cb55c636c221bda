/** The first page while a book is open: says so, and leads on. */
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { useBookMeta } from '#store/hooks.ts';
import { en as words } from '#words/start.ts';

export function AlreadyOpen() {
  const firm = useBookMeta()?.book?.firmName ?? '';
  return (
    <Page heading={words.heading} action={<MainAction to="/">{words.open.today}</MainAction>}>
      <p>{words.open.text(firm)}</p>
      <Lines>
        <Line to="/keep">{words.open.keep}</Line>
      </Lines>
    </Page>
  );
}
