/**
 * A season written down fact by fact and folded, as on a device: three people on the windows of an old public library, whole shifts of
 * eight hours at 2.00 L/min (960 L), sound in every respect unless a test says otherwise. Plainly invented.
 */
import type { Book } from '#records/book.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, ids, phone, Writer, wanted, zone } from '../../records/facts.ts';
import { bookFrom, fitted, flow, meter, prepared, result, site } from '../carefulStory.ts';

export const { ana, ben } = ids;
export const cleo = 'p00000000003';
export const bridge = 's00000000002';
export const library = ids.site;
const people = [ana, ben, cleo];
const numbers = new Map([...people, 'p00000000004'].map((id, index) => [id, index + 1]));

const onDay = <F extends NewFact>(fact: F, day: string, time = '12:00'): F => ({
  ...fact,
  happened: { ...fact.happened, at: at(time, day), zone, entry: 'typed', from: 'paper' },
});

export const person = (personId: string, more: Partial<FactBody<'personAdded.v1'>> = {}) =>
  wanted('personAdded.v1', {
    ...{ personId, name: `Person ${numbers.get(personId)}`, identifier: null, language: 'en' as const },
    ...{ jobClassificationId: null, employer: null },
    ...more,
  });

export const registers = (): NewFact[] => [
  wanted('bookOpened.v1', { bookId: ids.book, firmName: 'Sill and Sash', practice: false }),
  site(),
  site({ siteId: bridge, name: 'Steel footbridge', setting: 'outdoors' }),
  meter({ certificateOn: '2026-01-05', dueOn: '2027-12-31' }),
  wanted('lotAdded.v1', { lotId: ids.lot, lotNumber: 'L-7', media: 'MCE 0.8 µm, 37 mm', expiresOn: null }),
  ...people.map((id) => person(id)),
];

export const shiftAt = (day: string, siteId: string = library) => `${siteId}.${day}`;
export const dayOf = (who: string, day: string) => `${who}.${day}`;
export const sampleOf = (who: string, day: string) => `c${numbers.get(who)}00${day.replaceAll('-', '')}`;

type Conditions = FactBody<'conditionsNoted.v1'>;
export const shiftOpened = (day: string, siteId: string = library, more: Partial<Conditions> = {}): NewFact[] => [
  onDay(wanted('shiftOpened.v1', { shiftId: shiftAt(day, siteId), siteId, workOn: day }), day, '11:00'),
  onDay(
    wanted('conditionsNoted.v1', {
      ...{ shiftId: shiftAt(day, siteId), tool: 'hand', method: 'wet', dustCollection: 'none' },
      ...{ containment: 'partial', ventilation: 'natural', weather: 'indoors', paintLead: 'tested', area: 'room' },
      ...{ remark: null },
      ...more,
    } as Conditions),
    day,
    '11:05',
  ),
];

export const noted = (
  who: string,
  day: string,
  more: Partial<FactBody<'workNoted.v1'>> & { readonly siteId?: string } = {},
) => {
  const { siteId = library, ...body } = more;
  return onDay(
    wanted('workNoted.v1', {
      ...{ workdayId: dayOf(who, day), shiftId: shiftAt(day, siteId), taskIds: ['dustCleanup'] },
      ...{ jobClassificationId: null, respirator: null },
      ...body,
    }),
    day,
    '21:00',
  );
};

export interface Sampled {
  readonly siteId?: string;
  readonly taskIds?: readonly string[];
  readonly jobClassificationId?: string | null;
  /** null: the result is owed. */
  readonly averageUgPerM3: number | null;
  readonly receivedOn?: string;
  readonly regular?: 'yes' | 'no' | null;
  readonly flowAfter?: boolean;
  readonly roster?: boolean;
}

/** m = C V: 2 L/min over 480 minutes is 0.96 m³. */
export const massUgFor = (averageUgPerM3: number): number => averageUgPerM3 * 0.96;

export const resultOn = (
  who: string,
  day: string,
  averageUgPerM3: number,
  more: Partial<FactBody<'resultReceived.v1'>> = {},
) => {
  const receivedOn = more.receivedOn ?? day;
  return onDay(
    result(massUgFor(averageUgPerM3), {
      ...{ sampleId: sampleOf(who, day), reportNumber: `R-${who}-${day}`, receivedOn },
      ...{ reportedOn: receivedOn, analysedOn: receivedOn },
      ...more,
    }),
    receivedOn,
    '22:00',
  );
};

export function sampled(who: string, day: string, given: Sampled): NewFact[] {
  const { siteId = library, taskIds = ['dustCleanup'], averageUgPerM3, regular = 'yes' } = given;
  const sampleId = sampleOf(who, day);
  const shiftId = shiftAt(day, siteId);
  const workdayId = dayOf(who, day);
  const pumpId = `q${sampleId.slice(1)}`;
  const check = (letter: string, purpose: 'before' | 'after', time: string) =>
    flow(`f${letter}${sampleId.slice(2)}`, purpose, at(time, day), 2, { shiftId, pumpId });
  const sampleNumber = `${sampleId.slice(1, 2)}${day.slice(2).replaceAll('-', '')}`;
  return [
    check(`${numbers.get(who)}`, 'before', '11:40'),
    onDay(
      prepared(sampleId, {
        ...{ sampleNumber, shiftId, workerId: who, pumpId, taskIds: [...taskIds] },
        jobClassificationId: given.jobClassificationId ?? null,
      }),
      day,
      '11:50',
    ),
    onDay(fitted(sampleId), day, '11:55'),
    onDay(wanted('pumpPutOn.v1', { sampleId }), day, '12:00'),
    onDay(wanted('pumpStopped.v1', { sampleId, pumpMin: 480 }), day, '20:00'),
    ...(given.flowAfter === false ? [] : [check(String((numbers.get(who) ?? 0) + 4), 'after', '20:10')]),
    onDay(
      wanted('workHoursStated.v1', {
        workdayId,
        pieces: [{ startedAt: at('12:00', day), endedAt: at('20:00', day), place: null, employer: null }],
      }),
      day,
      '20:30',
    ),
    onDay(wanted('otherWorkAsked.v1', { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' }), day),
    ...(regular === null
      ? []
      : [onDay(wanted('dayDescribed.v1', { workdayId, regular, reason: regular === 'no' ? 'rain' : null }), day)]),
    ...(given.roster === false
      ? []
      : [noted(who, day, { siteId, taskIds: [...taskIds], jobClassificationId: given.jobClassificationId ?? null })]),
    ...(averageUgPerM3 === null ? [] : [resultOn(who, day, averageUgPerM3, { receivedOn: given.receivedOn ?? day })]),
  ];
}

export const changesAsked = (day: string, more: Partial<FactBody<'changesAsked.v1'>> = {}, siteId: string = library) =>
  onDay(
    wanted('changesAsked.v1', {
      ...{ shiftId: shiftAt(day, siteId), equipment: 'no', process: 'no', control: 'no', personnel: 'no' },
      newTask: 'no',
      ...more,
    } as FactBody<'changesAsked.v1'>),
    day,
    '11:10',
  );

export const reported = (more: Partial<FactBody<'measurementReported.v1'>> = {}) =>
  onDay(
    wanted('measurementReported.v1', {
      ...{ reportedId: 'r00000000001', from: 'consultant', fromName: 'Harbor Air', reportNumber: 'H-12' },
      ...{ workerId: ana, siteId: library, setting: 'indoors', workOn: '2026-11-02', receivedOn: '2026-11-16' },
      ...{ taskIds: ['dustCleanup'], jobClassificationId: null, average: { kind: 'measured', twa8UgPerM3: 12 } },
      ...{ workedHours: 8, fullShift: 'yes', ownFirm: 'yes', accuracy: 'yes', remark: null },
      ...more,
    } as FactBody<'measurementReported.v1'>),
    more.receivedOn ?? '2026-11-16',
    '15:00',
  );

export const represents = (who: string, day: string, ...workerIds: readonly string[]) =>
  onDay(wanted('representsStated.v1', { workdayId: dayOf(who, day), workerIds: [...workerIds] }), day, '23:00');

export const corrected = (replaces: string, path: string, old: unknown, now: unknown, about: string, why = 'misread') =>
  wanted('valueCorrected.v1', { replaces, path, old, new: now, supersedes: null } as FactBody<'valueCorrected.v1'>, {
    about: [about],
    why,
    at: at('23:30', '2026-12-31'),
  });

/** Entries of writers, each in its own order. */
export function entriesOf(...writers: readonly (readonly [string, readonly NewFact[]])[]): readonly JournalEntry[] {
  return writers.flatMap(([name, facts]) => {
    const writer = new Writer(name);
    for (const fact of facts) writer.add(fact);
    return writer.entries;
  });
}

export const bookOf = (
  facts: readonly NewFact[],
  ...others: readonly (readonly [string, readonly NewFact[]])[]
): Book => bookFrom(entriesOf([phone, facts], ...others));

/** Id of the first fact that fits, as `bookOf` numbers them. */
export function idIn(facts: readonly NewFact[], fits: (fact: NewFact) => boolean, writer: string = phone): string {
  const place = facts.findIndex(fits);
  if (place < 0) throw new Error('no such fact');
  return `${writer}.${String(place + 1).padStart(8, '0')}`;
}
