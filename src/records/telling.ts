/** Papers that tell, measurements of others, what was done of what the rule asks, and who asked for records. */
import type {
  DeterminationRecord,
  DutyRecord,
  Issued,
  NoticeRecord,
  RelianceRecord,
  ReportedRecord,
  RequestRecord,
} from './book.ts';
import type { Fact, FactKind } from './fact.ts';
import { type FoldInput, firstOf, ofKind } from './foldCase.ts';

/** When a paper left the firm, and by which fact. */
export const issuedBy = ({ id, happened, by }: Pick<Fact, 'id' | 'happened' | 'by'>): Issued => ({
  factId: id,
  at: happened.at,
  by,
});

/** By when it happened; of one moment by id, so that the order of arrival shows nowhere. */
export const inTime = <K extends FactKind>(facts: readonly Fact[], kind: K): readonly Fact<K>[] => {
  const place = ({ happened, id }: Fact<K>): string => `${happened.at} ${id}`;
  return [...ofKind(facts, kind)].sort((a, b) => (place(a) < place(b) ? -1 : 1));
};

export function foldReported({ base, facts }: FoldInput): ReportedRecord | null {
  const reported = firstOf(facts, 'measurementReported.v1');
  return reported && { ...reported.body, ...base, reportedFactId: reported.id };
}

export function foldReliance({ base, facts }: FoldInput): RelianceRecord | null {
  const relied = firstOf(facts, 'measurementReliedOn.v1');
  return relied && { ...relied.body, ...base, reliedFactId: relied.id };
}

/** Null until the notice itself has arrived: nobody was given a notice that is not there. */
export function foldNotice({ base, facts }: FoldInput): NoticeRecord | null {
  const issued = firstOf(facts, 'noticeIssued.v1');
  if (!issued) return null;
  const given = inTime(facts, 'noticeGiven.v1').map((fact) => ({ ...fact.body, ...issuedBy(fact) }));
  return { ...base, issued: { ...issued.body, ...issuedBy(issued) }, given };
}

export function foldDetermination({ base, facts }: FoldInput): DeterminationRecord | null {
  const written = firstOf(facts, 'determinationWritten.v1');
  return written && { ...base, written: { ...written.body, ...issuedBy(written) } };
}

/** A reopening takes back what it knew of; one that names nothing takes back all. It never comes to rest on a clock. */
export function foldDuty({ base, facts }: FoldInput): DutyRecord {
  const reopenings = ofKind(facts, 'dutyReopened.v1');
  const isOpen = (id: string): boolean =>
    reopenings.some(({ body: { knew } }) => knew === undefined || knew.includes(id));
  const done = inTime(facts, 'dutyDone.v1').filter(({ id }) => !isOpen(id));
  return {
    ...base,
    done: done.map(({ body: { dutyId: _, ...body }, ...fact }) => ({
      ...body,
      ...issuedBy(fact),
    })) as unknown as DutyRecord['done'],
  };
}

export function foldRequest({ base, facts }: FoldInput): RequestRecord | null {
  const requested = firstOf(facts, 'recordsRequested.v1');
  return requested && { ...requested.body, ...base };
}
