/** The shifts that are open today, each with how many pumps are out. */
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book, SampleRecord, ShiftRecord } from '#records/book.ts';
import { en as words } from '#words/today.ts';

const isOnWorker = (sample: SampleRecord): boolean => sample.putOn !== null && sample.stopped === null;
const isPrepared = (sample: SampleRecord): boolean => sample.putOn === null;
const isSealed = (sample: SampleRecord): boolean => sample.sealed !== null;

export function ShiftsToday({ shifts, book }: { readonly shifts: readonly ShiftRecord[]; readonly book: Book }) {
  const air = [...book.samples.values()].filter(({ sampleKind, voided }) => sampleKind === 'air' && voided === null);
  const count = (shiftId: string, is: (sample: SampleRecord) => boolean): number =>
    air.filter((sample) => sample.shiftId === shiftId && is(sample)).length;
  return (
    <Lines heading={shifts.length > 1 ? words.sites : undefined}>
      {shifts.flatMap(({ id, siteId }) => [
        <Line
          key={id}
          to={`/shift/${id}`}
          detail={words.dayPageDetail(count(id, isOnWorker), count(id, isPrepared), count(id, isSealed))}
        >
          {shifts.length > 1 ? (book.sites.get(siteId)?.name ?? words.dayPage) : words.dayPage}
        </Line>,
        <Line key={`${id} roster`} to={`/shift/${id}/roster`}>
          {words.roster}
        </Line>,
      ])}
    </Lines>
  );
}
