/** A box of given cassettes, packed by whoever holds the book of the bench. */
import type { LaboratoryRecord, SampleRecord, ShiftRecord } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import type { BookDatabase } from '#store/database.ts';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry } from '#tests/store/scenario.ts';

export async function boxFact(db: BookDatabase, samples: readonly SampleRecord[]): Promise<NewFact<'boxPacked.v1'>> {
  const [laboratory] = await db.records
    .where('[kind+sort]')
    .between(['laboratory', ''], ['laboratory', '\uffff'])
    .toArray();
  const shift = await db.records.get(`shift:${samples[0]?.shiftId}`);
  if (laboratory === undefined || shift === undefined) throw new Error('the book has no laboratory or no such shift');
  const person = samples[0]?.workerId ?? '';
  const body = {
    boxId: newId(),
    siteId: (shift.record as ShiftRecord).siteId,
    sampleIds: samples.map(({ id }) => id),
    laboratoryId: (laboratory.record as LaboratoryRecord).id,
    samplerId: person,
    analysis: 'Lead',
    methodId: 'niosh-7082',
    reportingLimitUg: 2.5,
    includeWallDeposit: true,
    callBeforeReanalysis: true,
    turnaround: '5 working days',
    workersShownAs: 'identifier' as const,
    remark: null,
  };
  return newFact('boxPacked.v1', body, entry(person)) as NewFact<'boxPacked.v1'>;
}
