/** A text for whoever looks into a problem: made as the page opens, read first if wanted, saved by the user and by nobody else. */
import { useEffect, useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { foldEdition } from '#records/edition.ts';
import { formatVersion } from '#records/fileFormat.ts';
import { editions } from '#reference/editions.ts';
import { deviceZone, now } from '#store/device.ts';
import { type Delivery, deliver } from '#store/handOver/delivery.ts';
import { useUpdates } from '#store/hooks/useUpdates.ts';
import { problemReport } from '#store/problemReport.ts';
import { en as handOverWords } from '#words/handOver.ts';
import { en } from '#words/storage.ts';
import styles from './keep.module.css';

const words = en.report;
const outcomeText = (outcome: Delivery): string =>
  outcome.kind === 'failed' ? handOverWords.outcome[outcome.why] : handOverWords.outcome[outcome.kind];

/** undefined: being made; null: could not be made. */
function useReport(): string | null | undefined {
  const { waiting, changedElsewhere } = useUpdates();
  const [text, setText] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    let here = true;
    const { rules, formulas } = editions();
    problemReport({
      editions: { 'file format': String(formatVersion), fold: String(foldEdition), rules, formulas },
      update: changedElsewhere ? 'changed in another window' : waiting ? 'waits' : 'none waits',
    })
      .then((made) => here && setText(made))
      .catch(() => here && setText(null));
    return () => {
      here = false;
    };
  }, [waiting, changedElsewhere]);
  return text;
}

export function Report() {
  const text = useReport();
  const [outcome, setOutcome] = useState<Delivery | null>(null);
  const save = async () => {
    if (typeof text !== 'string') return;
    const name = words.file(dayOf(now(), deviceZone()));
    setOutcome(await deliver(new Blob([text], { type: 'text/plain' }), name));
  };
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <p>{words.text}</p>
      {text === null && <Notice kind="alert">{words.failed}</Notice>}
      {text === undefined && <p role="status">{words.making}</p>}
      {typeof text === 'string' && (
        <details>
          <summary className={styles.summary}>{words.show}</summary>
          <pre className={styles.report}>{text}</pre>
        </details>
      )}
      <div>
        <QuietAction busy={typeof text !== 'string'} onClick={() => void save()}>
          {words.save}
        </QuietAction>
      </div>
      {outcome && <Notice kind={outcome.kind === 'failed' ? 'alert' : 'quiet'}>{outcomeText(outcome)}</Notice>}
    </section>
  );
}
