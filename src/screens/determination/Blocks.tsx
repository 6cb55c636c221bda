/** Everything that stands against a negative determination, each with the page on which it is mended. */
import { Line, Lines } from '#parts/Lines.tsx';
import { blockText, en as words } from '#words/determinationScreen.ts';
import { formatDay } from '#words/quantity.ts';
import type { DeterminationHere } from './determinationHere.ts';
import { mendedAt } from './mendedAt.ts';

interface BlockLine {
  readonly text: string;
  readonly to: string | undefined;
  readonly detail: string;
}

/** Two reasons that read alike and are mended alike are one line. */
function linesOf({ finding, duties, book, shiftId }: DeterminationHere): readonly (readonly [string, BlockLine])[] {
  const lines = finding.blocks.map((block): BlockLine => {
    const measurement = duties.measurements.get(block.measurementId ?? '');
    const who = book.people.get(measurement?.workerId ?? '')?.name;
    const about = measurement === undefined ? null : [who, formatDay(measurement.workOn)].filter(Boolean).join(', ');
    const mend = mendedAt(block, duties, shiftId);
    const detail = [about, mend?.text].filter((part) => part !== null && part !== undefined).join('. ');
    return { text: blockText(block.key, block.params), to: mend?.to, detail };
  });
  return [...new Map(lines.map((line) => [JSON.stringify(line), line]))];
}

export function Blocks({ here }: { readonly here: DeterminationHere }) {
  if (here.finding.blocks.length === 0) return null;
  return (
    <Lines heading={words.blocks}>
      {linesOf(here).map(([key, { text, to, detail }]) => (
        <Line key={key} to={to} detail={detail === '' ? undefined : detail}>
          {text}
        </Line>
      ))}
    </Lines>
  );
}
