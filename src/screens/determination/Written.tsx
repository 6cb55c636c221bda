/** Determinations written of these tasks here, newest first, each with its bytes as they were handed out. */
import { actEditionOf, editionDifference } from '#findings/duties/limits/editionDifference.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import type { Book, DeterminationRecord } from '#records/book.ts';
import { useKeptFile } from '#store/hooks/useKeptFile.ts';
import { en as words } from '#words/determinationScreen.ts';
import { restsLines } from '#words/gearLines.ts';
import { editionText } from '#words/limitsBeside.ts';
import { formatDay } from '#words/quantity.ts';
import styles from './determination.module.css';
import type { DeterminationHere } from './determinationHere.ts';

export function Written({ here: { written, book } }: { readonly here: DeterminationHere }) {
  if (written.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{words.writtenHeading}</h2>
      {written.map((one) => (
        <One key={one.id} record={one} book={book} />
      ))}
      <p className={styles.quiet}>{words.keepWith}</p>
    </section>
  );
}

interface OneProps {
  readonly record: DeterminationRecord;
  readonly book: Book;
}

function One({ record: { written, id }, book }: OneProps) {
  const file = useKeptFile(written.pdfHash);
  const differs = editionText(editionDifference(actEditionOf(written.editions, written.determination)));
  return (
    <div className={styles.written} data-determination={id}>
      <p>{words.written(written.outcome, formatDay(written.determinedOn))}</p>
      {differs !== null && <p className={styles.quiet}>{differs}</p>}
      <RestsOn lines={restsLines(gearDoubtsOfPaper({ kind: 'determination', id }, book))} paper />
      <HandedOut state={file.state} outcome={file.outcome} />
      {file.state !== 'missing' && (
        <div>
          <QuietAction
            busy={file.state === 'loading'}
            onClick={() => void file.handOut(words.fileName(written.outcome, written.determinedOn))}
          >
            {words.handOut}
          </QuietAction>
        </div>
      )}
    </div>
  );
}
