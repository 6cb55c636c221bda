/** Of the exposure record: flow checks with every reading, the flow meters' certificates, and the field blanks. */
import { type CertificateSaid, certificateInForce } from '#findings/gear/certificateInForce.ts';
import { dayOfCheck } from '#findings/gear/doubtsOf.ts';
import type { FlowCheckRecord, MeterRecord, SampleRecord } from '#records/book.ts';
import { en } from '#words/exposureRecord.ts';
import { en as gear } from '#words/gear.ts';
import { formatQuantity } from '#words/quantity.ts';
import { choicesOf, valueText } from '#words/valueText.ts';
import { momentOf } from './exposureDay.ts';
import type { PrintedField, PrintedSection, Recording } from './exposureRecordValues.ts';

const { flows: words } = en;
const flow = (flowLPerMin: number): string => formatQuantity(flowLPerMin, 'L/min', { digits: 'working' });

const readingsText = ({ readings }: FlowCheckRecord): string =>
  readings
    .map(({ lowLPerMin, highLPerMin }) =>
      lowLPerMin === highLPerMin ? flow(lowLPerMin) : words.range(flow(lowLPerMin), flow(highLPerMin)),
    )
    .join('; ');

function checkField(check: FlowCheckRecord, recording: Recording): PrintedField {
  const { book, naming } = recording;
  const { temperatureC, pressureKPa } = check;
  const meter = book.meters.get(check.meterId)?.serial ?? en.notKnown;
  const inLine = choicesOf('inLine')[check.inLine] ?? check.inLine;
  const air = words.air(
    temperatureC === null ? null : formatQuantity(temperatureC, '°C'),
    pressureKPa === null ? null : formatQuantity(pressureKPa, 'kPa'),
  );
  const said = words.checkIs(readingsText(check), meter, inLine, momentOf(recording, check.happened.at));
  const more = [air, check.remark ?? ''].filter((part) => part !== '');
  return [words.check(check.purpose, naming.nameOf(check.pumpId) ?? en.notKnown), [said, ...more].join('; ')];
}

/** A certificate as it was in force on the day of a check. */
function meterField(
  { serial, meterKind }: MeterRecord,
  { certificateOn, dueOn, pairs }: CertificateSaid,
): PrintedField {
  const said = words.meterIs(gear.meter.kinds[meterKind], certificateOn, dueOn);
  const certified = pairs.map(({ readLPerMin, trueLPerMin }) => words.pair(flow(readLPerMin), flow(trueLPerMin)));
  return [words.meter(serial), certified.length === 0 ? said : `${said}; ${words.pairs(certified.join('; '))}`];
}

/** Each flow meter once for each certificate that held on the days of the checks; of two that differ both. */
function meterFields(checks: readonly FlowCheckRecord[], { book }: Recording): PrintedField[] {
  const found = new Map<string, PrintedField>();
  for (const check of checks) {
    const meter = book.meters.get(check.meterId);
    if (!meter) continue;
    const inForce = certificateInForce(meter, dayOfCheck(check, book));
    for (const one of [inForce, ...inForce.differing])
      found.set(`${meter.id} ${one.because.join()}`, meterField(meter, one));
  }
  return [...found.values()];
}

/** The checks that the day's samples rest on, in the order of their times. */
export function checksOf({ book, finding }: Recording): FlowCheckRecord[] {
  const ids = new Set(
    finding.samples.flatMap(({ checkBefore, checkAfter }) =>
      [checkBefore, checkAfter].flatMap((check) => check?.flowCheckId ?? []),
    ),
  );
  return [...ids]
    .flatMap((id) => book.flowChecks.get(id) ?? [])
    .sort((a, b) => (a.happened.at < b.happened.at ? -1 : 1));
}

export function flowsSection(recording: Recording): PrintedSection {
  const checks = checksOf(recording);
  return {
    heading: words.heading,
    fields: [...checks.map((check) => checkField(check, recording)), ...meterFields(checks, recording)],
    lines: checks.length === 0 ? [en.notKnown] : [],
  };
}

function blankField(blank: SampleRecord, { naming }: Recording): PrintedField {
  const results = blank.results.map(({ mass, reportNumber }) => {
    const said = valueText('/mass', mass, naming);
    return `${said}, ${en.sample.result(reportNumber)}`;
  });
  return [en.blanks.blank(blank.sampleNumber), results.join('; ') || en.sample.notIn];
}

/** Field blanks of the shifts of the day. */
export function blanksSection(recording: Recording): PrintedSection {
  const { book, finding } = recording;
  const shifts = new Set(finding.samples.flatMap(({ sampleId }) => book.samples.get(sampleId)?.shiftId ?? []));
  const blanks = [...book.samples.values()].filter(
    ({ sampleKind, shiftId }) => sampleKind === 'blank' && shifts.has(shiftId),
  );
  return {
    heading: en.blanks.heading,
    fields: blanks.map((blank) => blankField(blank, recording)),
    lines: blanks.length === 0 ? [en.blanks.none] : [],
  };
}
