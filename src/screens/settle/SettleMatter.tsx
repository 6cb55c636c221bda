/**
 * One matter, opened from the list or from the record it is about. Settled meanwhile, here or on another page, it says so; when the values
 * in dispute have changed, it is another matter and stands in the list.
 */
import { type OpenMatter, openMatters } from '#findings/openMatters.ts';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useDevices, useFactsAbout } from '#store/hooks/useFactsAbout.ts';
import { useOpenRecords } from '#store/hooks/useOpenMatters.ts';
import { useBookMeta, useBoxBook } from '#store/hooks.ts';
import { en as words } from '#words/settle.ts';
import { ConflictForm } from './ConflictForm.tsx';
import { MissingForm } from './MissingForm.tsx';
import { NumberForm } from './NumberForm.tsx';
import { SheetForm } from './SheetForm.tsx';
import { type Settling, zoneOf } from './settling.ts';
import { VoidForm } from './VoidForm.tsx';

/** A sheet is looked at in the slice of its own box: `sheet <box> <revision> <hash>`. */
const boxOfKey = (key: string): string => (key.startsWith('sheet ') ? (key.split(' ')[1] ?? '') : '');

export function SettleMatter({ matterKey = '' }: { readonly matterKey?: string }) {
  const boxId = boxOfKey(matterKey);
  const open = useOpenRecords();
  const boxBook = useBoxBook(boxId);
  const devices = useDevices();
  const meta = useBookMeta();
  const book: Book | null | undefined = boxId === '' ? open : boxBook;
  const matter = book ? openMatters(book).find(({ key }) => key === matterKey) : undefined;
  const facts = useFactsAbout(matter?.recordKeys ?? []);
  if (!loaded(book, open, devices, meta, facts))
    return <Page heading={words.looking} back="/settle" backText={words.back} />;
  if (!book || matter === undefined || !devices || !facts) return <Gone />;
  return formOf({
    matter,
    book: { ...book, takingIn: open?.takingIn === true },
    devices,
    facts,
    by: meta?.holderPersonId ?? null,
    zone: zoneOf(matter, book, deviceZone()),
  });
}

const loaded = (...answers: readonly unknown[]): boolean => answers.every((answer) => answer !== undefined);

const of = <M extends OpenMatter>(settling: Settling, matter: M): Settling<M> => ({ ...settling, matter });

function formOf(settling: Settling) {
  const { matter } = settling;
  switch (matter.kind) {
    case 'conflict':
      return <ConflictForm settling={of(settling, matter)} />;
    case 'voidAgainstResult':
      return <VoidForm settling={of(settling, matter)} />;
    case 'sameNumber':
      return <NumberForm settling={of(settling, matter)} />;
    case 'sheetDiffers':
      return <SheetForm settling={of(settling, matter)} />;
    case 'missingEntries':
      return <MissingForm settling={of(settling, matter)} />;
  }
}

function Gone() {
  return (
    <Page
      heading={words.heading}
      back="/settle"
      backText={words.back}
      action={<MainAction to="/settle">{words.back}</MainAction>}
    >
      <ErrorSummary errors={[{ field: null, text: words.gone }]} />
    </Page>
  );
}
