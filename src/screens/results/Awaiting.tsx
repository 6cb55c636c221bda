/** The cassettes that still wait for a result, box by box: a tap puts a number into the next line, or a whole box at once. */
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import type { Registers } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/results.ts';
import styles from './results.module.css';

export interface AwaitingProps {
  readonly awaiting: readonly SampleRecord[];
  readonly boxes: readonly BoxRecord[];
  readonly registers: Registers;
  readonly keyed: ReadonlySet<string>;
  readonly onPut: (numbers: readonly string[], box: BoxRecord | null) => void;
}

export function Awaiting({ awaiting, boxes, registers, keyed, onPut }: AwaitingProps) {
  const byId = new Map(awaiting.map((sample) => [sample.id, sample]));
  const open = boxes
    .map((box) => ({ box, numbers: box.packed.sampleIds.flatMap((id) => byId.get(id)?.sampleNumber ?? []) }))
    .filter(({ numbers }) => numbers.some((number) => !keyed.has(number)));
  const whose = (sample: SampleRecord): string => {
    const day = formatDay(sample.workOn, 'en', 'short');
    if (sample.sampleKind === 'blank') return words.rows.blank(day);
    return words.rows.whose(registers.people.byId.get(sample.workerId ?? '')?.name ?? '', day);
  };
  return (
    <div className={styles.awaiting}>
      {open.map(({ box, numbers }) => (
        <QuietAction key={box.id} onClick={() => onPut(numbers, box)}>
          {words.awaiting.fill(numbers.length, registers.laboratories.byId.get(box.packed.laboratoryId)?.name ?? '')}
        </QuietAction>
      ))}
      <Lines heading={words.awaiting.heading}>
        {awaiting.map((sample) => {
          const isKeyed = keyed.has(sample.sampleNumber);
          return (
            <Line
              key={sample.id}
              detail={whose(sample)}
              end={isKeyed ? words.awaiting.keyed : undefined}
              onClick={isKeyed ? undefined : () => onPut([sample.sampleNumber], null)}
            >
              {sample.sampleNumber}
            </Line>
          );
        })}
      </Lines>
    </div>
  );
}
