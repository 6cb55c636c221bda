/** The first question of a report is which box it answers: a tap puts all its numbers in, and laboratory, accreditation and method. */
import { QuietAction } from '#parts/QuietAction.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import type { Registers } from '#store/hooks.ts';
import { en as words } from '#words/results.ts';

export interface FillFromBoxProps {
  readonly awaiting: readonly SampleRecord[];
  readonly boxes: readonly BoxRecord[];
  readonly registers: Registers;
  readonly keyed: ReadonlySet<string>;
  readonly onPut: (numbers: readonly string[], box: BoxRecord) => void;
}

export function FillFromBox({ awaiting, boxes, registers, keyed, onPut }: FillFromBoxProps) {
  const byId = new Map(awaiting.map((sample) => [sample.id, sample]));
  const open = boxes
    .map((box) => ({ box, numbers: box.packed.sampleIds.flatMap((id) => byId.get(id)?.sampleNumber ?? []) }))
    .filter(({ numbers }) => numbers.some((number) => !keyed.has(number)));
  return open.map(({ box, numbers }) => (
    <div key={box.id}>
      <QuietAction
        onClick={() => {
          onPut(numbers, box);
          // The button is gone with its work; whoever works by keyboard goes on with the head of the report.
          document.getElementById('reportNumber')?.focus();
        }}
      >
        {words.awaiting.fill(numbers.length, registers.laboratories.byId.get(box.packed.laboratoryId)?.name ?? '')}
      </QuietAction>
    </div>
  ));
}
