/** Every revision of the custody sheet of a box, newest first; the bytes of each are kept. */
import { wallTimeOf } from '#core/calendar.ts';
import { actEditionOf, editionDifference } from '#findings/duties/limits/editionDifference.ts';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { BoxRecord } from '#records/book.ts';
import type { Delivery } from '#store/handOver/delivery.ts';
import { type KeptFile, useKeptFile } from '#store/hooks/useKeptFile.ts';
import { en } from '#words/box.ts';
import { editionText } from '#words/limitsBeside.ts';
import styles from './box.module.css';
import { whenOf } from './when.ts';

export type Issue = BoxRecord['issues'][number];

const words = en.box;
const outcomeText = (outcome: Delivery): string =>
  outcome.kind === 'failed' ? words.outcome[outcome.why] : words.outcome[outcome.kind];

export const fileNameOf = ({ at, revision }: Issue, zone: string): string =>
  words.fileName(wallTimeOf(at, zone).day, revision);

export function Outcome({ file }: { readonly file: KeptFile }) {
  if (file.outcome === null) return null;
  return <Notice kind={file.outcome.kind === 'failed' ? 'alert' : 'quiet'}>{outcomeText(file.outcome)}</Notice>;
}

interface BoxSheetsProps {
  readonly issues: readonly Issue[];
  readonly zone: string;
}

/** The newest one is handed out by the main action of the page; earlier ones from here. */
export function BoxSheets({ issues, zone }: BoxSheetsProps) {
  if (issues.length === 0) return <p>{words.noSheet}</p>;
  return (
    <section className={styles.section}>
      <h2>{words.sheets}</h2>
      <ul className={styles.issues}>
        {issues.toReversed().map((issue, at) => (
          <li key={issue.factId} className={styles.issue}>
            <p>{words.issue(issue.revision, words.papers[issue.paper], whenOf(issue.at, zone))}</p>
            {issue.why && <p className={styles.quiet}>{words.issueWhy(issue.why)}</p>}
            <Edition issue={issue} />
            {at > 0 && <Earlier issue={issue} zone={zone} />}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A later edition of the rules shows here and rewrites nothing. */
function Edition({ issue }: { readonly issue: Issue }) {
  const differs = editionText(editionDifference(actEditionOf(issue.editions)));
  return differs === null ? null : <p className={styles.quiet}>{differs}</p>;
}

function Earlier({ issue, zone }: { readonly issue: Issue; readonly zone: string }) {
  const file = useKeptFile(issue.pdfHash);
  if (file.state === 'missing') return <p className={styles.quiet}>{words.notHere}</p>;
  return (
    <>
      <div>
        <QuietAction busy={file.state === 'loading'} onClick={() => void file.handOut(fileNameOf(issue, zone))}>
          {words.handOut(issue.revision)}
        </QuietAction>
      </div>
      <Outcome file={file} />
    </>
  );
}
