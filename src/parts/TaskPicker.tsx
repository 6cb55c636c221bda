/** Which of the everyday tasks were done: those that are near first, the rest by name; and what the rule's list leaves open. */

import { useState } from 'react';
import { en as words } from '#words/fitting.ts';
import { Checklist } from './Checklist.tsx';
import { Choice } from './Choice.tsx';
import { QuietAction } from './QuietAction.tsx';
import { TextField } from './TextField.tsx';

/** An everyday task as it is picked. */
export interface PickableTask {
  readonly id: string;
  readonly en: string;
  readonly es: string;
  /** A question that the rule's list leaves open, and the tasks that answer it; null where there is none. */
  readonly question: string | null;
  readonly answerTaskIds: readonly string[];
}

export interface TaskPickerProps {
  /** Every task there is, the commonest first. */
  readonly tasks: readonly PickableTask[];
  /** Shown without asking: what this crew does. */
  readonly nearIds: readonly string[];
  readonly taskIds: readonly string[];
  readonly find: string;
  readonly onChange: (part: { readonly taskIds?: readonly string[]; readonly find?: string }) => void;
  readonly error: string | undefined;
  /** Name of the field to find one by; the rows are `<name>-tasks`. 'find' where nothing is said. */
  readonly name?: string | undefined;
  readonly label?: string | undefined;
  readonly hint?: string | undefined;
}

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** Of a crew that has done nothing yet: the commonest of the list, which stand first in it. */
const shownFirst = 6;

function tasksShown({ tasks, nearIds, taskIds, find }: TaskPickerProps, all: boolean): readonly PickableTask[] {
  const typed = plain(find.trim());
  if (typed !== '')
    return tasks.filter((task) => plain(`${task.en} ${task.es}`).includes(typed) || taskIds.includes(task.id));
  if (all) return tasks;
  const first = nearIds.length === 0 ? tasks.slice(0, shownFirst).map(({ id }) => id) : [];
  const near = new Set([...nearIds, ...taskIds, ...first]);
  return tasks.filter(({ id }) => near.has(id));
}

export function TaskPicker(props: TaskPickerProps) {
  const { tasks, taskIds, find, onChange, error, name = 'find', label = words.tasks, hint = words.tasksHint } = props;
  const [all, setAll] = useState(false);
  const shown = tasksShown(props, all);
  return (
    <>
      <TextField
        name={name}
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
          name={name === 'find' ? 'tasks' : `${name}-tasks`}
          label={label}
          hint={hint}
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
          <QuietAction onClick={() => setAll(true)}>{words.showAll(tasks.length)}</QuietAction>
        </div>
      )}
      {taskIds.map((taskId) => (
        <OpenQuestion
          key={taskId}
          tasks={tasks}
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

interface OpenQuestionProps {
  readonly tasks: readonly PickableTask[];
  readonly taskId: string;
  readonly onAnswer: (taskId: string) => void;
}

/** Where the rule's list does not settle what an everyday name means, the answer is a task of its own. */
function OpenQuestion({ tasks, taskId, onAnswer }: OpenQuestionProps) {
  const named = (id: string) => tasks.find((task) => task.id === id);
  const task = named(taskId);
  if (task === undefined || task.question === null) return null;
  return (
    <Choice
      name={`question-${taskId}`}
      label={`${task.en}: ${words.questions[task.question] ?? ''}`}
      hint={words.questionStands}
      options={[
        ...task.answerTaskIds.map((id) => ({ value: id, label: named(id)?.en ?? id })),
        { value: taskId, label: words.questionOpen },
      ]}
      value={taskId}
      onChange={onAnswer}
    />
  );
}
