/** Builds facts for tests: given these facts, when this is wanted, then that. Plainly invented people in an old public library. */

import { subjectOf } from '#records/about.ts';
import type { AnyRecord, SampleRecord } from '#records/book.ts';
import { factText, type StoredFact } from '#records/canonical.ts';
import { factIdOf, type JournalEntry, link, noLink } from '#records/chain.ts';
import type { Fresh } from '#records/decide.ts';
import type { Fact, FactBody, FactKind, NewFact } from '#records/fact.ts';
import { foldRecord } from '#records/fold.ts';

export const ids = {
  book: 'b00000000001',
  site: 's00000000001',
  ana: 'p00000000001',
  ben: 'p00000000002',
  supervisor: 'p00000000009',
  pumpA: 'q00000000001',
  pumpB: 'q00000000002',
  meter: 'm00000000001',
  lot: 'h00000000001',
  laboratory: 'a00000000001',
  one: 'c00000000001',
  two: 'c00000000002',
  three: 'c00000000003',
  blank: 'c00000000009',
  box: 'x00000000001',
} as const;

export const phone = 'wwwwwwwwwwww';
export const office = 'zzzzzzzzzzz1';
export const workOn = '2026-11-25';
export const shiftId = `${ids.site}.${workOn}`;
export const zone = 'America/New_York';
/** An instant of the day, in UTC: `at('12:00')`. */
export const at = (time: string, day: string = workOn): string => `${day}T${time}:00.000Z`;

export interface When {
  readonly at?: string;
  readonly entry?: 'tapped' | 'typed';
  readonly why?: string | null;
  readonly about?: readonly string[];
  readonly by?: string | null;
}

/** What somebody wants to write down. */
export function wanted<K extends FactKind>(kind: K, body: FactBody<K>, when: When = {}): NewFact<K> {
  const { entry = 'tapped', why = null, by = ids.supervisor } = when;
  const from = entry === 'typed' ? 'watch of the supervisor' : null;
  const bare = { kind, body } as unknown as NewFact;
  const subject = subjectOf(bare);
  return {
    kind,
    about: when.about ?? (subject ? [subject] : []),
    happened: { at: when.at ?? at('12:00'), zone, offsetMin: -300, entry, from },
    by,
    why,
    body,
  } as unknown as NewFact<K>;
}

/** A writer's journal. `recorded` runs in steps of one second unless said otherwise. */
export class Writer {
  readonly entries: JournalEntry[] = [];
  readonly name: string;
  private readonly day: string;

  constructor(name: string, day: string = workOn) {
    this.name = name;
    this.day = day;
  }

  /** Writes a fact down and tells its id. `extra` overrides the envelope: unknown kinds and keys too. */
  add<K extends FactKind>(fact: NewFact<K>, extra: Readonly<Record<string, unknown>> = {}): string {
    const sequence = this.entries.length + 1;
    const id = factIdOf(this.name, sequence);
    const minutes = String(Math.floor(sequence / 60)).padStart(2, '0');
    const recorded = `${this.day}T13:${minutes}:${String(sequence % 60).padStart(2, '0')}.000Z-0000`;
    const text = factText({ ...(fact as object), id, recorded, ...extra } as unknown as Fact);
    this.entries.push({ id, text, link: link(this.entries.at(-1)?.link ?? noLink, text) });
    return id;
  }
}

/** Facts of one writer, in the order written. */
export function journal(facts: readonly NewFact[], name: string = phone): readonly JournalEntry[] {
  const writer = new Writer(name);
  for (const fact of facts) writer.add(fact);
  return writer.entries;
}

export const prepared = (sampleId: string = ids.one, more: Partial<FactBody<'samplePrepared.v1'>> = {}) =>
  wanted(
    'samplePrepared.v1',
    {
      sampleId,
      // By hand, MOD 11,10 of 12001: 10, 2, 8, 5, 10, 2; 11 - 2 = 9. Of 12002: 7.
      sampleNumber: '120019',
      shiftId,
      workerId: ids.ana,
      pumpId: ids.pumpA,
      lotId: ids.lot,
      taskIds: ['windowRemoval'],
      jobClassificationId: null,
      follows: null,
      ...more,
    },
    { at: at('11:50') },
  );

export const putOn = (time: string, sampleId: string = ids.one) =>
  wanted('pumpPutOn.v1', { sampleId }, { at: at(time) });
export const stopped = (time: string, pumpMin: number | null = null, sampleId: string = ids.one) =>
  wanted('pumpStopped.v1', { sampleId, pumpMin }, { at: at(time) });
export const look = (time: string, running = true, inPlace = true, sampleId: string = ids.one) =>
  wanted('pumpLookedAt.v1', { sampleId, running, inPlace, remark: null }, { at: at(time) });
export const sealed = (time: string, lockedIn: string | null = null, sampleId: string = ids.one) =>
  wanted('cassetteSealed.v1', { sampleId, labelled: true, lockedIn, lockedById: null }, { at: at(time) });
export const result = (massUg: number, reportNumber = 'R-1', sampleId: string = ids.one) =>
  wanted(
    'resultReceived.v1',
    {
      sampleId,
      reportNumber,
      laboratoryId: ids.laboratory,
      accreditation: null,
      methodId: null,
      receivedOn: '2026-12-02',
      reportedOn: '2026-12-01',
      analysedOn: null,
      mass: { kind: 'measured', massUg },
      reportingLimitUg: 0.5,
      blankCorrected: 'no',
      wallDeposit: 'yes',
      laboratoryVolumeL: null,
      laboratoryConcentrationUgPerM3: null,
      saeFraction: null,
      remark: null,
    },
    { at: at('15:00', '2026-12-02'), entry: 'typed' },
  );

export const corrects = (
  replaces: string,
  path: string,
  old: unknown,
  now: unknown,
  supersedes: string | null = null,
  about: readonly string[] = [`sample:${ids.one}`],
) =>
  wanted('valueCorrected.v1', { replaces, path, old, new: now, supersedes } as FactBody<'valueCorrected.v1'>, {
    about,
    why: 'misread',
    at: at('20:00'),
  });

const about = (entry: StoredFact): readonly string[] => (JSON.parse(entry.text) as { about: string[] }).about;

/** The record that some facts make, from whatever device. */
export const folded = <R extends AnyRecord = SampleRecord>(key: string, entries: readonly StoredFact[]): R =>
  foldRecord(
    key,
    entries.filter((entry) => about(entry).includes(key)),
  ) as R;

export const sampleOf = (facts: readonly NewFact[], sampleId: string = ids.one): SampleRecord =>
  folded(`sample:${sampleId}`, journal(facts));

/** What the store reads inside its transaction, made from a journal. */
export function freshOf(entries: readonly StoredFact[]): Fresh {
  const keys = new Set(entries.flatMap(about));
  const records = new Map<string, AnyRecord>();
  for (const key of keys) {
    const record = foldRecord(
      key,
      entries.filter((entry) => about(entry).includes(key)),
    );
    if (record) records.set(key, record);
  }
  const samples = [...records.values()].filter(({ key }) => key.startsWith('sample:')) as SampleRecord[];
  return {
    records,
    running: samples.filter((s) => s.putOn && !s.stopped && !s.voided),
    withNumbers: samples,
    boxes: [...records.values()].filter(({ key }) => key.startsWith('box:')) as Fresh['boxes'],
    facts: new Map(entries.map(({ id, text }) => [id, text])),
  };
}

/** A box packed with these cassettes, as the office packs one. */
export const boxPacked = (
  sampleIds: readonly string[],
  other: Partial<FactBody<'boxPacked.v1'>> = {},
  when: When = {},
): NewFact<'boxPacked.v1'> => {
  const asked = { analysis: 'lead', methodId: 'niosh-7082', reportingLimitUg: 2, includeWallDeposit: true };
  const wishes = {
    callBeforeReanalysis: true,
    turnaround: '5 days',
    workersShownAs: 'identifier',
    remark: null,
  } as const;
  const where = { boxId: ids.box, siteId: ids.site, laboratoryId: ids.laboratory, samplerId: ids.supervisor };
  return wanted('boxPacked.v1', { ...where, sampleIds: [...sampleIds], ...asked, ...wishes, ...other }, when);
};
