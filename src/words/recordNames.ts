/** A record as it is called in a sentence: which cassette, whose, which day. Read by supervisor and office. */
import { dayOf } from '#core/calendar.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { formatDay } from './quantity.ts';

export const en = {
  unknown: 'A record that is not on this device',
  nobody: 'a worker who is not on this device',
  somewhere: 'a site that is not on this device',
  book: (firm: string) => `The book of ${firm}`,
  site: (name: string) => `The site ${name}`,
  person: (name: string) => `${name} in the lists`,
  jobClassification: (name: string) => `The job classification ${name}`,
  pump: (serial: string) => `Pump ${serial}`,
  meter: (serial: string) => `Flow meter ${serial}`,
  lot: (number: string) => `Lot ${number}`,
  laboratory: (name: string) => `The laboratory ${name}`,
  shift: (site: string, day: string) => `The shift at ${site}, ${day}`,
  flowCheck: (purpose: 'before' | 'after' | 'between', pump: string, day: string) =>
    `Flow ${purpose} of pump ${pump}, ${day}`,
  sample: (number: string, worker: string, day: string) => `Cassette ${number}, ${worker}, ${day}`,
  blank: (number: string, day: string) => `Field blank ${number}, ${day}`,
  workday: (worker: string, day: string) => `The day of ${worker}, ${day}`,
  box: (laboratory: string, day: string) => `The box for ${laboratory}, packed ${day}`,
  reported: (from: string, day: string) => `The measurement of ${day} that ${from} reported`,
  reliance: (site: string, day: string) => `The earlier measurement for the job at ${site}, ${day}`,
  notice: (revision: string, measured: string) => `The notice, revision ${revision}: ${measured}`,
  determination: (outcome: 'negative' | 'positive', site: string, day: string) =>
    `The ${outcome} determination for ${site}, ${day}`,
  duty: 'Something that the rule asks',
  request: (who: string, day: string) => `The request of ${who} to see records, ${day}`,
  plan: (season: string | null) => (season === null ? 'A plan to measure' : `A plan to measure, ${season}`),
  dayPlan: (site: string, day: string) => `What is made ready for ${site}, ${day}`,
  spending: (day: string) => `Money spent on ${day}`,
};

const dayText = (day: string): string => formatDay(day, 'en', 'long');

export function sampleName(sample: SampleRecord, book: Book): string {
  const { sampleNumber, workOn } = sample;
  if (sample.sampleKind === 'blank') return en.blank(sampleNumber, dayText(workOn));
  return en.sample(sampleNumber, book.people.get(sample.workerId ?? '')?.name ?? en.nobody, dayText(workOn));
}

/** `id` of a site's or a worker's day: the first twelve characters name whose it is, the rest the day. */
const splitDay = (id: string): readonly [string, string] => [id.slice(0, 12), id.slice(13)];

const byKind: Readonly<Record<string, (id: string, book: Book) => string | undefined>> = {
  book: (_, { book }) => (book === null ? undefined : en.book(book.firmName)),
  site: (id, { sites }) => named(sites.get(id)?.name, en.site),
  person: (id, { people }) => named(people.get(id)?.name, en.person),
  jobClassification: (id, { jobClassifications }) => named(jobClassifications.get(id)?.name, en.jobClassification),
  pump: (id, { pumps }) => named(pumps.get(id)?.serial, en.pump),
  meter: (id, { meters }) => named(meters.get(id)?.serial, en.meter),
  lot: (id, { lots }) => named(lots.get(id)?.lotNumber, en.lot),
  laboratory: (id, { laboratories }) => named(laboratories.get(id)?.name, en.laboratory),
  shift: (id, { sites }) => {
    const [siteId, day] = splitDay(id);
    return en.shift(sites.get(siteId)?.name ?? en.somewhere, dayText(day));
  },
  flowCheck: (id, book) => {
    const check = book.flowChecks.get(id);
    if (check === undefined) return undefined;
    const { at, zone } = check.happened;
    return en.flowCheck(check.purpose, book.pumps.get(check.pumpId)?.serial ?? en.unknown, dayText(dayOf(at, zone)));
  },
  sample: (id, book) => {
    const sample = book.samples.get(id);
    return sample && sampleName(sample, book);
  },
  workday: (id, { people }) => {
    const [workerId, day] = splitDay(id);
    return en.workday(people.get(workerId)?.name ?? en.nobody, dayText(day));
  },
  box: (id, { boxes, laboratories, sites }) => {
    const box = boxes.get(id);
    if (box === undefined) return undefined;
    const zone = sites.get(box.packed.siteId)?.zone ?? 'UTC';
    const laboratory = laboratories.get(box.packed.laboratoryId)?.name ?? en.unknown;
    return en.box(laboratory, dayText(dayOf(box.packedAt, zone)));
  },
  reported: (id, { reported }) => {
    const one = reported.get(id);
    return one && en.reported(one.fromName, dayText(one.workOn));
  },
  reliance: (id, { reliances, sites }) => {
    const [siteId, day] = splitDay(reliances.get(id)?.shiftId ?? '');
    return day === '' ? undefined : en.reliance(sites.get(siteId)?.name ?? en.somewhere, dayText(day));
  },
  notice: (id, book) => {
    const issued = book.notices.get(id)?.issued;
    return issued && en.notice(issued.revision, measurementName(issued.measurementId, book));
  },
  determination: (id, { determinations, sites }) => {
    const written = determinations.get(id)?.written;
    const site = sites.get(written?.siteId ?? '')?.name ?? en.somewhere;
    return written && en.determination(written.outcome, site, dayText(written.determinedOn));
  },
  duty: () => en.duty,
  request: (id, { requests }) => {
    const request = requests.get(id);
    return request && en.request(request.by, dayText(request.askedOn));
  },
  plan: (id, { plans }) => {
    const plan = plans.get(id);
    return plan && en.plan(plan.season);
  },
  dayPlan: (id, { sites }) => {
    const [siteId, day] = splitDay(id);
    return en.dayPlan(sites.get(siteId)?.name ?? en.somewhere, dayText(day));
  },
  spending: (id, { spendings }) => {
    const one = spendings.get(id);
    return one && en.spending(dayText(one.spentOn));
  },
};

/** A worker's day, or a measurement that was reported to us. */
const measurementName = (id: string, book: Book): string =>
  id.includes('.') ? recordName(`workday:${id}`, book) : recordName(`reported:${id}`, book);

const named = (name: string | undefined, say: (name: string) => string): string | undefined =>
  name === undefined ? undefined : say(name);

/** The name of a record by its key (`sample:…`); said when this device does not hold it. */
export function recordName(key: string, book: Book): string {
  const at = key.indexOf(':');
  const kind = key.slice(0, at);
  const say = Object.hasOwn(byKind, kind) ? byKind[kind] : undefined;
  return say?.(key.slice(at + 1), book) || en.unknown;
}

/** The zone a record's moments are told in: of its site, or the one that all sites share; null where neither is known. */
export function zoneOfRecord(key: string, book: Book): string | null {
  const at = key.indexOf(':');
  const [kind, id] = [key.slice(0, at), key.slice(at + 1)];
  const siteId = {
    site: id,
    shift: id.slice(0, 12),
    dayPlan: id.slice(0, 12),
    plan: book.plans.get(id)?.siteId ?? undefined,
    spending: book.spendings.get(id)?.siteId ?? undefined,
    sample: book.samples.get(id)?.siteId,
    flowCheck: book.flowChecks.get(id)?.shiftId.slice(0, 12),
    box: book.boxes.get(id)?.packed.siteId,
    workday:
      [...book.samples.values()].find(({ workdayId }) => workdayId === id)?.siteId ??
      book.workdays.get(id)?.worked?.[0]?.shiftId.slice(0, 12),
    reported: book.reported.get(id)?.siteId,
    reliance: book.reliances.get(id)?.shiftId.slice(0, 12),
    determination: book.determinations.get(id)?.written.siteId,
  }[kind];
  const zones = new Set([...book.sites.values()].map((site) => site.zone));
  const everywhere = zones.size === 1 ? [...zones][0] : undefined;
  return book.sites.get(siteId ?? '')?.zone ?? everywhere ?? null;
}
