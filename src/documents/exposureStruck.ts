/** Of the exposure record: every value that was struck, with what took its place and why. Nothing is left out. */
import type { RecordBase } from '#records/book.ts';
import { en } from '#words/exposureRecord.ts';
import { labelOf } from '#words/fieldNames.ts';
import { recordName } from '#words/recordNames.ts';
import { valueText } from '#words/valueText.ts';
import { checksOf } from './exposureFlows.ts';
import type { Recording } from './exposureRecordValues.ts';

/** Records that the figure rests on. */
function recordsOf(recording: Recording): RecordBase[] {
  const { book, finding } = recording;
  const samples = finding.samples.flatMap(({ sampleId }) => book.samples.get(sampleId) ?? []);
  const shiftIds = new Set(samples.map(({ shiftId }) => shiftId));
  const blanks = [...book.samples.values()].filter((one) => one.sampleKind === 'blank' && shiftIds.has(one.shiftId));
  const checks = checksOf(recording);
  const day = book.workdays.get(finding.workdayId);
  const found: (RecordBase | undefined)[] = [
    day,
    ...samples,
    ...blanks,
    ...checks,
    ...[...shiftIds].map((id) => book.shifts.get(id)),
    ...new Set(checks.map(({ meterId }) => book.meters.get(meterId))),
  ];
  return found.filter((one) => one !== undefined);
}

export function struckLines(recording: Recording): string[] {
  const { book, naming, input } = recording;
  const told = new Map([...book.people].map(([id, person]) => [id, { ...person, name: recording.shown(id) }]));
  const shownBook = input.shownAs === 'identifier' ? { ...book, people: told } : book;
  return recordsOf(recording).flatMap((one) => {
    const of = recordName(one.key, shownBook);
    const struck = one.strikes.map((strike) => {
      const { path, old, why, by } = strike;
      const said = (value: unknown) => valueText(path, value, naming);
      const who = by === null ? null : (naming.nameOf(by) ?? null);
      return en.struck.line(of, labelOf(path), said(old), said(strike.new), why ?? en.struck.noReason, who);
    });
    const disputed = one.conflicts.map(({ path }) => en.struck.dispute(of, labelOf(path)));
    const unread = one.notUnderstood.length > 0 ? [en.struck.notUnderstood(of)] : [];
    return [...struck, ...disputed, ...unread];
  });
}
