/** What the acts about roster, notices and duties act upon, and one write for each of their kinds: see faultGround.ts. */
import type { NoticeRecord, WorkdayRecord } from '#records/book.ts';
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import type { FileRow } from '#store/database.ts';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { theSession } from '#store/session.ts';
import { entry } from './scenario.ts';

interface Laying {
  readonly day: { readonly siteId: string; readonly personId: string; readonly shiftId: string };
  readonly workOn: string;
  readonly write: (facts: readonly NewFact[], files?: readonly FileRow[]) => Promise<void>;
  readonly paperOf: (n: number) => FileRow;
}

interface Act {
  readonly kind: FactKind;
  readonly fact: NewFact;
  readonly files?: readonly FileRow[];
}

const taskIds = ['handScraping'];
const issued = ({ hash }: FileRow) => ({
  pdfHash: hash,
  editions: { app: '0.2.0', rules: 'r', formulas: 'f' },
  heads: [],
});

const noticeBody = (
  workdayId: string,
  workerId: string,
  receivedOn: string,
  paper: FileRow,
): FactBody<'noticeIssued.v1'> => ({
  ...{ noticeId: newId(), measurementId: workdayId, revision: '1', resultFactIds: [], receivedOn },
  ...{ workerIds: [workerId], form: 'inWriting', places: [], shownAs: 'name', languages: ['en'] },
  ...{ pelStatement: false, correctiveAction: null, notice: { revision: '1' }, ...issued(paper) },
});

const recordOf = async <R>(key: string): Promise<R> => (await theSession().db.records.get(key))?.record as R;

/** Lays an earlier day with its roster entry, notice and a duty that was done; hands back what can be written next. */
export async function layDuties({ day, workOn, write, paperOf }: Laying): Promise<readonly Act[]> {
  const { siteId, personId, shiftId } = day;
  const earlierOn = '2026-11-20';
  const earlier = `${personId}.${earlierOn}`;
  const workdayId = `${personId}.${workOn}`;
  const alike = { taskIds, jobClassificationId: null };
  const work = { ...alike, respirator: null };
  const dutyId = `programme.${siteId}`;
  const done = { dutyId, doneOn: earlierOn, doneById: personId, whereItLies: 'Folder in the van', remark: null };
  const [noticePaper, determinationPaper, recordPaper] = [paperOf(11), paperOf(12), paperOf(13)];
  const first = noticeBody(earlier, personId, earlierOn, paperOf(10));
  await write([newFact('workNoted.v1', { workdayId: earlier, shiftId: `${siteId}.${earlierOn}`, ...work }, entry())]);
  await write([newFact('dutyDone.v1', done, entry())]);
  await write([newFact('noticeIssued.v1', first, entry())], [paperOf(10)]);
  const noted = (await recordOf<WorkdayRecord>(`workday:${earlier}`)).worked?.[0]?.factId ?? '';
  const { issued: laid } = await recordOf<NoticeRecord>(`notice:${first.noticeId}`);

  const acts: Act[] = [];
  const act = <K extends FactKind>(kind: K, body: FactBody<K>, why: string | null = null, paper?: FileRow) =>
    acts.push({ kind, fact: newFact(kind, body, { ...entry(), why }), ...(paper ? { files: [paper] } : {}) });
  const reportedId = newId();
  act('workNoted.v1', { workdayId, shiftId, ...work });
  act('workStruck.v1', { workdayId: earlier, noted }, 'was at the other site');
  act('employmentStated.v1', { personId, fromOn: '2026-03-02', toOn: null });
  act('changesAsked.v1', {
    ...{ shiftId, equipment: 'no', process: 'no', control: 'yes', personnel: 'no', newTask: 'notKnown' },
  });
  act('representsStated.v1', { workdayId: earlier, workerIds: [newId()] }, 'same sashes, same tools');
  act('measurementReported.v1', {
    ...{ reportedId, from: 'consultant', fromName: 'Quern Hill', reportNumber: 'Q-1', workerId: null, siteId },
    ...{ setting: 'indoors', workOn: earlierOn, receivedOn: earlierOn, ...alike, workedHours: 8, remark: null },
    ...{ average: { kind: 'measured', twa8UgPerM3: 12 }, fullShift: 'yes', ownFirm: 'yes', accuracy: 'yes' },
  });
  act('measurementReliedOn.v1', {
    ...{ relianceId: newId(), measurementId: earlier, shiftId, ...alike, processes: 'alike', material: 'alike' },
    ...{ controls: 'alike', practices: 'alike', environment: 'notKnown', ownFirm: 'yes' },
  });
  const second = { ...noticeBody(earlier, personId, workOn, noticePaper), revision: '2' };
  act('noticeIssued.v1', second, 'a revised report', noticePaper);
  act('noticeGiven.v1', {
    ...{ noticeId: laid.noticeId, workerId: personId, how: 'handedOver', place: null, language: 'en', initials: 'AQ' },
  });
  act(
    'determinationWritten.v1',
    {
      ...{ determinationId: newId(), outcome: 'positive', siteId, shiftId: null, location: 'Reading room' },
      ...{ determinedOn: workOn, ...alike, measurementIds: [earlier], relianceIds: [], monitoredIds: [personId] },
      ...{ standsForIds: [], observations: null, earlierMeasurements: null, complaints: null },
      ...{ determination: { outcome: 'positive' }, ...issued(determinationPaper) },
    },
    null,
    determinationPaper,
  );
  act(
    'exposureRecordIssued.v1',
    { workdayId: earlier, revision: '1', to: 'Ada Quill', record: { revision: '1' }, ...issued(recordPaper) },
    null,
    recordPaper,
  );
  act('dutyDone.v1', { ...done, dutyId: `laundryTold.${siteId}` });
  act('dutyReopened.v1', { dutyId }, 'the folder was empty');
  const { bookId } = theSession();
  act('limitsChosen.v1', { bookId, besideIds: ['niosh-rel'], ownActionLevelUgPerM3: 15, ownPelUgPerM3: null });
  act('recordsRequested.v1', {
    ...{ requestId: newId(), askedOn: earlierOn, by: 'Ada Quill', personId, as: 'worker', remark: null },
  });
  return acts;
}
