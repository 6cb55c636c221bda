/** What is typed about a box, and how it is read into the body of the fact. */
import type { FieldReader } from '#parts/fieldReader.ts';
import { emptyLaboratory, type LaboratoryText, readLaboratory } from '#parts/LaboratoryLines.tsx';
import { addingNew } from '#parts/PickOrAdd.tsx';
import type { FactBody } from '#records/fact.ts';
import { en } from '#words/box.ts';

export type BoxBody = FactBody<'boxPacked.v1'>;
export type Answer = 'yes' | 'no';

export interface BoxText {
  readonly siteId: string | null;
  /** Cassettes of the list that stay out: what is stopped meanwhile goes in by itself. */
  readonly leftOut: readonly string[];
  readonly laboratoryId: string | null;
  readonly laboratory: LaboratoryText;
  readonly samplerId: string;
  readonly analysis: string;
  /** '' is left to the laboratory. */
  readonly methodId: string;
  readonly reportingLimit: string;
  readonly wallDeposit: Answer | null;
  readonly reanalysis: Answer | null;
  readonly turnaround: string;
  readonly shownAs: BoxBody['workersShownAs'] | null;
  readonly remark: string;
}

const words = en.pack;
const answerOf = (value: boolean): Answer => (value ? 'yes' : 'no');

/** The first box asks everything; the next ones begin with what was asked last. */
export const emptyBox = (siteId: string | null, samplerId: string | null, knowsLaboratory: boolean): BoxText => ({
  siteId,
  leftOut: [],
  laboratoryId: knowsLaboratory ? null : addingNew,
  laboratory: emptyLaboratory,
  samplerId: samplerId ?? '',
  analysis: words.analysisUsual,
  methodId: '',
  reportingLimit: '',
  wallDeposit: null,
  reanalysis: null,
  turnaround: '',
  shownAs: null,
  remark: '',
});

export const textOf = (packed: BoxBody): BoxText => ({
  siteId: packed.siteId,
  leftOut: [],
  laboratoryId: packed.laboratoryId,
  laboratory: emptyLaboratory,
  samplerId: packed.samplerId,
  analysis: packed.analysis,
  methodId: packed.methodId ?? '',
  reportingLimit: packed.reportingLimitUg === null ? '' : String(packed.reportingLimitUg),
  wallDeposit: answerOf(packed.includeWallDeposit),
  reanalysis: answerOf(packed.callBeforeReanalysis),
  turnaround: packed.turnaround,
  shownAs: packed.workersShownAs,
  remark: packed.remark ?? '',
});

/** Below a nanogram nobody reports, above a milligram nobody needs to: a slip of a thousand is caught here. */
const limitRange = { optional: true, least: 0.001, most: 1000 };

export type Asked = Pick<
  BoxBody,
  | 'laboratoryId'
  | 'samplerId'
  | 'analysis'
  | 'methodId'
  | 'reportingLimitUg'
  | 'includeWallDeposit'
  | 'callBeforeReanalysis'
  | 'turnaround'
  | 'workersShownAs'
  | 'remark'
>;

export interface ReadBox {
  readonly asked: Asked;
  /** A laboratory written down with the box. */
  readonly laboratory: NonNullable<ReturnType<typeof readLaboratory>> | null;
}

/** null, with sentences at the fields, when something stands in the way. `laboratoryId` is the id of a new laboratory. */
export function readBox(read: FieldReader, text: BoxText, newLaboratoryId: string): ReadBox | null {
  const picked = read.chosen('laboratory', words.laboratory, text.laboratoryId);
  const laboratory = picked === addingNew ? readLaboratory(read, text.laboratory) : null;
  const samplerId = read.chosen('sampler', words.sampler, text.samplerId);
  const analysis = read.text('analysis', words.analysis, text.analysis);
  const reportingLimitUg = read.quantity('reportingLimit', words.reportingLimit, 'µg', text.reportingLimit, limitRange);
  const wallDeposit = read.chosen('wallDeposit', words.wallDeposit, text.wallDeposit);
  const reanalysis = read.chosen('reanalysis', words.reanalysis, text.reanalysis);
  const turnaround = read.text('turnaround', words.turnaround, text.turnaround);
  const shownAs = read.chosen('shownAs', words.shownAs, text.shownAs);
  const remark = read.text('remark', words.remark, text.remark, { optional: true, most: 2000 });
  if (read.errors.length > 0 || picked === null || samplerId === null || analysis === null) return null;
  if (turnaround === null || shownAs === null) return null;
  const asked = {
    laboratoryId: picked === addingNew ? newLaboratoryId : picked,
    samplerId,
    analysis,
    methodId: text.methodId || null,
    reportingLimitUg,
    includeWallDeposit: wallDeposit === 'yes',
    callBeforeReanalysis: reanalysis === 'yes',
    turnaround,
    workersShownAs: shownAs,
    remark,
  };
  return { asked, laboratory };
}
