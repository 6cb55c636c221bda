/** Whose sample it was: worker, pump, and the number on the cassette. */
import { errorOf } from '#parts/ErrorSummary.tsx';
import { PersonFields } from '#parts/PersonFields.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { PumpLines } from '#parts/PumpLines.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en as gear } from '#words/gear.ts';
import { en as words } from '#words/keyIn.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import styles from './paperForm.module.css';

export function WorkerCassette({ draft, onChange, errors, registers }: LinesOfForm) {
  const pick = (workerId: string) =>
    onChange({ workerId, jobId: registers.people.byId.get(workerId)?.jobClassificationId ?? draft.jobId });
  return (
    <section className={styles.part}>
      <h2>{words.worker}</h2>
      <PickOrAdd
        name="worker"
        label={gear.person.pick}
        options={registers.people.list.map(({ id, name, employer }) => ({
          id,
          label: name,
          detail: employer ?? undefined,
        }))}
        value={draft.workerId}
        onChange={pick}
        addText={gear.person.add}
        error={errorOf(errors, 'worker')}
      >
        <PersonFields
          name="worker"
          value={draft.worker}
          onChange={(worker) => onChange({ worker, workerId: addingNew })}
          errors={errors}
        />
      </PickOrAdd>
      <PickOrAdd
        name="pump"
        label={gear.pump.pick}
        options={registers.pumps.list.map(({ id, serial }) => ({ id, label: serial }))}
        value={draft.pumpId}
        onChange={(pumpId) => onChange({ pumpId })}
        addText={gear.pump.add}
        error={errorOf(errors, 'pump')}
      >
        <PumpLines value={draft.pump} onChange={(pump) => onChange({ pump, pumpId: addingNew })} errors={errors} />
      </PickOrAdd>
      <TextField
        name="number"
        label={words.number}
        hint={words.numberHint}
        kind="digits"
        value={draft.number}
        onChange={(number) => onChange({ number })}
        error={errorOf(errors, 'number')}
      />
    </section>
  );
}
