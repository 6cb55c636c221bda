/** What was compared for this job already, with what it amounts to as the book stands now. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/reliance.ts';
import { blockSentences } from './blockSentences.ts';
import { comparedFor, workerOf } from './earlier.ts';

interface ComparedProps {
  readonly shiftId: string;
  readonly found: DutiesOfBook;
  readonly book: Book;
}

export function Compared({ shiftId, found, book }: ComparedProps) {
  const compared = comparedFor(shiftId, found, book);
  if (compared.length === 0) return null;
  return (
    <Lines heading={words.saved}>
      {compared.map(({ reliance, finding }) => {
        const measurement = found.measurements.get(reliance.measurementId);
        return (
          <Line
            key={reliance.id}
            to={`/story/${encodeURIComponent(reliance.key)}`}
            detail={finding.valid ? undefined : blockSentences(finding.blocks).join(' ')}
          >
            {words.savedLine(
              measurement === undefined ? words.someone : workerOf(measurement, book),
              measurement?.workOn ?? finding.reliedOn,
              finding.valid,
            )}
          </Line>
        );
      })}
    </Lines>
  );
}
