/** Of the exposure record: the conditions that could bear on the measurement, 29 CFR 1926.62(n)(1)(ii)(E), as they were noted. */
import { conditionKeys, en as conditions } from '#words/conditions.ts';
import { en } from '#words/exposureRecord.ts';
import { valueText } from '#words/valueText.ts';
import type { PrintedField, PrintedSection, Recording } from './exposureRecordValues.ts';

export function conditionsSection({ book, finding, naming }: Recording): PrintedSection {
  const worked = book.workdays.get(finding.workdayId)?.worked ?? [];
  const shiftIds = new Set([
    ...finding.samples.flatMap(({ sampleId }) => book.samples.get(sampleId)?.shiftId ?? []),
    ...worked.map(({ shiftId }) => shiftId),
  ]);
  const shifts = [...shiftIds].flatMap((id) => book.shifts.get(id) ?? []);
  const several = shifts.length > 1;
  const fields = shifts.flatMap((shift): PrintedField[] => {
    const noted = shift.conditions;
    if (noted === null) return [];
    const at = several ? `${naming.nameOf(shift.siteId) ?? ''}: ` : '';
    return [
      ...conditionKeys.map(
        (key): PrintedField => [`${at}${conditions.labels[key]}`, valueText(`/${key}`, noted[key], naming)],
      ),
      ...(noted.remark ? [[en.conditions.remark, noted.remark] as PrintedField] : []),
    ];
  });
  return { heading: en.conditions.heading, fields, lines: fields.length === 0 ? [en.conditions.none] : [] };
}
