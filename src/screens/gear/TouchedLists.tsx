/** Everything that rests on the gear: how many of each; opened, each by name with the way to its page. */
import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Touched, TouchedOne } from '#findings/gear/touched.ts';
import { Line } from '#parts/Lines.tsx';
import { whatToDo } from '#words/duties.ts';
import { en } from '#words/gearDoubt.ts';
import { recordName } from '#words/recordNames.ts';
import styles from './gear.module.css';
import type { GearHere } from './gearHere.ts';
import { LongList } from './LongList.tsx';

const words = en.page;
type List = keyof typeof words.counts;

/** In the order of the day: what was drawn, what it showed, what must be done, what was handed out. */
const lists: readonly List[] = [
  'samples',
  'workdays',
  'measurements',
  'duties',
  'noticesOwed',
  'noticesIssued',
  'determinations',
  'determinationsNotWritten',
  'reliances',
  'exposureRecords',
  'custodySheets',
];

interface TouchedListsProps {
  readonly touched: Touched;
  readonly here: GearHere;
}

export function TouchedLists({ touched, here }: TouchedListsProps) {
  const filled = lists.filter((list) => touched[list].length > 0);
  return (
    <section>
      <h2>{words.countsHeading}</h2>
      {filled.length === 0 && <p>{words.nothing}</p>}
      {filled.map((list) => (
        <OneList key={list} list={list} ones={touched[list]} here={here} />
      ))}
    </section>
  );
}

interface OneListProps {
  readonly list: List;
  readonly ones: readonly TouchedOne[];
  readonly here: GearHere;
}

function OneList({ list, ones, here }: OneListProps) {
  return (
    <details className={styles.list}>
      <summary className={styles.summary}>{words.counts[list](ones.length)}</summary>
      <LongList shownCount={20}>
        {ones.map((one) => (
          <Line key={`${one.id} ${one.number}`} to={pathTo(list, one, here)} detail={detailOf(list, one)}>
            {nameOf(list, one, here)}
          </Line>
        ))}
      </LongList>
    </details>
  );
}

const enc = encodeURIComponent;
const determinationPath = (siteId: string | null, groupKey: string | null | undefined): string =>
  `/determination/${siteId ?? ''}${groupKey ? `?group=${enc(groupKey)}` : ''}`;

/** A worker's day is named by worker and day; what others measured by an id of its own. */
const isDay = (id: string): boolean => id.includes('.');

function pathTo(list: List, { id, siteId, groupKey }: TouchedOne, { book, duties }: GearHere): string {
  const ofMeasurement = (measurementId: string): string =>
    isDay(measurementId) ? `/day/${measurementId}` : `/story/${enc(`reported:${measurementId}`)}`;
  switch (list) {
    case 'samples':
      return `/sample/${id}`;
    case 'workdays':
      return `/day/${id}`;
    case 'measurements':
      return ofMeasurement(id);
    case 'duties':
      return `/todo/${enc(id)}`;
    case 'noticesOwed':
      return `/notice/${enc(id)}`;
    case 'noticesIssued':
      return `/notice/${enc(book.notices.get(id)?.issued.measurementId ?? id)}`;
    case 'determinations':
      return determinationPath(siteId, duties.determinations.find(({ writtenId }) => writtenId === id)?.groupKey);
    case 'determinationsNotWritten':
      return determinationPath(siteId, groupKey);
    case 'reliances':
      return `/shift/${book.reliances.get(id)?.shiftId ?? ''}/rely`;
    case 'exposureRecords':
      return `/exposure-record/${id}`;
    case 'custodySheets':
      return `/box/${id}`;
  }
}

const recordKinds: Readonly<Record<Exclude<List, 'duties' | 'determinationsNotWritten'>, string>> = {
  samples: 'sample',
  workdays: 'workday',
  measurements: 'workday',
  noticesOwed: 'workday',
  noticesIssued: 'notice',
  determinations: 'determination',
  reliances: 'reliance',
  exposureRecords: 'workday',
  custodySheets: 'box',
};

function nameOf(list: List, { id, siteId }: TouchedOne, { book, duties }: GearHere): string {
  if (list === 'duties') {
    const duty = duties.duties.find((one) => one.id === id);
    return duty === undefined ? recordName('duty:', book) : whatToDo(duty, dutyNames(book, 'names'));
  }
  if (list === 'determinationsNotWritten') return recordName(`site:${siteId ?? ''}`, book);
  const kind = recordKinds[list];
  return recordName(`${kind === 'workday' && !isDay(id) ? 'reported' : kind}:${id}`, book);
}

const detailOf = (list: List, { number }: TouchedOne): string | undefined =>
  number !== null && (list === 'custodySheets' || list === 'exposureRecords') ? words.revision(number) : undefined;
