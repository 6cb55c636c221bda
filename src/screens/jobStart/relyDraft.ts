/** The comparison with an earlier measurement as tapped, what it amounts to so far, and reading it into its fact. */

import { relianceOf } from '#findings/duties/groups/reliance.ts';
import { type GroupDay, type ResemblanceTerm, resemblanceTerms } from '#findings/duties/groups/taskGroup.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { fieldReader } from '#parts/fieldReader.ts';
import type { Book, RelianceRecord } from '#records/book.ts';
import { keyOf } from '#records/common.ts';
import type { FactBody } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { type Alike, en as words } from '#words/reliance.ts';

type OwnFirm = FactBody<'measurementReliedOn.v1'>['ownFirm'];

export interface RelyDraft {
  /** null while there is one group only, or nothing is picked. */
  readonly groupKey: string | null;
  readonly measurementId: string | null;
  readonly answers: Partial<Readonly<Record<ResemblanceTerm, Alike>>>;
  readonly ownFirm: OwnFirm | null;
}

export const emptyRely: RelyDraft = { groupKey: null, measurementId: null, answers: {}, ownFirm: null };

/** The work of one group today: its tasks, and the job classification. */
export type Work = Pick<GroupDay, 'groupKey' | 'taskIds' | 'jobClassificationId'>;

const bodyOf = (draft: RelyDraft, measurementId: string, shiftId: string, work: Work, relianceId: string) => ({
  relianceId,
  measurementId,
  shiftId,
  taskIds: [...work.taskIds],
  jobClassificationId: work.jobClassificationId,
  ...(Object.fromEntries(resemblanceTerms.map((term) => [term, draft.answers[term] ?? 'notKnown'])) as Record<
    ResemblanceTerm,
    Alike
  >),
  ownFirm: draft.ownFirm ?? ('notStated' as const),
});

/** What the answers amount to so far: an answer that is missing counts as not known. */
export function relianceSoFar(
  draft: RelyDraft,
  measurementId: string,
  shiftId: string,
  work: Work,
  measurements: ReadonlyMap<string, Measurement>,
  book: Book,
) {
  const record: RelianceRecord = {
    key: keyOf('reliance', 'typed'),
    id: 'typed',
    factIds: [],
    strikes: [],
    conflicts: [],
    notUnderstood: [],
    ...bodyOf(draft, measurementId, shiftId, work, 'typed'),
    reliedFactId: '',
  };
  return relianceOf(record, measurements, book);
}

export function readRely(draft: RelyDraft, shiftId: string, work: Work | null, relianceId: string, entry: Entry) {
  const read = fieldReader(partsWords);
  read.chosen('group', words.group, work?.groupKey);
  // Measurements stand on the page only once the work is chosen.
  const measurementId = work === null ? null : read.chosen('measurement', words.pick, draft.measurementId);
  if (measurementId !== null) {
    for (const term of resemblanceTerms) read.chosen(term, words.terms[term], draft.answers[term]);
    read.chosen('ownFirm', words.ownFirm, draft.ownFirm);
  }
  const isWhole = read.errors.length === 0 && measurementId !== null && work !== null;
  const facts = isWhole
    ? [newFact('measurementReliedOn.v1', bodyOf(draft, measurementId, shiftId, work, relianceId), entry)]
    : [];
  return { errors: read.errors, facts };
}
