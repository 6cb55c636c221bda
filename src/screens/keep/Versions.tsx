/** Which versions stand on this device, and whether a newer one waits. While a pump runs it is told and not offered. */
import { Particulars } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { foldEdition } from '#records/edition.ts';
import { formatVersion } from '#records/fileFormat.ts';
import { editions } from '#reference/editions.ts';
import { changeNow, type Updates } from '#store/appUpdates.ts';
import { useUpdates } from '#store/hooks/useUpdates.ts';
import { appVersion } from '#store/version.ts';
import { en } from '#words/storage.ts';
import styles from './keep.module.css';

const words = en.versions;

export type UpdateStands = keyof typeof words.updates;
export function updateStands({ waiting, changedElsewhere }: Updates, running: number | null): UpdateStands {
  if (changedElsewhere) return 'elsewhere';
  if (!waiting) return 'none';
  return running === 0 ? 'waiting' : 'whileRunning';
}

export function Versions({ running }: { readonly running: number | null }) {
  const { rules, formulas } = editions();
  const stands = updateStands(useUpdates(), running);
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <Particulars
        items={[
          [words.app, appVersion],
          [words.file, String(formatVersion)],
          [words.lists, String(foldEdition)],
          [words.rules, rules],
          [words.formulas, formulas],
          [words.update, words.updates[stands]],
        ]}
      />
      {(stands === 'waiting' || stands === 'elsewhere') && (
        <div>
          <QuietAction onClick={() => void changeNow()}>
            {stands === 'waiting' ? words.change : words.again}
          </QuietAction>
        </div>
      )}
    </section>
  );
}
