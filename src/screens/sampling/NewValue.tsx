/** The line of a form that takes the right value: a time, a number with its unit, a text, or a choice. */

import { Checklist } from '#parts/Checklist.tsx';
import { Choice } from '#parts/Choice.tsx';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { MomentFields } from '#parts/MomentFields.tsx';
import type { MomentDraft } from '#parts/parseMoment.ts';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { everydayTasks } from '#reference/tasks.ts';
import { en } from '#words/story.ts';
import type { Correctable } from './correctable.ts';
import type { Sampling } from './useSampling.ts';

const words = en.correcting;

export interface CorrectDraft {
  /** As typed or chosen; ids of tasks with a blank between them. */
  readonly text: string;
  readonly moment: MomentDraft;
  readonly why: string;
}

export const tasksIn = (text: string): readonly string[] => text.split(' ').filter((id) => id !== '');

export interface NewValueProps {
  readonly field: Correctable;
  readonly typed: CorrectDraft;
  readonly change: (part: Partial<CorrectDraft>) => void;
  readonly errors: readonly FieldError[];
  readonly sampling: Sampling;
}

export function NewValue({ field, typed, change, errors, sampling }: NewValueProps) {
  const shared = { name: 'new', label: words.new, error: errorOf(errors, 'new') };
  const text = { ...shared, value: typed.text, onChange: (value: string) => change({ text: value }) };
  const { book, place } = sampling;
  switch (field.kind) {
    case 'time':
      return (
        <MomentFields
          name="new"
          value={typed.moment}
          onChange={(moment) => change({ moment })}
          place={place}
          errors={errors}
          timeLabel={words.new}
          withoutFrom
        />
      );
    case 'minutes':
      return <QuantityField {...text} unit="min" kind="whole" />;
    case 'flow':
      return <QuantityField {...text} unit="L/min" />;
    case 'text':
      return <TextField {...text} />;
    case 'choice':
      return <Choice {...text} value={typed.text || null} options={field.choices ?? []} />;
    case 'tasks':
      return <TaskList {...shared} typed={typed} change={change} standing={field.value} />;
    case 'pump':
      return (
        <SelectField
          {...text}
          options={[...book.pumps.values()].map(({ id, serial }) => ({ value: id, label: serial }))}
        />
      );
    case 'lot':
      return (
        <SelectField
          {...text}
          options={[...book.lots.values()].map(({ id, lotNumber }) => ({ value: id, label: lotNumber }))}
        />
      );
    case 'worker':
    case 'person':
      return (
        <SelectField
          {...text}
          options={[...book.people.values()].map(({ id, name }) => ({ value: id, label: name }))}
        />
      );
  }
}

interface TaskListProps {
  readonly name: string;
  readonly label: string;
  readonly error: string | undefined;
  readonly typed: CorrectDraft;
  readonly change: (part: Partial<CorrectDraft>) => void;
  readonly standing: Correctable['value'];
}

/** What stands comes first, so that one tick away is seen at once. */
function TaskList({ typed, change, standing, ...shared }: TaskListProps) {
  const stands = Array.isArray(standing) ? (standing as readonly string[]) : [];
  const rank = (id: string): number => (stands.includes(id) ? 0 : 1);
  const known = everydayTasks().map(({ id, en: label }) => ({ value: id, label }));
  const others = stands
    .filter((id) => !known.some(({ value }) => value === id))
    .map((id) => ({ value: id, label: id }));
  const options = [...others, ...known].sort((a, b) => rank(a.value) - rank(b.value));
  return (
    <Checklist
      {...shared}
      options={options}
      value={tasksIn(typed.text)}
      onChange={(taskIds) => change({ text: taskIds.join(' ') })}
    />
  );
}
