/** Which work is to be measured: of a group as it stands, or tasks, setting and job classification chosen here; and what is presumed of it. */
import { useState } from 'react';
import { namesIn } from '#findings/naming.ts';
import { findPresumption } from '#findings/presumption.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { TextField } from '#parts/TextField.tsx';
import { everydayTasks } from '#reference/tasks.ts';
import { en as fitting } from '#words/fitting.ts';
import { groupInWords } from '#words/groupInWords.ts';
import { en } from '#words/planScreen.ts';
import type { PlanFields } from './fields.ts';
import styles from './plan.module.css';

const words = en.work;
const anySite = '-';

export function WorkOfPlan(props: PlanFields & { readonly isOfGroup: boolean }) {
  const { book, draft, onChange, isOfGroup } = props;
  const [changing, setChanging] = useState(!isOfGroup);
  const { taskIds, setting, jobId } = draft;
  return (
    <section className={styles.part}>
      <h2>{words.heading}</h2>
      {changing || setting === null ? (
        <WorkFields {...props} />
      ) : (
        <>
          <p className={styles.strong}>
            {groupInWords({ taskIds, setting, jobClassificationId: jobId }, namesIn(book))}
          </p>
          <div>
            <QuietAction onClick={() => setChanging(true)}>{words.change}</QuietAction>
          </div>
        </>
      )}
      {taskIds.length > 0 && <PresumedOf taskIds={taskIds} />}
      <SelectField
        name="site"
        label={words.site}
        options={[
          { value: anySite, label: words.anySite },
          ...[...book.sites.values()].map(({ id, name }) => ({ value: id, label: name })),
        ]}
        value={draft.siteId ?? anySite}
        onChange={(id) => onChange({ siteId: id === anySite ? null : id })}
      />
    </section>
  );
}

function WorkFields({ book, draft, onChange, errors }: PlanFields) {
  return (
    <>
      <TaskPicker
        tasks={everydayTasks()}
        nearIds={[...book.samples.values()].flatMap(({ taskIds }) => taskIds)}
        taskIds={draft.taskIds}
        find={draft.find}
        onChange={onChange}
        error={errorOf(errors, 'find')}
        label={words.tasks}
        hint={words.tasksHint}
      />
      <Choice
        name="setting"
        label={words.setting}
        options={(['indoors', 'outdoors'] as const).map((value) => ({ value, label: words.settings[value] }))}
        value={draft.setting}
        onChange={(setting) => onChange({ setting })}
        error={errorOf(errors, 'setting')}
      />
      <PickOrAdd
        name="job"
        label={words.job}
        options={[...book.jobClassifications.values()].map(({ id, name }) => ({ id, label: name }))}
        value={draft.jobId}
        onChange={(jobId) => onChange({ jobId })}
        addText={words.addJob}
      >
        <TextField
          name="job-name"
          label={words.jobName}
          hint={words.jobNameHint}
          value={draft.jobName}
          onChange={(jobName) => onChange({ jobName, jobId: addingNew })}
          error={errorOf(errors, 'job-name')}
        />
      </PickOrAdd>
    </>
  );
}

const level = (of: { readonly value: number; readonly unit: string } | null): string =>
  of === null ? '' : `${of.value}\u00a0${of.unit}`;

function PresumedOf({ taskIds }: { readonly taskIds: readonly string[] }) {
  const { presumedTextKey, presumedAbove, presumedUpTo } = findPresumption(taskIds);
  return <p>{fitting.presumed[presumedTextKey](level(presumedAbove), level(presumedUpTo))}</p>;
}
