/** The worker's tasks of the day: those this crew does first, the rest by name; and what the rule's list leaves open. */

import { useState } from 'react';
import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
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

/** Of a crew that has done nothing yet: the commonest of the list, which stand first in it. */
const shownFirst = 6;

function tasksShown(book: Book, taskIds: readonly string[], find: string, all: boolean): readonly EverydayTask[] {
  const typed = plain(find.trim());
  if (typed !== '')
    return everydayTasks().filter(
      (task) => plain(`${task.en} ${task.es}`).includes(typed) || taskIds.includes(task.id),
    );
  if (all) return everydayTasks();
  const used = [...book.samples.values()].flatMap((sample) => sample.taskIds);
  const first = everydayTasks().slice(0, shownFirst);
  const near = new Set([...used, ...taskIds, ...(used.length === 0 ? first.map(({ id }) => id) : [])]);
  return everydayTasks().filter(({ id }) => near.has(id));
}

export function Tasks({ book, taskIds, find, onChange, error }: TasksProps) {
  const [all, setAll] = useState(false);
  const shown = tasksShown(book, taskIds, find, all);
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
      {!all && find.trim() === '' && (
        <div>
          <QuietAction onClick={() => setAll(true)}>{words.showAll(everydayTasks().length)}</QuietAction>
        </div>
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
