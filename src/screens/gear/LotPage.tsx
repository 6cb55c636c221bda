/** A lot of cassettes: until when it may be used, how many were used, and how many field blanks of it went into each box. */
import { dayOf } from '#core/calendar.ts';
import { effectOf } from '#findings/gear/doubtsOf.ts';
import { gearStanding, type LotStanding } from '#findings/gear/gearStanding.ts';
import { Line, Particulars } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book, LotRecord } from '#records/book.ts';
import { en as doubtWords } from '#words/gearDoubt.ts';
import { heldOver, lines } from '#words/gearLines.ts';
import { en as gearWords } from '#words/gearScreen.ts';
import { formatDay } from '#words/quantity.ts';
import { Beside, Ways } from './Beside.tsx';
import { Doubts } from './Doubts.tsx';
import { doubtPath, type GearHere } from './gearHere.ts';
import { LongList } from './LongList.tsx';

const words = gearWords.lot;

export function LotPage({ here }: { readonly here: GearHere<LotRecord> }) {
  const { record, book, today } = here;
  const { media, expiresOn, held } = record;
  const open = record.doubts?.find((doubt) => effectOf(doubt) === 'open');
  const standing = gearStanding(book, today).lots.find(({ id }) => id === record.id);
  const expiry =
    expiresOn === null ? words.noExpiry : expiresOn < today ? lines.ranOut(expiresOn) : formatDay(expiresOn);
  return (
    <Page
      heading={here.title}
      over={heldOver(held)}
      back="/gear"
      backText={gearWords.toGear}
      action={
        open === undefined ? (
          <MainAction to="/gear">{gearWords.toGear}</MainAction>
        ) : (
          <MainAction to={doubtPath(here, open)}>{doubtWords.toDoubt}</MainAction>
        )
      }
      aside={
        <>
          <Used record={record} book={book} />
          <Beside here={here} />
        </>
      }
    >
      <Doubts here={here} atTheFoot={open} />
      <Particulars
        items={[
          [words.expiry, expiry],
          [words.media, media],
          ...(standing === undefined
            ? []
            : [[words.used, words.usedText(standing.usedCount, standing.blanksCount)] as const]),
        ]}
      />
      {standing !== undefined && <Boxes standing={standing} book={book} />}
      <Ways here={here} />
    </Page>
  );
}

function Boxes({ standing, book }: { readonly standing: LotStanding; readonly book: Book }) {
  return (
    <LongList heading={words.blanksHeading} whenEmpty={words.noBox} shownCount={5}>
      {newestFirst(standing.boxes, book).map(({ boxId, samplesCount, blanksCount, blanksNeededCount }) => {
        const box = book.boxes.get(boxId);
        const laboratory = book.laboratories.get(box?.packed.laboratoryId ?? '')?.name ?? '';
        const zone = book.sites.get(box?.packed.siteId ?? '')?.zone ?? 'UTC';
        return (
          <Line key={boxId} to={`/box/${boxId}`} detail={words.ofLot(samplesCount, blanksCount, blanksNeededCount)}>
            {words.box(laboratory, dayOf(box?.packedAt ?? '', zone))}
          </Line>
        );
      })}
    </LongList>
  );
}

const newestFirst = (boxes: LotStanding['boxes'], { boxes: records }: Book): LotStanding['boxes'] => {
  const packedAt = ({ boxId }: LotStanding['boxes'][number]): string => records.get(boxId)?.packedAt ?? '';
  return boxes.toSorted((a, b) => (packedAt(a) < packedAt(b) ? 1 : -1));
};

function Used({ record, book }: { readonly record: LotRecord; readonly book: Book }) {
  const used = [...book.samples.values()]
    .filter(({ lotId, putOn, sampleKind }) => lotId === record.id && (putOn !== null || sampleKind === 'blank'))
    .sort((a, b) => (a.workOn + a.sampleNumber < b.workOn + b.sampleNumber ? 1 : -1));
  return (
    <LongList heading={words.usedHeading} whenEmpty={words.none} shownCount={8}>
      {used.map(({ id, sampleNumber, sampleKind, workerId, workOn }) => (
        <Line key={id} to={`/sample/${id}`} detail={formatDay(workOn, 'en', 'weekday')}>
          {sampleKind === 'blank'
            ? words.blank(sampleNumber)
            : words.sample(sampleNumber, book.people.get(workerId ?? '')?.name ?? gearWords.nobody)}
        </Line>
      ))}
    </LongList>
  );
}
