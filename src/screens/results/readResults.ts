/** From typed text to the body of a result, or sentences at the fields. Percent becomes a fraction here, and nothing else is reckoned. */
import type { FieldReader } from '#parts/fieldReader.ts';
import { quantityError } from '#parts/fieldReader.ts';
import { parseMass } from '#parts/parseMass.ts';
import type { FactBody } from '#records/fact.ts';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import { en as partsWords } from '#words/parts.ts';
import { en as words } from '#words/results.ts';
import { fieldName, type ReportText, type RowText } from './resultsDraft.ts';

export type ResultBody = FactBody<'resultReceived.v1'>;
type RowBody = Pick<
  ResultBody,
  'mass' | 'reportingLimitUg' | 'laboratoryVolumeL' | 'laboratoryConcentrationUgPerM3' | 'remark'
>;

const optional = { optional: true } as const;
const day = { ...optional, past: true } as const;

export function readReport(read: FieldReader, text: ReportText, today: string) {
  const before = read.errors.length;
  const { report } = words;
  const reportNumber = read.text('reportNumber', report.reportNumber, text.reportNumber);
  const accreditation = read.text('accreditation', report.accreditation, text.accreditation, optional);
  const receivedOn = read.day('receivedOn', report.receivedOn, text.receivedOn, today, { past: true });
  const reportedOn = read.day('reportedOn', report.reportedOn, text.reportedOn, today, day);
  const analysedOn = read.day('analysedOn', report.analysedOn, text.analysedOn, today, day);
  const blankCorrected = read.chosen('blankCorrected', report.blankCorrected, text.blankCorrected);
  const wallDeposit = read.chosen('wallDeposit', report.wallDeposit, text.wallDeposit);
  const saePct = read.quantity('sae', report.sae, '%', text.sae, { ...optional, least: 0.1, most: 100 });
  const missing = reportNumber === null || receivedOn === null || blankCorrected === null || wallDeposit === null;
  if (missing || read.errors.length > before) return null;
  return {
    reportNumber,
    laboratoryId: text.laboratoryId || null,
    accreditation,
    methodId: text.methodId || null,
    receivedOn,
    reportedOn,
    analysedOn,
    blankCorrected,
    wallDeposit,
    saeFraction: saePct === null ? null : saePct / 100,
  };
}

/** The number of a line, checked; null with a sentence at the field. */
export function readNumber(read: FieldReader, row: RowText): string | null {
  const checked = checkSampleNumber(row.number);
  if (checked.kind === 'right') return checked.sampleNumber;
  return read.add(fieldName(row, 'number'), words.mistakes[checked.mistake]);
}

function readMass(read: FieldReader, row: RowText): ResultBody['mass'] | null {
  const field = fieldName(row, 'mass');
  const parsed = parseMass(row.mass);
  switch (parsed.kind) {
    case 'measured':
      return { kind: 'measured', massUg: parsed.massUg };
    case 'lessThan':
      return { kind: 'lessThan', reportingLimitUg: parsed.reportingLimitUg };
    case 'empty':
      return read.add(field, words.mass.missing);
    case 'noNumber':
      return read.add(field, words.mass.noNumber(parsed.found));
    case 'zero':
      return read.add(field, words.mass.zero);
    case 'error':
      return read.add(field, quantityError(parsed, words.rows.mass, 'µg', partsWords) ?? '');
  }
}

/** A reporting limit may not say two things: behind the < and in its own field. */
function readLimit(read: FieldReader, row: RowText, mass: ResultBody['mass'] | null): number | null {
  const limitUg = read.quantity(fieldName(row, 'limit'), words.rows.limit, 'µg', row.limit, positive);
  if (mass?.kind !== 'lessThan') return limitUg;
  if (limitUg !== null && limitUg !== mass.reportingLimitUg) read.add(fieldName(row, 'limit'), words.limitsDiffer);
  return mass.reportingLimitUg;
}

/** Anything smaller than this is a slip of the keys. */
const positive = { ...optional, least: 0.0001 } as const;

export function readRow(read: FieldReader, row: RowText): RowBody | null {
  const before = read.errors.length;
  const mass = readMass(read, row);
  const reportingLimitUg = readLimit(read, row, mass);
  const { volume, concentration } = words.rows;
  const laboratoryVolumeL = read.quantity(fieldName(row, 'volume'), volume, 'L', row.volume, positive);
  const typed = row.concentration.replace(/^\s*(?:<|≤)\s*/, '');
  const laboratoryConcentrationUgPerM3 = read.quantity(
    fieldName(row, 'concentration'),
    concentration,
    'µg/m³',
    typed,
    optional,
  );
  if (mass === null || read.errors.length > before) return null;
  const lessThan = typed !== row.concentration;
  return {
    mass,
    reportingLimitUg,
    laboratoryVolumeL,
    laboratoryConcentrationUgPerM3: lessThan ? null : laboratoryConcentrationUgPerM3,
    remark: lessThan ? `${concentration}: ${row.concentration.trim()} µg/m³` : null,
  };
}
