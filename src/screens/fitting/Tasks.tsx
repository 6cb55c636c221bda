/** The worker's tasks of the day: those this crew does first, the rest by name; and what the rule's list leaves open. */

import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book } from '#records/book.ts';
import { type EverydayTask, everydayTasks, taskById } from '#reference/tasks.ts';
import { en as words } from '#words/fitting.ts';

export interface TasksProps {
  readonly book: Book;
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly onChange: (part: { readonly taskIds?: readonly string[]; readonly find?: string }) => void;
  readonly error: string | undefined;
}

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

function tasksShown(book: Book, taskIds: readonly string[], find: string): readonly EverydayTask[] {
  const typed = plain(find.trim());
  if (typed !== '')
    return everydayTasks().filter(
      (task) => plain(`${task.en} ${task.es}`).includes(typed) || taskIds.includes(task.id),
    );
  const used = new Set([...book.samples.values()].flatMap((sample) => sample.taskIds));
  if (used.size === 0) return everydayTasks();
  return everydayTasks().filter(({ id }) => used.has(id) || taskIds.includes(id));
}

export function Tasks({ book, taskIds, find, onChange, error }: TasksProps) {
  const shown = tasksShown(book, taskIds, find);
  return (
    <>
      <TextField
        name="find"
        label={words.findTask}
        hint={words.findTaskHint}
        value={find}
        onChange={(text) => onChange({ find: text })}
        error={error}
      />
      {shown.length === 0 ? (
        <p role="status">{words.noSuchTask}</p>
      ) : (
        <Checklist
          name="tasks"
          label={words.tasks}
          hint={words.tasksHint}
          options={shown.map(({ id, en }) => ({ value: id, label: en }))}
          value={[...taskIds]}
          onChange={(picked) => {
            const hidden = taskIds.filter((id) => !shown.some((task) => task.id === id));
            onChange({ taskIds: [...hidden, ...picked] });
          }}
        />
      )}
      {taskIds.map((taskId) => (
        <OpenQuestion
          key={taskId}
          taskId={taskId}
          onAnswer={(answer) => onChange({ taskIds: swapped(taskIds, taskId, answer) })}
        />
      ))}
    </>
  );
}

const swapped = (taskIds: readonly string[], from: string, to: string): readonly string[] => [
  ...new Set(taskIds.map((id) => (id === from ? to : id))),
];

/** Where the rule's list does not settle what an everyday name means, the answer is a task of its own. */
function OpenQuestion({ taskId, onAnswer }: { readonly taskId: string; readonly onAnswer: (taskId: string) => void }) {
  const task = taskById(taskId);
  if (task?.mapping !== 'open' || task.question === null) return null;
  return (
    <Choice
      name={`question-${taskId}`}
      label={`${task.en}: ${words.questions[task.question] ?? ''}`}
      hint={words.questionStands}
      options={[
        ...task.answerTaskIds.map((id) => ({ value: id, label: taskById(id)?.en ?? id })),
        { value: taskId, label: words.questionOpen },
      ]}
      value={taskId}
      onChange={onAnswer}
    />
  );
}
