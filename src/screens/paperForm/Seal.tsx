/** The cassette sealed, labelled and locked in, as the paper tells it. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as words } from '#words/keyIn.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import { PaperTime } from './PaperTime.tsx';
import styles from './paperForm.module.css';

export function Seal({ draft, onChange, errors, place }: LinesOfForm) {
  return (
    <section className={styles.part}>
      <h2>{words.sealed}</h2>
      <PaperTime
        name="sealed"
        label={words.sealedAt}
        hint={words.sealedHint}
        value={draft.sealed}
        onChange={(sealed) => onChange({ sealed })}
        day={draft.day}
        place={place}
        errors={errors}
      />
      <Choice
        name="labelled"
        label={words.labelled}
        options={(['yes', 'no'] as const).map((value) => ({ value, label: words[value] }))}
        value={draft.labelled}
        onChange={(labelled) => onChange({ labelled })}
        error={errorOf(errors, 'labelled')}
      />
      <TextField
        name="lockedIn"
        label={words.lockedIn}
        hint={words.lockedInHint}
        value={draft.lockedIn}
        onChange={(lockedIn) => onChange({ lockedIn })}
        error={errorOf(errors, 'lockedIn')}
      />
    </section>
  );
}
