/** Pictures of a pump, a flow meter, a lot or a site: its label, its certificate, the place itself. */
import { Pictures } from '#parts/Pictures.tsx';
import type { AnyRecord } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { usePictures } from '#store/hooks/usePhotos.ts';
import { type Registers, useBookMeta } from '#store/hooks.ts';
import type { RegisterKind } from './registers.ts';

const ofKind = { meter: 'certificate', lot: 'label', pump: 'label', site: 'site' } as const;

const showsPictures = (kind: RegisterKind): kind is keyof typeof ofKind => Object.hasOwn(ofKind, kind);

interface EntryPicturesProps {
  readonly kind: RegisterKind;
  readonly record: AnyRecord;
  readonly title: string;
  readonly registers: Registers;
}

export function EntryPictures({ kind, ...props }: EntryPicturesProps) {
  return showsPictures(kind) ? <OfEntry of={ofKind[kind]} {...props} /> : null;
}

interface OfEntryProps extends Omit<EntryPicturesProps, 'kind'> {
  readonly of: (typeof ofKind)[keyof typeof ofKind];
}

function OfEntry({ of, record, title, registers }: OfEntryProps) {
  const photos = record.photos ?? [];
  const pictures = usePictures(photos);
  const by = useBookMeta()?.holderPersonId ?? null;
  const zone = deviceZone();
  return (
    <Pictures
      held={pictures}
      name="photo"
      of={of}
      photos={photos}
      zone={zone}
      nameOf={(id) => registers.people.byId.get(id)?.name}
      onKeep={() =>
        pictures.choice.handIn({ recordKey: record.key, of, title, entry: { happened: happenedNow(zone), by } })
      }
    />
  );
}
