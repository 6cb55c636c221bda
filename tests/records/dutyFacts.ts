/** Builds facts of roster, measurements of others, notices and duties for tests. Plainly invented people in an old public library. */
import type { FactBody } from '#records/fact.ts';
import { at, ids, shiftId, type When, wanted, workOn } from './facts.ts';

export const anaDay = `${ids.ana}.${workOn}`;
export const benDay = `${ids.ben}.${workOn}`;
export const workdayKey = `workday:${anaDay}`;
export const noticeId = 'n00000000001';
export const reportedId = 'r00000000001';
export const dutyId = `writtenProgramme.${ids.site}`;
export const dutyKey = `duty:${dutyId}`;
const office = { entry: 'typed', at: at('15:00', '2026-12-02') } as const;

export const worked = (taskIds: readonly string[], more: Partial<FactBody<'workNoted.v1'>> = {}, when: When = {}) =>
  wanted(
    'workNoted.v1',
    { workdayId: anaDay, shiftId, taskIds: [...taskIds], jobClassificationId: null, respirator: null, ...more },
    when,
  );

export const struck = (noted: string, knew?: readonly string[], when: When = { why: 'she was not there' }) =>
  wanted('workStruck.v1', { workdayId: anaDay, noted, ...(knew ? { knew: [...knew] } : {}) }, when);

export const personAdded = (personId: string = ids.ana, name = 'Ana Putty') =>
  wanted('personAdded.v1', {
    ...{ personId, name, identifier: null, language: 'es', jobClassificationId: null, employer: null },
  });

export const employed = (fromOn: string | null, toOn: string | null, knew?: readonly string[]) =>
  wanted('employmentStated.v1', { personId: ids.ana, fromOn, toOn, ...(knew ? { knew: [...knew] } : {}) });

export const bookOpened = () =>
  wanted('bookOpened.v1', { bookId: ids.book, firmName: 'Old Sash & Steel', practice: false });

export const limits = (
  besideIds: readonly string[],
  ownActionLevelUgPerM3: number | null,
  ownPelUgPerM3: number | null,
  knew?: readonly string[],
) =>
  wanted('limitsChosen.v1', {
    bookId: ids.book,
    besideIds: [...besideIds],
    ownActionLevelUgPerM3,
    ownPelUgPerM3,
    ...(knew ? { knew: [...knew] } : {}),
  });

type Answer = FactBody<'changesAsked.v1'>['equipment'];
export const changes = (more: Partial<Record<'equipment' | 'process' | 'control' | 'personnel' | 'newTask', Answer>>) =>
  wanted('changesAsked.v1', {
    ...{ shiftId, equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' },
    ...more,
  } as FactBody<'changesAsked.v1'>);

export const shiftOpened = () => wanted('shiftOpened.v1', { shiftId, siteId: ids.site, workOn });

export const reported = (more: Partial<FactBody<'measurementReported.v1'>> = {}) =>
  wanted(
    'measurementReported.v1',
    {
      ...{ reportedId, from: 'consultant', fromName: 'Harbor Air', reportNumber: 'H-12', workerId: ids.ana },
      ...{ siteId: ids.site, setting: 'indoors', workOn, receivedOn: '2026-12-01', taskIds: ['handScraping'] },
      ...{ jobClassificationId: null, average: { kind: 'measured', twa8UgPerM3: 12 }, workedHours: 8 },
      ...{ fullShift: 'yes', ownFirm: 'yes', accuracy: 'yes', remark: null },
      ...more,
    } as FactBody<'measurementReported.v1'>,
    office,
  );

export const relied = (more: Partial<FactBody<'measurementReliedOn.v1'>> = {}) =>
  wanted(
    'measurementReliedOn.v1',
    {
      ...{ relianceId: 'v00000000001', measurementId: reportedId, shiftId: `${ids.site}.2026-12-02` },
      ...{ taskIds: ['handScraping'], jobClassificationId: null, processes: 'alike', material: 'alike' },
      ...{ controls: 'alike', practices: 'alike', environment: 'alike', ownFirm: 'yes' },
      ...more,
    } as FactBody<'measurementReliedOn.v1'>,
    office,
  );

const paper = (letter: string) => ({
  pdfHash: letter.repeat(64),
  editions: { app: '1', rules: '2', formulas: '3' },
  heads: [],
});

export const notice = (more: Partial<FactBody<'noticeIssued.v1'>> = {}, when: When = office) =>
  wanted(
    'noticeIssued.v1',
    {
      ...{ noticeId, measurementId: anaDay, revision: '1', resultFactIds: [], receivedOn: '2026-12-02' },
      ...{ workerIds: [ids.ana, ids.ben], form: 'inWriting', places: [], shownAs: 'name', languages: ['en', 'es'] },
      ...{ pelStatement: false, correctiveAction: null, notice: {}, ...paper('b') },
      ...more,
    } as FactBody<'noticeIssued.v1'>,
    when,
  );

export const given = (more: Partial<FactBody<'noticeGiven.v1'>> = {}, when: When = { at: at('16:00', '2026-12-02') }) =>
  wanted(
    'noticeGiven.v1',
    { noticeId, workerId: ids.ana, how: 'handedOver', place: null, language: 'es', initials: 'AP', ...more },
    when,
  );

export const determination = (more: Partial<FactBody<'determinationWritten.v1'>> = {}) =>
  wanted(
    'determinationWritten.v1',
    {
      ...{ determinationId: 'd00000000001', outcome: 'negative', siteId: ids.site, shiftId: null },
      ...{ location: 'Reading room', determinedOn: '2026-12-02', taskIds: ['handScraping'], jobClassificationId: null },
      ...{ measurementIds: [anaDay], relianceIds: [], monitoredIds: [ids.ana], standsForIds: [ids.ana] },
      ...{ observations: null, earlierMeasurements: null, complaints: null, determination: {}, ...paper('d') },
      ...more,
    } as FactBody<'determinationWritten.v1'>,
    office,
  );

export const recordIssued = (revision: string) =>
  wanted(
    'exposureRecordIssued.v1',
    { workdayId: anaDay, revision, to: 'Ana Putty', record: {}, ...paper('e') },
    office,
  );

export const done = (doneOn: string, more: Partial<FactBody<'dutyDone.v1'>> = {}, when: When = office) =>
  wanted('dutyDone.v1', { dutyId, doneOn, doneById: null, whereItLies: 'Site cabin', remark: null, ...more }, when);

export const reopened = (knew?: readonly string[], when: When = { ...office, why: 'the wrong folder' }) =>
  wanted('dutyReopened.v1', { dutyId, ...(knew ? { knew: [...knew] } : {}) }, when);

export const requested = (more: Partial<FactBody<'recordsRequested.v1'>> = {}) =>
  wanted(
    'recordsRequested.v1',
    {
      requestId: 'k00000000001',
      askedOn: '2026-12-01',
      by: 'Ana Putty',
      personId: ids.ana,
      as: 'worker',
      remark: null,
      ...more,
    },
    office,
  );
