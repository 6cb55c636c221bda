/** Whose air it was, where, and at which tasks. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { everydayTasks } from '#reference/tasks.ts';
import { en as words } from '#words/reported.ts';
import type { LinesOfReport } from './ReportedForm.tsx';
import { unnamed } from './reportedDraft.ts';

const settings = ['indoors', 'outdoors'] as const;

const named = (rows: Iterable<{ readonly id: string; readonly name: string }>) =>
  [...rows]
    .map(({ id, name }) => ({ value: id, label: name }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en', { numeric: true }));

export function WorkLines({ draft, onChange, errors, book }: LinesOfReport) {
  const { fields } = words;
  const near = [...book.samples.values()].flatMap(({ taskIds }) => taskIds);
  return (
    <>
      <SelectField
        name="worker"
        label={fields.worker}
        options={[...named(book.people.values()), { value: unnamed, label: words.notInBook }]}
        value={draft.workerId}
        onChange={(workerId) =>
          onChange({ workerId, jobId: book.people.get(workerId)?.jobClassificationId ?? draft.jobId })
        }
        error={errorOf(errors, 'worker')}
      />
      <SelectField
        name="site"
        label={fields.site}
        options={[...named(book.sites.values()), { value: unnamed, label: fields.siteOther }]}
        value={draft.siteId}
        onChange={(siteId) => onChange({ siteId, setting: book.sites.get(siteId)?.setting ?? draft.setting })}
        error={errorOf(errors, 'site')}
      />
      <Choice
        name="setting"
        label={fields.setting}
        options={settings.map((value) => ({ value, label: words.settings[value] }))}
        value={draft.setting}
        onChange={(setting) => onChange({ setting })}
        error={errorOf(errors, 'setting')}
      />
      <TaskPicker
        label={fields.tasks}
        hint={fields.tasksHint}
        tasks={everydayTasks()}
        nearIds={[...new Set(near)]}
        taskIds={draft.taskIds}
        find={draft.find}
        onChange={onChange}
        error={errorOf(errors, 'find')}
      />
      <SelectField
        name="job"
        label={fields.job}
        options={[{ value: unnamed, label: fields.jobNone }, ...named(book.jobClassifications.values())]}
        value={draft.jobId}
        onChange={(jobId) => onChange({ jobId })}
      />
    </>
  );
}
