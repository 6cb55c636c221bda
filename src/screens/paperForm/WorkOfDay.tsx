/** Tasks, job classification and respirator; then how the day was. What the book holds of the day already is not asked again. */
import { Choice } from '#parts/Choice.tsx';
import { ConditionChoices } from '#parts/ConditionChoices.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { RespiratorField } from '#parts/RespiratorField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { TextField } from '#parts/TextField.tsx';
import { respirators } from '#reference/respirators.ts';
import { everydayTasks } from '#reference/tasks.ts';
import { en as conditions } from '#words/conditions.ts';
import { en as words } from '#words/keyIn.ts';
import { en as roster } from '#words/roster.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import styles from './paperForm.module.css';

const noJob = 'none';

export function WorkOfDay({ draft, onChange, errors, registers, held }: LinesOfForm) {
  const jobs = registers.jobClassifications.list.map(({ id, name }) => ({ value: id, label: name }));
  return (
    <section className={styles.part}>
      <h2>{words.work}</h2>
      <TaskPicker
        label={words.tasksLabel}
        tasks={everydayTasks()}
        nearIds={[]}
        taskIds={draft.taskIds}
        find={draft.find}
        onChange={onChange}
        error={errorOf(errors, 'find')}
      />
      {jobs.length > 0 && (
        <SelectField
          name="job"
          label={roster.job}
          options={[{ value: noJob, label: roster.jobNone }, ...jobs]}
          value={draft.jobId ?? noJob}
          onChange={(jobId) => onChange({ jobId: jobId === noJob ? null : jobId })}
        />
      )}
      {held.roster ? (
        <p>{words.rosterHeld}</p>
      ) : (
        <RespiratorField
          name="respirator"
          respirators={respirators()}
          value={draft.respirator}
          onChange={(respirator) => onChange({ respirator })}
        />
      )}
    </section>
  );
}

const answers = ['yes', 'no', 'notStated'] as const;

export function DayAsItWas({ draft, onChange, errors, held }: LinesOfForm) {
  return (
    <section className={styles.part}>
      <h2>{conditions.heading}</h2>
      {held.conditions ? (
        <p>{words.conditionsHeld}</p>
      ) : (
        <>
          <ConditionChoices
            chosen={draft.conditions}
            onChange={(chosen) => onChange({ conditions: chosen })}
            errors={errors}
          />
          <TextField
            name="remark"
            label={conditions.remark}
            rows={2}
            value={draft.conditionsRemark}
            onChange={(conditionsRemark) => onChange({ conditionsRemark })}
            error={errorOf(errors, 'remark')}
          />
        </>
      )}
      {held.regular ? (
        <p>{words.regularHeld}</p>
      ) : (
        <Choice
          name="regular"
          label={words.regular}
          options={answers.map((value) => ({ value, label: words.regularOptions[value] }))}
          value={draft.regular}
          onChange={(regular) => onChange({ regular })}
          error={errorOf(errors, 'regular')}
        />
      )}
      {!held.regular && draft.regular === 'no' && (
        <TextField
          name="regularReason"
          label={words.regularReason}
          value={draft.regularReason}
          onChange={(regularReason) => onChange({ regularReason })}
          error={errorOf(errors, 'regularReason')}
        />
      )}
    </section>
  );
}
