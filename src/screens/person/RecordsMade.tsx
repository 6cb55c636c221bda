/** Exposure records of the day that were handed out, newest first, with their bytes. */
import { wallTimeOf } from '#core/calendar.ts';
import { actEditionOf, editionDifference } from '#findings/duties/limits/editionDifference.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { useKeptFile } from '#store/hooks/useKeptFile.ts';
import { editionText } from '#words/limitsBeside.ts';
import { en } from '#words/person.ts';
import { formatDay } from '#words/quantity.ts';
import styles from './person.module.css';
import type { RecordHere } from './recordHere.ts';

const words = en.record;

export function RecordsMade({ here: { issued, zone } }: { readonly here: RecordHere }) {
  if (issued.length === 0) return null;
  return (
    <section className={styles.section}>
      <h2>{words.madeHeading}</h2>
      {issued.toReversed().map((one) => (
        <One key={one.factId} issued={one} zone={zone} />
      ))}
    </section>
  );
}

function One({ issued, zone }: { readonly issued: RecordHere['issued'][number]; readonly zone: string }) {
  const file = useKeptFile(issued.pdfHash);
  const differs = editionText(editionDifference(actEditionOf(issued.editions)));
  const { day, time } = wallTimeOf(issued.at, zone);
  return (
    <div className={styles.made}>
      <p>{words.made(issued.revision, issued.to, `${formatDay(day)}, ${time}`)}</p>
      {differs !== null && <p className={styles.quiet}>{differs}</p>}
      <HandedOut state={file.state} outcome={file.outcome} />
      {file.state !== 'missing' && (
        <div>
          <QuietAction
            busy={file.state === 'loading'}
            onClick={() => void file.handOut(words.fileName(day, issued.revision))}
          >
            {words.handOut}
          </QuietAction>
        </div>
      )}
    </div>
  );
}
