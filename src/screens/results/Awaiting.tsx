/** The cassettes that still wait for a result: a tap puts a number into the next line. */
import { Line, Lines } from '#parts/Lines.tsx';
import type { SampleRecord } from '#records/book.ts';
import type { Registers } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/results.ts';
import styles from './results.module.css';

export interface AwaitingProps {
  readonly awaiting: readonly SampleRecord[];
  readonly registers: Registers;
  readonly keyed: ReadonlySet<string>;
  readonly onPut: (numbers: readonly string[]) => void;
}

export function Awaiting({ awaiting, registers, keyed, onPut }: AwaitingProps) {
  const whose = (sample: SampleRecord): string => {
    const day = formatDay(sample.workOn, 'en', 'short');
    if (sample.sampleKind === 'blank') return words.rows.blank(day);
    return words.rows.whose(registers.people.byId.get(sample.workerId ?? '')?.name ?? '', day);
  };
  return (
    <div className={styles.awaiting}>
      <Lines heading={words.awaiting.heading}>
        {awaiting.map((sample) => {
          const isKeyed = keyed.has(sample.sampleNumber);
          return (
            <Line
              key={sample.id}
              detail={whose(sample)}
              end={isKeyed ? words.awaiting.keyed : undefined}
              onClick={isKeyed ? undefined : () => onPut([sample.sampleNumber])}
            >
              {sample.sampleNumber}
            </Line>
          );
        })}
      </Lines>
    </div>
  );
}
