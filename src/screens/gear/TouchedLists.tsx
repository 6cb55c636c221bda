/** Everything that rests on the gear: how many of each, then each by name with the way to its page. */
import { useState } from 'react';
import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Touched, TouchedOne } from '#findings/gear/touched.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { whatToDo } from '#words/duties.ts';
import { en } from '#words/gearDoubt.ts';
import { recordName } from '#words/recordNames.ts';
import type { GearHere } from './gearHere.ts';

const words = en.page;
type List = keyof typeof words.headings;

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
const shownAtFirst = 8;

export function Counts({ touched }: { readonly touched: Touched }) {
  const counts = lists.filter((list) => touched[list].length > 0);
  return (
    <Lines heading={words.countsHeading} whenEmpty={words.nothing}>
      {counts.map((list) => (
        <Line key={list}>{words.counts[list](touched[list].length)}</Line>
      ))}
    </Lines>
  );
}

interface TouchedListsProps {
  readonly touched: Touched;
  readonly here: GearHere;
}

export function TouchedLists({ touched, here }: TouchedListsProps) {
  const filled = lists.filter((list) => touched[list].length > 0);
  return (
    <>
      {filled.map((list) => (
        <OneList key={list} list={list} ones={touched[list]} here={here} />
      ))}
    </>
  );
}

interface OneListProps {
  readonly list: List;
  readonly ones: readonly TouchedOne[];
  readonly here: GearHere;
}

function OneList({ list, ones, here }: OneListProps) {
  const [limit, setLimit] = useState(shownAtFirst);
  return (
    <section>
      <Lines heading={words.headings[list]}>
        {ones.slice(0, limit).map((one) => (
          <Line key={`${one.id} ${one.number}`} to={pathTo(list, one, here)} detail={detailOf(list, one)}>
            {nameOf(list, one, here)}
          </Line>
        ))}
      </Lines>
      {ones.length > limit && (
        <QuietAction onClick={() => setLimit(ones.length)}>{words.more(ones.length - limit)}</QuietAction>
      )}
    </section>
  );
}

const enc = encodeURIComponent;
/** A worker's day is named by worker and day; what others measured by an id of its own. */
const isDay = (id: string): boolean => id.includes('.');

function pathTo(list: List, { id, siteId, groupKey }: TouchedOne, { book }: GearHere): string {
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
      return `/determination/${book.determinations.get(id)?.written.siteId ?? siteId ?? ''}`;
    case 'determinationsNotWritten':
      return `/determination/${siteId ?? ''}?group=${enc(groupKey ?? '')}`;
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
