/**
 * One box, supervisor or office, signal or none: what is missing, the custody sheet and its revisions, the hand-over. Afterwards the
 * sheet is in the box, its bytes are kept, and the book knows who has the box.
 */
import { dayOf } from '#core/calendar.ts';
import { custodyGaps, type Gap } from '#findings/gaps.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { sheetMatter } from '#findings/openMatters.ts';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import type { Book, BoxRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { type KeptFile, useKeptFile } from '#store/hooks/useKeptFile.ts';
import { useBookMeta, useBoxBook } from '#store/hooks.ts';
import { en } from '#words/box.ts';
import { restsLines } from '#words/gearLines.ts';
import { formatDay } from '#words/quantity.ts';
import { differenceSentences } from '#words/sheetDifferences.ts';
import { BoxInside } from './BoxInside.tsx';
import { BoxSheets, fileNameOf, type Issue, Outcome } from './BoxSheets.tsx';
import { gapSentence } from './gapSentence.ts';
import { HandedOver, HandOver } from './HandOver.tsx';
import { Differs, SheetForm } from './SheetForm.tsx';
import { type Making, useMaking } from './useMaking.ts';

const words = en.box;

export function Box({ boxId = '' }: { readonly boxId?: string }) {
  const book = useBoxBook(boxId);
  const meta = useBookMeta();
  if (book === undefined || meta === undefined) return null;
  const box = book?.boxes.get(boxId);
  if (!book || !box)
    return (
      <Page heading={en.boxes.heading} back="/boxes">
        <p>{words.gone}</p>
      </Page>
    );
  return <BoxPage box={box} book={book} by={meta.holderPersonId} />;
}

interface BoxPageProps {
  readonly box: BoxRecord;
  readonly book: Book;
  readonly by: string | null;
}

function BoxPage({ box, book, by }: BoxPageProps) {
  const site = book.sites.get(box.packed.siteId);
  const where = { zone: site?.zone ?? deviceZone(), by };
  const issue = box.issues.at(-1);
  const gaps = custodyGaps(box.id, book);
  const different = issue ? differenceSentences(sheetMatter(box, book)?.differences ?? [], issue.sheet, box, book) : [];
  const mustMake = issue === undefined || different.length > 0;
  const making = useMaking(box, book, where);
  const file = useKeptFile(issue?.pdfHash ?? null);
  const laboratory = book.laboratories.get(box.packed.laboratoryId);
  return (
    <Page
      heading={words.heading(laboratory?.name ?? words.unknownLaboratory)}
      over={words.over(site?.name ?? '', formatDay(dayOf(box.packedAt, where.zone)))}
      back="/boxes"
      action={
        mustMake ? <Make making={making} issue={issue} /> : <HandOut issue={issue} file={file} zone={where.zone} />
      }
      aside={<BoxInside box={box} book={book} />}
    >
      <ErrorSummary errors={making.errors} />
      <Missing heading={words.stops} gaps={gaps.filter(({ weight }) => weight === 'stops')} />
      <Differs sentences={different} />
      <RestsOn lines={restsLines(gearDoubtsOfPaper({ kind: 'box', id: box.id }, book))} paper={issue !== undefined} />
      <BoxSheets issues={box.issues} zone={where.zone} />
      {file.state === 'missing' && <p>{words.notHere}</p>}
      <Outcome file={file} />
      {mustMake && <SheetForm making={making} asksWhy={issue !== undefined} />}
      <Missing heading={words.open} gaps={gaps.filter(({ weight }) => weight === 'open')} />
      {box.handedOver === null && issue && <HandOver box={box} {...where} />}
      <HandedOver box={box} {...where} />
      <Lines>
        <Line to={`/story/${encodeURIComponent(box.key)}`}>{en.story}</Line>
      </Lines>
    </Page>
  );
}

function Make({ making, issue }: { readonly making: Making; readonly issue: Issue | undefined }) {
  const text = issue === undefined ? words.make : words.makeRevision(String(Number(issue.revision) + 1));
  return (
    <MainAction busy={making.busy} onClick={() => void making.make()}>
      {making.busy ? words.making : text}
    </MainAction>
  );
}

interface HandOutProps {
  readonly issue: Issue;
  readonly file: KeptFile;
  readonly zone: string;
}

function HandOut({ issue, file, zone }: HandOutProps) {
  return (
    <MainAction busy={file.state === 'loading'} onClick={() => void file.handOut(fileNameOf(issue, zone))}>
      {words.handOut(issue.revision)}
    </MainAction>
  );
}

function Missing({ heading, gaps }: { readonly heading: string; readonly gaps: readonly Gap[] }) {
  if (gaps.length === 0) return null;
  return (
    <Lines heading={heading}>
      {gaps.map((gap) => (
        <Line key={gapSentence(gap)}>{gapSentence(gap)}</Line>
      ))}
    </Lines>
  );
}
