/** The lines of one worker's work: tasks, job classification, and the respirator that was worn. */
import { RespiratorField } from '#parts/RespiratorField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import type { Book } from '#records/book.ts';
import { respirators } from '#reference/respirators.ts';
import { everydayTasks } from '#reference/tasks.ts';
import { en as words } from '#words/roster.ts';
import type { WorkText } from './work.ts';

export interface WorkLinesProps {
  /** Field names begin with it. */
  readonly name: string;
  readonly worker: string;
  readonly value: WorkText;
  readonly onChange: (work: WorkText) => void;
  readonly nearIds: readonly string[];
  readonly book: Book;
  readonly error: string | undefined;
}

const noJob = 'none';

export function WorkLines({ name, worker, value, onChange, nearIds, book, error }: WorkLinesProps) {
  const jobs = [...book.jobClassifications.values()].map(({ id, name: label }) => ({ value: id, label }));
  return (
    <>
      <TaskPicker
        name={name}
        label={words.tasksOf(worker)}
        tasks={everydayTasks()}
        nearIds={nearIds}
        taskIds={value.taskIds}
        find={value.find}
        onChange={(part) => onChange({ ...value, ...part })}
        error={error}
      />
      {jobs.length > 0 && (
        <SelectField
          name={`${name}-job`}
          label={words.job}
          options={[{ value: noJob, label: words.jobNone }, ...jobs]}
          value={value.jobId ?? noJob}
          onChange={(picked) => onChange({ ...value, jobId: picked === noJob ? null : picked })}
        />
      )}
      <RespiratorField
        name={`${name}-respirator`}
        respirators={respirators()}
        value={value.respirator}
        onChange={(respirator) => onChange({ ...value, respirator })}
      />
    </>
  );
}
