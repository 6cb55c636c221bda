/** Everything that stands against a negative determination, each with the page on which it is mended. */
import { Line, Lines } from '#parts/Lines.tsx';
import { blockText, en as words } from '#words/determinationScreen.ts';
import { formatDay } from '#words/quantity.ts';
import type { DeterminationHere } from './determinationHere.ts';
import { mendedAt } from './mendedAt.ts';

export function Blocks({ here: { finding, duties, book, shiftId } }: { readonly here: DeterminationHere }) {
  if (finding.blocks.length === 0) return null;
  return (
    <Lines heading={words.blocks}>
      {finding.blocks.map((block) => {
        const measurement = duties.measurements.get(block.measurementId ?? '');
        const who = book.people.get(measurement?.workerId ?? '')?.name;
        const about =
          measurement === undefined ? null : [who, formatDay(measurement.workOn)].filter(Boolean).join(', ');
        const mend = mendedAt(block, duties, shiftId);
        const detail = [about, mend?.text].filter((part) => part !== null && part !== undefined).join('. ');
        return (
          <Line
            key={`${block.key} ${block.measurementId} ${JSON.stringify(block.params)}`}
            to={mend?.to}
            detail={detail === '' ? undefined : detail}
          >
            {blockText(block.key, block.params)}
          </Line>
        );
      })}
    </Lines>
  );
}
