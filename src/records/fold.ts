/**
 * Facts -> one record. Pure, and independent of the order in which facts arrived: they are sorted here, by recorded and then id. A change in any case raises
 * edition.ts.
 * Unknown facts may be among them; those that must be understood make the record doubtful.
 */
import type { AnyRecord, Photo, RecordBase } from './book.ts';
import { foldBox } from './box.ts';
import { readFact, type StoredFact } from './canonical.ts';
import { type RecordKind, recordKinds } from './common.ts';
import { corrected } from './corrections.ts';
import type { Envelope, Fact } from './fact.ts';
import { foldFlowCheck } from './flowCheck.ts';
import { type FoldInput, ofKind } from './foldCase.ts';
import { foldSpending } from './money.ts';
import { foldRegister, isRegisterKind, type RegisterKind } from './registers.ts';
import { foldSample } from './sample.ts';
import { foldDayPlan, foldPlan } from './season.ts';
import { foldShift } from './shift.ts';
import { foldDetermination, foldDuty, foldNotice, foldReliance, foldReported, foldRequest } from './telling.ts';
import { foldWorkday } from './workday.ts';

type Ordered = Pick<Envelope, 'id' | 'recorded'>;
const inOrder = (a: Ordered, b: Ordered): number =>
  a.recorded < b.recorded ? -1 : a.recorded > b.recorded ? 1 : a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

interface Sorted {
  readonly known: readonly Fact[];
  readonly ids: readonly string[];
  readonly notUnderstood: readonly string[];
}

function sortedFacts(stored: readonly StoredFact[]): Sorted {
  const known: Fact[] = [];
  const all: Ordered[] = [];
  const notUnderstood: string[] = [];
  for (const { id, text } of stored) {
    const read = readFact(text);
    if (read.kind === 'refused') throw new Error(`the journal holds a fact that cannot be read: ${id}, ${read.reason}`);
    if (read.kind === 'known') known.push(read.fact);
    else if (read.mustUnderstand) notUnderstood.push(id);
    all.push(read.kind === 'known' ? read.fact : read.envelope);
  }
  return { known: known.sort(inOrder), ids: all.sort(inOrder).map(({ id }) => id), notUnderstood };
}

type OtherKind = Exclude<RecordKind, RegisterKind>;
const folds: { readonly [K in OtherKind]: (input: FoldInput) => AnyRecord | null } = {
  shift: foldShift,
  flowCheck: foldFlowCheck,
  sample: foldSample,
  workday: foldWorkday,
  box: foldBox,
  reported: foldReported,
  reliance: foldReliance,
  notice: foldNotice,
  determination: foldDetermination,
  duty: foldDuty,
  request: foldRequest,
  plan: foldPlan,
  dayPlan: foldDayPlan,
  spending: foldSpending,
};

const foldKind = (kind: RecordKind, input: FoldInput): AnyRecord | null =>
  isRegisterKind(kind) ? foldRegister(kind, input) : folds[kind](input);

/** In the order taken; between two of one moment the id, so that the order of arrival shows nowhere. */
function photosIn(facts: readonly Fact[]): readonly Photo[] {
  const taken = ofKind(facts, 'photoTaken.v1').map(({ id, by, happened, body }) => {
    const { photoId, of, hash, widthPx, heightPx, bytesCount } = body;
    return { photoId, of, hash, widthPx, heightPx, bytesCount, factId: id, at: happened.at, by };
  });
  const place = ({ at, factId }: Photo): string => `${at} ${factId}`;
  return taken.sort((a, b) => (place(a) < place(b) ? -1 : 1));
}

const isRecordKind = (kind: string): kind is RecordKind => (recordKinds as readonly string[]).includes(kind);

/**
 * The record of a key (`kind:id`) from all facts that name it in `about`. Null while the facts do not yet tell what the record is (its
 * first fact is missing), or when its kind is unknown here. Throws on a text that `readFact` refuses: the journal never takes one.
 */
export function foldRecord(key: string, facts: readonly StoredFact[]): AnyRecord | null {
  const at = key.indexOf(':');
  const kind = key.slice(0, at);
  if (!isRecordKind(kind)) return null;
  const sorted = sortedFacts(facts);
  const result = corrected(sorted.known);
  const photos = photosIn(result.facts);
  const base: RecordBase = {
    key,
    id: key.slice(at + 1),
    factIds: sorted.ids,
    strikes: result.strikes,
    conflicts: result.conflicts,
    notUnderstood: [...sorted.notUnderstood, ...result.notApplied].sort(),
    ...(photos.length > 0 ? { photos } : {}),
  };
  return foldKind(kind, { base, facts: result.facts, settlements: ofKind(sorted.known, 'correctionSettled.v1') });
}
