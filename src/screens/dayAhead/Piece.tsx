/** One piece of the day: its tasks, and how many minutes of them. Once picked, the tasks stand in a line until they are changed. */
import { useState } from 'react';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { everydayTasks, taskById } from '#reference/tasks.ts';
import { en } from '#words/dayAhead.ts';
import { en as screen } from '#words/dayAheadScreen.ts';
import { tasksInWords } from '#words/groupInWords.ts';
import { formatList } from '#words/quantity.ts';
import styles from './dayAhead.module.css';
import { fieldOf, type PieceText } from './dayAheadDraft.ts';

const words = en.fields;

export interface PieceProps {
  readonly at: number;
  readonly piece: PieceText;
  readonly nearIds: readonly string[];
  readonly onChange: (part: Partial<PieceText>) => void;
  readonly onRemove: (() => void) | undefined;
  readonly errors: readonly FieldError[];
}

export const taskNames = (taskIds: readonly string[]): string =>
  formatList(tasksInWords(taskIds, (id) => taskById(id)?.en));

export function Piece({ at, piece, nearIds, onChange, onRemove, errors }: PieceProps) {
  const [picking, setPicking] = useState(piece.taskIds.length === 0);
  const tasksField = fieldOf('tasks', at);
  const minutesField = fieldOf('minutes', at);
  return (
    <section className={styles.piece}>
      <h2>{screen.piece(at + 1)}</h2>
      {picking || piece.taskIds.length === 0 ? (
        <TaskPicker
          name={tasksField}
          label={words.tasks}
          tasks={everydayTasks()}
          nearIds={nearIds}
          taskIds={piece.taskIds}
          find={piece.find}
          onChange={onChange}
          error={errorOf(errors, tasksField)}
        />
      ) : (
        <div>
          <p>{taskNames(piece.taskIds)}</p>
          <QuietAction onClick={() => setPicking(true)}>{screen.changeTasks}</QuietAction>
        </div>
      )}
      <QuantityField
        name={minutesField}
        label={screen.minutesOf(at + 1)}
        unit="min"
        kind="whole"
        value={piece.minutes}
        onChange={(minutes) => onChange({ minutes })}
        error={errorOf(errors, minutesField)}
      />
      {onRemove !== undefined && (
        <div>
          <QuietAction onClick={onRemove}>{words.remove}</QuietAction>
        </div>
      )}
    </section>
  );
}
