/**
 * People, places and gear. Entered once, then reused; a name may change, and then the last writer wins among those who did not know of
 * each other, and every earlier name is listed as struck.
 */
import type { AnyRecord, BookRecord, Conflict, Strike } from './book.ts';
import type { RecordKind } from './common.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, ofKind, withConflicts } from './foldCase.ts';
import { besideOfGear } from './gear.ts';
import { pricesOf } from './money.ts';
import { employmentOf, limitsOf } from './revised.ts';

/** The fact that enters each kind, and the field that holds its name. */
const entryByKind = {
  book: { kind: 'bookOpened.v1', name: 'firmName' },
  site: { kind: 'siteAdded.v1', name: 'name' },
  person: { kind: 'personAdded.v1', name: 'name' },
  jobClassification: { kind: 'jobClassificationAdded.v1', name: 'name' },
  pump: { kind: 'pumpAdded.v1', name: 'serial' },
  meter: { kind: 'meterAdded.v1', name: 'serial' },
  lot: { kind: 'lotAdded.v1', name: 'lotNumber' },
  laboratory: { kind: 'laboratoryAdded.v1', name: 'name' },
} as const;
export type RegisterKind = keyof typeof entryByKind;

export const isRegisterKind = (kind: RecordKind): kind is RegisterKind => Object.hasOwn(entryByKind, kind);

/** Name facts in order, the standing one last. */
function namesInOrder(names: readonly Fact<'nameChanged.v1'>[]): readonly Fact<'nameChanged.v1'>[] {
  const superseded = new Set(names.map(({ body }) => body.supersedes ?? null));
  const heads = names.filter(({ id }) => !superseded.has(id));
  const standing = heads.at(-1) ?? names.at(-1);
  return standing ? [...names.filter((fact) => fact !== standing), standing] : [];
}

/** Each name that was struck for the next. */
function strikesOf(entry: Fact, firstName: string, names: readonly Fact<'nameChanged.v1'>[]): readonly Strike[] {
  let old = firstName;
  return names.map(({ id, body, why, by }) => {
    const strike = { correctionId: id, factId: entry.id, path: '/name', old, new: body.name, why, by };
    old = body.name;
    return strike;
  });
}

/** Entries that a person gave up, each with a reason; without one it does not count. */
const acceptedIn = (facts: readonly Fact[]): NonNullable<BookRecord['accepted']> =>
  ofKind(facts, 'missingEntriesAccepted.v1')
    .filter(({ why }) => why !== null && why.trim() !== '')
    .map(({ id, body: { writer, fromCount, toCount }, why }) => ({ writer, fromCount, toCount, why, factId: id }));

interface BesideEntry {
  readonly more: object;
  readonly conflicts: readonly (Conflict | null)[];
}

const gearKinds: readonly RegisterKind[] = ['pump', 'meter', 'lot'];

/** What people, gear and the book have besides what they were entered with. */
function besideEntry(kind: RegisterKind, input: FoldInput): BesideEntry {
  if (gearKinds.includes(kind)) return besideOfGear(input);
  if (kind === 'person') {
    const { value, conflict } = employmentOf(input);
    return { more: { employed: value }, conflicts: [conflict] };
  }
  if (kind !== 'book') return { more: {}, conflicts: [] };
  const { value, conflict } = limitsOf(input);
  const { prices, conflicts } = pricesOf(input);
  const priced = prices.length > 0 ? { prices } : {};
  return { more: { accepted: acceptedIn(input.facts), limits: value, ...priced }, conflicts: [conflict, ...conflicts] };
}

/**
 * Gear that was found bad, or of which a newer version says something that must be understood, while its own entry is not here: its doubts
 * must reach what rests on it all the same. It goes by its id, and nothing else is known of it.
 */
function withoutEntry(kind: RegisterKind, input: FoldInput): AnyRecord | null {
  const { base } = input;
  if (!gearKinds.includes(kind)) return null;
  const { more, conflicts } = besideOfGear(input);
  if (more.doubts === undefined && base.notUnderstood.length === 0) return null;
  const { id } = base;
  const blank = {
    pump: { pumpId: id, serial: id, model: null },
    lot: { lotId: id, lotNumber: id, media: '', expiresOn: null },
    meter: {
      ...{ meterId: id, meterKind: 'other', serial: id, certificateOn: null, dueOn: null },
      ...{ calibrationTemperatureC: null, calibrationPressureKPa: null, pairs: [] },
    },
  };
  const body = blank[kind as keyof typeof blank];
  return { ...body, ...withConflicts(base, conflicts), ...more } as unknown as AnyRecord;
}

/** Null until the fact that entered it has arrived; but for gear in doubt. */
export function foldRegister(kind: RegisterKind, input: FoldInput): AnyRecord | null {
  const { base, facts } = input;
  const { kind: entryKind, name } = entryByKind[kind];
  const entry = facts.find((fact) => fact.kind === entryKind);
  if (!entry) return withoutEntry(kind, input);
  const names = namesInOrder(ofKind(facts, 'nameChanged.v1'));
  const body = entry.body as Record<string, unknown>;
  const strikes = [...base.strikes, ...strikesOf(entry, String(body[name]), names)];
  const standing = names.at(-1);
  const notes = ofKind(facts, 'noteMade.v1').map((fact) => fact.body.text);
  const { more, conflicts } = besideEntry(kind, input);
  return {
    ...body,
    ...withConflicts(base, conflicts),
    ...(standing ? { [name]: standing.body.name } : {}),
    ...(notes.length > 0 ? { notes } : {}),
    ...more,
    strikes,
  } as unknown as AnyRecord;
}
