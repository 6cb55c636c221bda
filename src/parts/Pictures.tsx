/** The pictures of one thing: those in the book, one more to be taken, and what became of those just taken. */
import { wallTimeOf } from '#core/calendar.ts';
import { en as words } from '#words/photos.ts';
import { type OutgoingLine, OutgoingPhotoLines } from './OutgoingPhotoLines.tsx';
import { PhotoField, type PhotoFieldProps } from './PhotoField.tsx';
import styles from './PhotoLines.module.css';
import { PhotoLines, type ShownPhoto } from './PhotoLines.tsx';
import { QuietAction } from './QuietAction.tsx';

type Of = keyof typeof words.take;

interface HeldPhoto {
  readonly photoId: string;
  readonly of: Of;
  readonly hash: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly at: string;
  readonly by: string | null;
}

/** What the store hands to a page with pictures. */
export interface PicturesHeld {
  readonly choice: Pick<PhotoFieldProps, 'state' | 'why' | 'url'> & {
    readonly choose: (file: Blob) => void;
    readonly remove: () => void;
  };
  readonly urls: ReadonlyMap<string, string | null>;
  readonly outgoing: readonly (Omit<OutgoingLine, 'canTryAgain'> & { readonly photo: unknown })[];
  readonly onTryAgain: (id: string) => void;
  readonly onLetGo: (id: string) => void;
}

export const Outgoing = ({ held: { outgoing, onTryAgain, onLetGo } }: { readonly held: PicturesHeld }) => (
  <OutgoingPhotoLines
    photos={outgoing.map((each) => ({ ...each, canTryAgain: each.photo !== null }))}
    onTryAgain={onTryAgain}
    onLetGo={onLetGo}
  />
);

export interface TakePhotoProps {
  readonly held: PicturesHeld;
  readonly name: string;
  readonly of: Of;
  readonly hint?: string | undefined;
}

export const TakePhoto = ({ held: { choice }, name, of, hint }: TakePhotoProps) => (
  <PhotoField
    name={name}
    label={words.take[of]}
    hint={hint}
    state={choice.state}
    why={choice.why}
    url={choice.url}
    onChoose={choice.choose}
    onRemove={choice.remove}
  />
);

export interface PhotosOfProps {
  readonly photos: readonly HeldPhoto[];
  readonly urls: ReadonlyMap<string, string | null>;
  readonly zone: string;
  readonly nameOf: (personId: string) => string | undefined;
}

export function PhotosOf({ photos, urls, zone, nameOf }: PhotosOfProps) {
  const shown = photos.map(({ photoId, of, hash, widthPx, heightPx, at, by }): ShownPhoto => {
    const { day, time } = wallTimeOf(at, zone);
    const taken = words.taken(day, time, by === null ? null : (nameOf(by) ?? null));
    return { key: photoId, of, taken, widthPx, heightPx, url: urls.get(hash) };
  });
  return <PhotoLines photos={shown} />;
}

export interface PicturesProps extends TakePhotoProps, Omit<PhotosOfProps, 'urls'> {
  readonly onKeep: () => void;
}

/** Of a thing that is in the book already: a picture is kept by a tap of its own. */
export function Pictures(props: PicturesProps) {
  const { held, onKeep } = props;
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <PhotosOf {...props} urls={held.urls} />
      <TakePhoto {...props} />
      {held.choice.state === 'ready' && (
        <div>
          <QuietAction onClick={onKeep}>{words.keep}</QuietAction>
        </div>
      )}
      <Outgoing held={held} />
    </section>
  );
}
