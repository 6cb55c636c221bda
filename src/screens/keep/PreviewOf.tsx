/** What a file would add, in plain words, before any of it is taken: what is new, what both sides changed, what is missing or damaged. */
import { namesIn } from '#findings/naming.ts';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { Notice } from '#parts/Notice.tsx';
import { deviceZone } from '#store/device.ts';
import type { BothChanged, Preview } from '#store/handOver/handOver.ts';
import { useRecordsNamed } from '#store/hooks/useRecordsNamed.ts';
import { countedKinds, entries } from '#words/entries.ts';
import { labelOf } from '#words/fieldNames.ts';
import { recordName, zoneOfRecord } from '#words/recordNames.ts';
import { en } from '#words/takeIn.ts';
import { momentText, valueText } from '#words/valueText.ts';

const words = en.preview;

export function PreviewOf({ preview }: { readonly preview: Preview }) {
  const kinds = countedKinds(preview.newByKind);
  return (
    <>
      {preview.forks.length > 0 && <Notice kind="alert">{words.forks(preview.forks.length)}</Notice>}
      {preview.salvaged && <Notice kind="alert">{words.salvaged}</Notice>}
      {preview.newCount + preview.newFilesCount === 0 && <Notice>{words.nothingNew}</Notice>}
      <Particulars items={aboutFile(preview)} />
      {kinds.length > 0 && (
        <Lines heading={words.newHeading}>
          {kinds.map((text) => (
            <Line key={text}>{text}</Line>
          ))}
        </Lines>
      )}
      {preview.bothChanged.length > 0 && <Both changed={preview.bothChanged} />}
      <Also preview={preview} />
    </>
  );
}

function aboutFile(preview: Preview): readonly (readonly [string, string])[] {
  const { from, firmName, practice, part, factsCount, filesCount, newCount, newFilesCount, sameCount, newBetween } =
    preview;
  const zone = deviceZone();
  return [
    [words.from, from === null ? words.fromUnknown : words.fromDevice(from.deviceName)],
    ...(from === null ? [] : [[words.madeAt, momentText(from.madeAt, zone)] as const]),
    [words.firm, practice ? words.example(firmName) : firmName],
    [words.part, words.parts[part]],
    [words.inFile, words.entriesOf(factsCount, filesCount)],
    [words.new, newCount + newFilesCount === 0 ? words.nothing : words.entriesOf(newCount, newFilesCount)],
    [words.here, sameCount === 0 ? words.nothing : entries(sameCount)],
    ...(newBetween === null
      ? []
      : [
          [
            words.between,
            words.fromTo(
              momentText(newBetween.from.at, newBetween.from.zone),
              momentText(newBetween.to.at, newBetween.to.zone),
            ),
          ] as const,
        ]),
  ];
}

function Both({ changed }: { readonly changed: readonly BothChanged[] }) {
  const book = useRecordsNamed(changed.map(({ recordKey }) => recordKey));
  if (book === undefined) return null;
  return (
    <>
      <Lines heading={words.bothHeading}>
        {changed.map((one) => {
          const naming = { nameOf: namesIn(book), zone: zoneOfRecord(one.recordKey, book) ?? deviceZone() };
          const say = (value: unknown): string => valueText(one.path, value, naming);
          const all = (values: readonly unknown[]): string =>
            values.length === 0 ? words.noValue : values.map(say).join(', ');
          return (
            <Line
              key={`${one.factId} ${one.path}`}
              detail={words.bothDetail(all(one.here), all(one.there), say(one.judges), say(one.first))}
            >
              {words.both(labelOf(one.path), recordName(one.recordKey, book))}
            </Line>
          );
        })}
      </Lines>
      <p>{words.bothIntro}</p>
    </>
  );
}

const many = (count: number, say: (count: number) => string): readonly string[] => (count > 0 ? [say(count)] : []);

/** What is not plain: each as a sentence, none left out. */
function alsoOf(preview: Preview): readonly string[] {
  const { voidAgainstResult, sharedNumbers, gaps } = preview;
  return [
    ...many(voidAgainstResult.length, () => words.voidAgainst(voidAgainstResult.join(', '))),
    ...many(sharedNumbers.length, () => words.shared(sharedNumbers.join(', '))),
    ...many(gaps.length, () => words.missing(gaps)),
    ...many(preview.newerCount, words.newer),
    ...many(preview.brokenCount, words.broken),
    ...many(preview.unreadableCount, words.unreadable),
    ...many(preview.filesDamagedCount, words.damaged),
    ...many(preview.filesMissingCount, words.filesMissing),
  ];
}

function Also({ preview }: { readonly preview: Preview }) {
  const sentences = alsoOf(preview);
  if (sentences.length === 0) return null;
  return (
    <Lines heading={words.alsoHeading}>
      {sentences.map((sentence) => (
        <Line key={sentence}>{sentence}</Line>
      ))}
    </Lines>
  );
}
