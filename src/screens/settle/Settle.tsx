/**
 * Supervisor or office, after a file of another device was taken in, or when a figure says that something is in dispute: a short list,
 * what holds up most first. Each line opens a page of its own; nothing settles itself.
 */
import { dayOf } from '#core/calendar.ts';
import { gearStanding } from '#findings/gear/gearStanding.ts';
import { type OpenMatter, openMatters, type SheetMatter, sheetMatter } from '#findings/openMatters.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useDevices } from '#store/hooks/useFactsAbout.ts';
import { useOpenRecords, useThroughBoxes } from '#store/hooks/useOpenMatters.ts';
import { disputedIn, doubtsToSettle, gearLinePath } from '#words/gearDue.ts';
import { en as words } from '#words/settle.ts';
import { inOrder, lineOf } from './lineOf.ts';
import { matterPath, zoneOf } from './settling.ts';

interface SheetFound {
  readonly matter: SheetMatter;
  readonly book: Book;
}

/** The slice of one box: does its sheet still say what the record says? */
function lookAtSheet(boxId: string, book: Book): readonly SheetFound[] {
  const box = book.boxes.get(boxId);
  const matter = box ? sheetMatter(box, book) : null;
  return matter === null ? [] : [{ matter, book }];
}

/** Two decisions about gear that differ are decided anew where the doubt itself is. */
const isOfDoubt = (matter: OpenMatter): boolean =>
  matter.kind === 'conflict' && matter.conflict.path.startsWith('/doubts/');

export function Settle() {
  const book = useOpenRecords();
  const devices = useDevices();
  const sheets = useThroughBoxes(lookAtSheet);
  if (book === undefined || devices === undefined) return <Page heading={words.heading} />;
  const inBook = openMatters(book).filter((matter) => matter.kind !== 'sheetDiffers' && !isOfDoubt(matter));
  const bookOfSheet = new Map(sheets.found.map((one) => [one.matter.key, one.book]));
  const matters = inOrder([...inBook, ...sheets.found.map(({ matter }) => matter)]);
  // What was found bad is decided on the page of the gear itself.
  const doubts = doubtsToSettle(gearStanding(book, dayOf(now(), deviceZone())), disputedIn(book));
  const nothing = matters.length === 0 && doubts.length === 0 && sheets.ended;
  return (
    <Page heading={words.heading} back="/" action={nothing && <MainAction to="/">{words.toToday}</MainAction>}>
      {book.takingIn === true && (
        <Notice kind="alert" actions={<QuietAction to="/take-in">{words.toTakeIn}</QuietAction>}>
          {words.takingIn}
        </Notice>
      )}
      {matters.length > 0 && <p>{words.intro}</p>}
      {matters.length > 0 && (
        <Lines>
          {matters.map((matter) => {
            const around = bookOfSheet.get(matter.key) ?? book;
            const { sentence, meanwhile } = lineOf(matter, {
              book: around,
              devices,
              zone: zoneOf(matter, around, deviceZone()),
            });
            return (
              <Line key={matter.key} to={matterPath(matter.key)} detail={meanwhile}>
                {sentence}
              </Line>
            );
          })}
        </Lines>
      )}
      {doubts.length > 0 && (
        <Lines heading={words.gearHeading}>
          {doubts.map((line) => (
            <Line key={gearLinePath(line)} to={gearLinePath(line)} detail={words.meanwhile.gear}>
              {line.sentence}
            </Line>
          ))}
        </Lines>
      )}
      <p role="status">
        {nothing
          ? words.empty
          : !sheets.ended && sheets.totalCount > 0
            ? words.lookingThrough(sheets.doneCount, sheets.totalCount)
            : ''}
      </p>
      {sheets.ended && sheets.capped && <p>{words.lookedUpTo(sheets.totalCount)}</p>}
    </Page>
  );
}
