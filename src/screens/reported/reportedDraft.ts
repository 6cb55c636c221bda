/** A reported measurement as typed, and reading it: into its fact or into corrections, or the sentences of what stands in the way. */
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import type { ReportedRecord } from '#records/book.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as words } from '#words/reported.ts';

type Full = FactBody<'measurementReported.v1'>;
/** The named values of the fact, without the unknown ones of a newer version. */
type Named = Pick<
  Full,
  | 'from'
  | 'fromName'
  | 'reportNumber'
  | 'workerId'
  | 'siteId'
  | 'setting'
  | 'workOn'
  | 'receivedOn'
  | 'taskIds'
  | 'jobClassificationId'
  | 'average'
  | 'workedHours'
  | 'fullShift'
  | 'ownFirm'
  | 'accuracy'
  | 'remark'
>;

/** Picked in a list: somebody or some place that the book does not know. */
export const unnamed = 'none';

export interface ReportedDraft {
  readonly from: Named['from'] | null;
  readonly fromName: string;
  readonly reportNumber: string;
  /** '' while nothing is picked. */
  readonly workerId: string;
  readonly siteId: string;
  readonly setting: Named['setting'] | null;
  readonly workOn: string;
  readonly receivedOn: string;
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly jobId: string;
  readonly kind: 'measured' | 'lessThan';
  readonly average: string;
  readonly workedHours: string;
  readonly fullShift: Named['fullShift'] | null;
  readonly ownFirm: Named['ownFirm'] | null;
  readonly accuracy: Named['accuracy'] | null;
  readonly remark: string;
  readonly why: string;
}

export const emptyReported: ReportedDraft = {
  from: null,
  fromName: '',
  reportNumber: '',
  workerId: '',
  siteId: '',
  setting: null,
  workOn: '',
  receivedOn: '',
  taskIds: [],
  find: '',
  jobId: unnamed,
  kind: 'measured',
  average: '',
  workedHours: '',
  fullShift: null,
  ownFirm: null,
  accuracy: null,
  remark: '',
  why: '',
};

const asText = (value: number | null): string => (value === null ? '' : String(value));

export const draftOf = (reported: ReportedRecord): ReportedDraft => ({
  ...emptyReported,
  from: reported.from,
  fromName: reported.fromName,
  reportNumber: reported.reportNumber ?? '',
  workerId: reported.workerId ?? unnamed,
  siteId: reported.siteId ?? unnamed,
  setting: reported.setting,
  workOn: reported.workOn,
  receivedOn: reported.receivedOn,
  taskIds: reported.taskIds,
  jobId: reported.jobClassificationId ?? unnamed,
  kind: reported.average.kind,
  average: asText(reported.average.twa8UgPerM3),
  workedHours: asText(reported.workedHours),
  fullShift: reported.fullShift,
  ownFirm: reported.ownFirm,
  accuracy: reported.accuracy,
  remark: reported.remark ?? '',
});

const idOrNull = (picked: string): string | null => (picked === unnamed || picked === '' ? null : picked);

/** A slip of a thousand, a report in other units, is caught here. */
const plausible = { most: 1_000_000 };

function readAverage(read: FieldReader, draft: ReportedDraft): Named['average'] | null {
  const twa8UgPerM3 = read.quantity('average', words.fields.average, 'µg/m³', draft.average, plausible);
  if (twa8UgPerM3 === 0) return read.add('average', words.errors.zero);
  return twa8UgPerM3 === null ? null : { kind: draft.kind, twa8UgPerM3 };
}

const optional = { optional: true } as const;

/** Everything typed, read once; null when something stands in the way, which is then in `read`. */
function readBody(read: FieldReader, draft: ReportedDraft, today: string): Named | null {
  const { fields } = words;
  const past = { past: true } as const;
  const from = read.chosen('from', fields.from, draft.from);
  const fromName = read.text('fromName', fields.fromName, draft.fromName);
  const reportNumber = read.text('reportNumber', fields.reportNumber, draft.reportNumber, optional);
  const workOn = read.day('workOn', fields.workOn, draft.workOn, today, past);
  const receivedOn = read.day('receivedOn', fields.receivedOn, draft.receivedOn, today, past);
  if (workOn !== null && receivedOn !== null && receivedOn < workOn)
    read.add('receivedOn', words.errors.receivedBefore);
  read.chosen('worker', fields.worker, draft.workerId);
  read.chosen('site', fields.site, draft.siteId);
  const setting = read.chosen('setting', fields.setting, draft.setting);
  if (draft.taskIds.length === 0) read.add('find', words.errors.taskMissing);
  const average = readAverage(read, draft);
  const hours = { least: 0.1, most: 24, ...optional };
  const workedHours = read.quantity('workedHours', fields.workedHours, 'h', draft.workedHours, hours);
  const fullShift = read.chosen('fullShift', fields.fullShift, draft.fullShift);
  const ownFirm = read.chosen('ownFirm', fields.ownFirm, draft.ownFirm);
  const accuracy = read.chosen('accuracy', fields.accuracy, draft.accuracy);
  const remark = read.text('remark', fields.remark, draft.remark, { most: 2000, ...optional });
  const asked = { from, fromName, workOn, receivedOn, setting, average, fullShift, ownFirm, accuracy };
  if (read.errors.length > 0 || Object.values(asked).includes(null)) return null;
  return {
    ...(asked as Pick<Named, keyof typeof asked>),
    reportNumber,
    workerId: idOrNull(draft.workerId),
    siteId: idOrNull(draft.siteId),
    taskIds: [...draft.taskIds],
    jobClassificationId: idOrNull(draft.jobId),
    workedHours: workedHours,
    remark,
  };
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

function correctionsOf(reported: ReportedRecord, body: Named, entry: Entry): readonly NewFact[] {
  return (Object.entries(body) as [keyof Named, unknown][])
    .filter(([name, value]) => !same(reported[name], value))
    .map(([name, value]) =>
      newFact(
        'valueCorrected.v1',
        {
          replaces: reported.reportedFactId,
          path: `/${name}`,
          old: (reported[name] ?? null) as never,
          new: value as never,
          supersedes: null,
        },
        { ...entry, about: [reported.key] },
      ),
    );
}

export interface ReadReported {
  readonly errors: FieldReader['errors'];
  readonly facts: readonly NewFact[];
}

export function readNew(draft: ReportedDraft, reportedId: string, today: string, entry: Entry): ReadReported {
  const read = fieldReader(partsWords);
  const body = readBody(read, draft, today);
  return {
    errors: read.errors,
    facts: body === null ? [] : [newFact('measurementReported.v1', { reportedId, ...body }, entry)],
  };
}

export function readCorrection(draft: ReportedDraft, of: ReportedRecord, today: string, entry: Entry): ReadReported {
  const read = fieldReader(partsWords);
  const body = readBody(read, draft, today);
  const why = draft.why.trim();
  if (why === '') read.add('why', words.errors.whyMissing);
  const facts = body === null ? [] : correctionsOf(of, body, { ...entry, why });
  if (body !== null && facts.length === 0) read.add(null, words.errors.nothingChanged);
  return { errors: read.errors, facts };
}
