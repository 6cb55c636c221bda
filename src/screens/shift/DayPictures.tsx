/** Pictures of the site on this day, beside the conditions that they show. */
import { Pictures } from '#parts/Pictures.tsx';
import { happenedNow } from '#store/device.ts';
import { usePictures } from '#store/hooks/usePhotos.ts';
import type { ShiftDay } from './useShift.ts';

export function DayPictures({ day: { book, place, by } }: { readonly day: ShiftDay }) {
  const { shift, site, zone } = place;
  const photos = shift.photos ?? [];
  const pictures = usePictures(photos);
  const keep = () =>
    pictures.choice.handIn({
      recordKey: shift.key,
      of: 'site',
      title: site.name,
      entry: { happened: happenedNow(zone), by },
    });
  return (
    <Pictures
      held={pictures}
      name="photo"
      of="site"
      photos={photos}
      zone={zone}
      nameOf={(id) => book.people.get(id)?.name}
      onKeep={keep}
    />
  );
}
