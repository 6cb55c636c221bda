/** Pictures of a sample: its label, and beneath the story those of the readings that its flow rests on. */
import { PhotosOf, Pictures } from '#parts/Pictures.tsx';
import { happenedNow } from '#store/device.ts';
import { usePictures } from '#store/hooks/usePhotos.ts';
import { en as words } from '#words/sampling.ts';
import type { Sampling } from './useSampling.ts';

export function SamplePictures({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, place, by } = sampling;
  const photos = sample.photos ?? [];
  const pictures = usePictures(photos);
  const keep = () =>
    pictures.choice.handIn({
      recordKey: sample.key,
      of: 'label',
      title: `${words.number} ${sample.sampleNumber}`,
      entry: { happened: happenedNow(place.zone), by },
    });
  return (
    <Pictures
      held={pictures}
      name="photo"
      of="label"
      photos={photos}
      zone={place.zone}
      nameOf={(id) => book.people.get(id)?.name}
      onKeep={keep}
    />
  );
}

/** Under the line of the story that tells of the flow check. */
export function ReadingPictures({ sampling, checkId }: { readonly sampling: Sampling; readonly checkId: string }) {
  const { book, place } = sampling;
  const photos = book.flowChecks.get(checkId)?.photos ?? [];
  const { urls } = usePictures(photos);
  return <PhotosOf photos={photos} urls={urls} zone={place.zone} nameOf={(id) => book.people.get(id)?.name} />;
}
