/** What every gear page has below its own: whose it is, found bad, pictures, the way to the lists and to its story. */
import { Line, Lines } from '#parts/Lines.tsx';
import { Pictures } from '#parts/Pictures.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { happenedNow } from '#store/device.ts';
import { usePictures } from '#store/hooks/usePhotos.ts';
import { en as doubtWords } from '#words/gearDoubt.ts';
import { en as words } from '#words/gearScreen.ts';
import styles from './gear.module.css';
import { type GearHere, pathOf } from './gearHere.ts';

/** The quiet ways on from the page. */
export function Ways({ here }: { readonly here: GearHere }) {
  const path = pathOf(here);
  return (
    <div className={styles.actions}>
      <QuietAction to={`${path}?do=found-bad`}>{doubtWords.action}</QuietAction>
      <QuietAction to={`${path}?do=held`}>{words.held.action}</QuietAction>
    </div>
  );
}

export function Beside({ here }: { readonly here: GearHere }) {
  const { gear, record } = here;
  return (
    <>
      <PicturesOf here={here} />
      <Lines>
        <Line to={`/lists?correct=${gear}.${record.id}`}>{words.correct}</Line>
        <Line to={`/story/${encodeURIComponent(record.key)}`}>{words.story}</Line>
      </Lines>
    </>
  );
}

function PicturesOf({ here: { gear, record, title, zone, by, book } }: { readonly here: GearHere }) {
  const photos = record.photos ?? [];
  const pictures = usePictures(photos);
  const of = gear === 'meter' ? 'certificate' : 'label';
  return (
    <Pictures
      held={pictures}
      name="photo"
      of={of}
      photos={photos}
      zone={zone}
      nameOf={(id) => book.people.get(id)?.name}
      onKeep={() =>
        pictures.choice.handIn({ recordKey: record.key, of, title, entry: { happened: happenedNow(zone), by } })
      }
    />
  );
}
