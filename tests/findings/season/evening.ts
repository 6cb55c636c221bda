/** The evening before a day at an old library: a crew, pumps, a lot, a flow meter, labels. Invented. */
import type { Book, DayPlanRecord, PersonRecord, PlanRecord, PumpRecord } from '#records/book.ts';
import { emptyBook } from '#records/emptyBook.ts';
import { base, factId, lot, lotId, meter, person, shiftId, site, siteId, workOn } from '../sliceRegisters.ts';

export const eveningDay = workOn;
export const personIdOf = (index: number): string => `p${String(index).padStart(11, '0')}`;
export const pumpIdOf = (index: number): string => `q${String(index).padStart(11, '0')}`;
export const planId = 'n00000000001';

/** Charged in the evening before, 19:00 at the site. */
export const chargedAt = '2026-11-25T01:00:00.000Z';
export const pumpOf = (index: number, more: Partial<PumpRecord> = {}): PumpRecord => ({
  ...base('pump', pumpIdOf(index)),
  pumpId: pumpIdOf(index),
  serial: `SP-20${10 + index}`,
  model: null,
  charges: [{ at: chargedAt, full: true, by: null, factId: factId() }],
  ...more,
});

export const planOf = (more: Partial<PlanRecord> = {}): PlanRecord => ({
  ...base('plan', planId),
  planId,
  jobClassificationId: null,
  setting: 'indoors',
  taskIds: ['handScraping'],
  siteId,
  season: null,
  crewCount: 3,
  choice: 'all',
  reason: null,
  slots: [1, 2, 3].map((index) => ({ workerId: personIdOf(index), workOn })),
  methodId: 'niosh-7082',
  reportingLimitUg: 2.5,
  flowLPerMin: 2,
  cassettesCount: 1,
  remark: null,
  plannedFactId: factId(),
  missed: [],
  dropped: null,
  ...more,
});

type Prepared = NonNullable<DayPlanRecord['prepared']>;
export const preparedOf = (count: number, more: Partial<Prepared> = {}): Prepared => ({
  asked: 'morning',
  wearers: Array.from({ length: count }, (_, at) => ({
    workerId: personIdOf(at + 1),
    planId,
    taskIds: ['handScraping'],
    jobClassificationId: null,
    pumpId: pumpIdOf(at + 1),
    lotId,
  })),
  sparePumpIds: [pumpIdOf(90)],
  spareCassettesCount: 3,
  chargedById: personIdOf(1),
  remark: null,
  factId: factId(),
  ...more,
});

export const dayPlanOf = (more: Partial<DayPlanRecord> = {}): DayPlanRecord => ({
  ...base('dayPlan', shiftId),
  siteId,
  workOn,
  prepared: null,
  labels: [],
  ...more,
});

const names = ['Íñigo Muñoz Güemes', 'Ana Belén Peñalver', 'Tomáš Dvořák', 'Joe Whitlock', 'Marisol Ibáñez Ruiz'];
const byId = <R extends { readonly id: string }>(records: readonly R[]): ReadonlyMap<string, R> =>
  new Map(records.map((one) => [one.id, one]));

/** Everything ready for `count` workers, unless said otherwise. */
export function evening(count: number, more: Partial<Book> = {}): Book {
  const people: PersonRecord[] = Array.from({ length: count }, (_, at) =>
    person(personIdOf(at + 1), names[at] ?? `Worker ${at + 1} Okonkwo-Lindqvist`),
  );
  const label = (at: number, workerId: string | null, blank: boolean) => ({
    sampleNumber: String(410_007 + at),
    workerId,
    blank,
    factId: factId(),
  });
  const labels = [
    ...people.map(({ id }, at) => label(at, id, false)),
    ...[0, 1, 2].map((at) => label(count + at, null, true)),
    label(count + 3, null, false),
  ];
  return {
    ...emptyBook,
    sites: byId([site()]),
    people: byId(people),
    pumps: byId([...people.map((_, at) => pumpOf(at + 1)), pumpOf(90)]),
    lots: byId([lot()]),
    meters: byId([meter()]),
    plans: byId([planOf({ slots: people.map(({ id }) => ({ workerId: id, workOn })) })]),
    dayPlans: byId([dayPlanOf({ prepared: preparedOf(count), labels })]),
    ...more,
  };
}
