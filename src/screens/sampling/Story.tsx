/** The story of the sample so far: sentences with times, struck values beside what replaced them, and each value's correction. */
import { useState } from 'react';
import { wallTimeOf } from '#core/calendar.ts';
import { checksOfSample } from '#findings/checks.ts';
import { namesIn } from '#findings/naming.ts';
import { type OpenMatter, openMatters } from '#findings/openMatters.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { RecordBase, Strike } from '#records/book.ts';
import { labelOf } from '#words/fieldNames.ts';
import { en as words } from '#words/story.ts';
import { valueText } from '#words/valueText.ts';
import { ReadingPictures } from './SamplePictures.tsx';
import styles from './sampling.module.css';
import { type StoryLine, storyOf } from './storyOf.ts';
import type { Sampling } from './useSampling.ts';

export function Story({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book } = sampling;
  const [picking, setPicking] = useState(false);
  const checks = checksOfSample(sample, book);
  const records: readonly (RecordBase | null)[] = [sample, checks.before, checks.after];
  const strikes = records.flatMap((record) => record?.strikes ?? []);
  const keys = records.map((record) => record?.key);
  const open = openMatters(book).filter(
    ({ kind, recordKeys }) => kind !== 'sheetDiffers' && recordKeys.some((key) => keys.includes(key)),
  );
  const lines = storyOf(sample, book);
  return (
    <>
      <Lines heading={words.heading}>
        {lines.map((line) => (
          <OneLine key={line.key} line={line} sampling={sampling} strikes={strikes} picking={picking} />
        ))}
      </Lines>
      {open.length > 0 && (
        <Lines heading={words.conflict}>
          {open.map((matter) => (
            <Line key={matter.key} to={`/settle/${encodeURIComponent(matter.key)}`}>
              {words.settle(whatIsOpen(matter))}
            </Line>
          ))}
        </Lines>
      )}
      <Lines>
        <Line to={`/story/${encodeURIComponent(sample.key)}`}>{words.whole.link}</Line>
      </Lines>
      {lines.some(({ fields }) => fields.length > 0) && (
        <div>
          <QuietAction onClick={() => setPicking(!picking)}>{picking ? words.done : words.correct}</QuietAction>
        </div>
      )}
    </>
  );
}

const whatIsOpen = (matter: OpenMatter): string =>
  matter.kind === 'conflict' ? labelOf(matter.conflict.path) : (words.open[matter.kind] ?? '');

interface OneLineProps {
  readonly line: StoryLine;
  readonly sampling: Sampling;
  readonly strikes: readonly Strike[];
  readonly picking: boolean;
}

function OneLine({ line, sampling, strikes, picking }: OneLineProps) {
  const { sample, place } = sampling;
  const told = new Set([line.factId, ...line.fields.map((field) => field.factId)]);
  const own = strikes.filter(({ factId }) => told.has(factId));
  const time = line.at === null ? undefined : wallTimeOf(line.at, place.zone).time;
  const hasPictures = sampling.book.flowChecks.get(line.key)?.photos !== undefined;
  const details = [line.detail, line.typed ? words.typed : undefined].filter((each) => each !== undefined);
  return (
    <>
      <Line
        end={time}
        detail={
          details.length + own.length === 0 ? undefined : (
            <>
              {details.join('; ')}
              {own.map((strike) => (
                <Struck key={strike.correctionId} strike={strike} sampling={sampling} />
              ))}
            </>
          )
        }
      >
        {line.text}
      </Line>
      {hasPictures && (
        <li>
          <ReadingPictures sampling={sampling} checkId={line.key} />
        </li>
      )}
      {picking &&
        line.fields.map(({ factId, path, label }) => (
          <Line key={path} to={`/sample/${sample.id}?do=correct&fact=${factId}&path=${encodeURIComponent(path)}`}>
            {words.correctThis(label)}
            <span className={styles.heard}>{words.correctOf(line.text)}</span>
          </Line>
        ))}
    </>
  );
}

function Struck({ strike, sampling }: { readonly strike: Strike; readonly sampling: Sampling }) {
  const { book, place } = sampling;
  const { path, old, why, by } = strike;
  const text = (value: unknown): string =>
    valueText(path, value, { nameOf: namesIn(book), zone: place.zone, on: sampling.sample.workOn });
  if (old === null) return <span className={styles.struck}>{words.added(labelOf(path), text(strike.new))}</span>;
  return (
    <span className={styles.struck}>
      {words.struck(labelOf(path))}
      <del>{text(old)}</del> <ins className={styles.right}>{text(strike.new)}</ins>
      {words.because(why, book.people.get(by ?? '')?.name ?? '')}
    </span>
  );
}
