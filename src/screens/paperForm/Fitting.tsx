/** The fitting as ticked on the paper: who fitted the pump, the points, the worker's initials. */

import { pointsFor } from '#findings/fittingPoints.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as words } from '#words/keyIn.ts';
import { en as worker } from '#words/worker.ts';
import type { FittingText } from './keyInDraft.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import styles from './paperForm.module.css';

const modes = ['fitted', 'declined', 'fittedBySelf'] as const;

export function Fitting({ draft, onChange, errors }: LinesOfForm) {
  const { fitting } = draft;
  const change = (part: Partial<FittingText>) => onChange({ fitting: { ...fitting, ...part } });
  const isStated = fitting.mode !== null && fitting.mode !== 'notStated';
  return (
    <section className={styles.part}>
      <h2>{words.fitting}</h2>
      <Choice
        name="fitting-mode"
        label={words.fittedBy}
        options={[
          ...modes.map((value) => ({ value, label: worker.modes[value] })),
          { value: 'notStated' as const, label: words.fittingNotStated },
        ]}
        value={fitting.mode}
        onChange={(mode) => change({ mode })}
      />
      {isStated && (
        <>
          <Checklist
            name="fitting-points"
            label={words.fittingPoints}
            options={[
              ...pointsFor(draft.taskIds).map((key) => ({ value: key as string, label: worker.points[key] })),
              { value: 'offered', label: words.watchOffered },
            ]}
            value={fitting.ticked}
            onChange={(ticked) => change({ ticked })}
          />
          <TextField
            name="initials"
            label={worker.initials}
            value={fitting.initials}
            onChange={(initials) => change({ initials })}
            error={errorOf(errors, 'initials')}
          />
        </>
      )}
    </section>
  );
}
