/**
 * Office, inspector, or whoever doubts a figure years later: everything that was ever written down about one record, who wrote it, when
 * and on which device, and what was struck. Nothing is left out. Printed as it stands.
 */
import { checksOfSample } from '#findings/checks.ts';
import { namesIn } from '#findings/naming.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { AnyRecord, Book, Strike } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useDevices, useFactsAbout, useRecordBook } from '#store/hooks/useFactsAbout.ts';
import { labelOf } from '#words/fieldNames.ts';
import { formatDay } from '#words/quantity.ts';
import { en as names, recordName, zoneOfRecord } from '#words/recordNames.ts';
import { en as story } from '#words/story.ts';
import { type Naming, valueText } from '#words/valueText.ts';
import styles from './story.module.css';
import { type ToldFact, tellFacts } from './tellFacts.ts';

const words = story.whole;

/** The record itself, and of a sample the flow checks that belong to it. */
function keysOf(key: string, book: Book | undefined): readonly string[] {
  const sample = key.startsWith('sample:') ? book?.samples.get(key.slice(7)) : undefined;
  if (!sample || book === undefined) return [key];
  const { before, after } = checksOfSample(sample, book);
  return [...new Set([key, ...[before, after].flatMap((check) => check?.key ?? [])])];
}

/** Where the record is read in the app; null for what stands in the lists. */
function pageOf(key: string): string {
  const [kind, id] = [key.slice(0, key.indexOf(':')), key.slice(key.indexOf(':') + 1)];
  const page = { sample: 'sample', shift: 'shift', workday: 'day', box: 'box' }[kind];
  return page === undefined ? '/lists' : `/${page}/${id}`;
}

const isOpen = (key: string, { samples, workdays, boxes, shifts, flowChecks }: Book): boolean =>
  [samples, workdays, boxes, shifts, flowChecks].some((map) =>
    [...(map as ReadonlyMap<string, AnyRecord>).values()].some((one) => one.key === key && one.conflicts.length > 0),
  );

export function Story({ recordKey = '' }: { readonly recordKey?: string }) {
  const book = useRecordBook(recordKey);
  const devices = useDevices();
  const facts = useFactsAbout(keysOf(recordKey, book));
  if (book === undefined || devices === undefined || facts === undefined) return <Page heading={words.link} />;
  const zone = zoneOfRecord(recordKey, book) ?? deviceZone();
  const told = tellFacts(facts, { book, devices, zone });
  const name = recordName(recordKey, book);
  const naming: Naming = { nameOf: namesIn(book), zone };
  if (told.length === 0)
    return (
      <Page heading={words.link} back="/" action={<MainAction to="/">{words.toToday}</MainAction>}>
        <p>{words.none}</p>
      </Page>
    );
  return (
    <Page
      heading={words.heading(name)}
      back={pageOf(recordKey)}
      action={<MainAction onClick={() => window.print()}>{words.print}</MainAction>}
    >
      {name === names.unknown && <p>{words.notYet}</p>}
      <p>{words.intro(told.length)}</p>
      {isOpen(recordKey, book) && (
        <div>
          <QuietAction to="/settle">{words.settleOpen}</QuietAction>
        </div>
      )}
      <div className={styles.story}>
        {daysOf(told).map(([day, ofDay]) => (
          <Lines key={day ?? ''} heading={day === null ? words.noTime : formatDay(day, 'en', 'weekday')}>
            {ofDay.map((one) => (
              <Line key={one.factId} end={one.time ?? undefined} detail={<Details told={one} naming={naming} />}>
                {one.sentence}
              </Line>
            ))}
          </Lines>
        ))}
      </div>
    </Page>
  );
}

/** In order, each day with its own. */
function daysOf(told: readonly ToldFact[]): readonly (readonly [string | null, readonly ToldFact[]])[] {
  const days = new Map<string | null, ToldFact[]>();
  for (const one of told) {
    const ofDay = days.get(one.on);
    if (ofDay) ofDay.push(one);
    else days.set(one.on, [one]);
  }
  return [...days];
}

function Details({ told, naming }: { readonly told: ToldFact; readonly naming: Naming }) {
  return (
    <>
      {told.details.join('; ')}
      {told.strikes.map((strike) => (
        <Struck key={strike.correctionId} strike={strike} naming={naming} />
      ))}
    </>
  );
}

function Struck({ strike, naming }: { readonly strike: Strike; readonly naming: Naming }) {
  const { path, old, why, by } = strike;
  return (
    <span className={styles.struck}>
      {story.struck(labelOf(path))}
      <del>{valueText(path, old, naming)}</del>{' '}
      <ins className={styles.right}>{valueText(path, strike.new, naming)}</ins>
      {story.because(why, naming.nameOf(by ?? '') ?? '')}
    </span>
  );
}
