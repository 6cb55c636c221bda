/** The worker's tasks of the day: those this crew does first, the rest by name; and what the rule's list leaves open. */
import { TaskPicker, type TaskPickerProps } from '#parts/TaskPicker.tsx';
import type { Book } from '#records/book.ts';
import { everydayTasks } from '#reference/tasks.ts';

export interface TasksProps extends Pick<TaskPickerProps, 'taskIds' | 'find' | 'onChange' | 'error'> {
  readonly book: Book;
}

export function Tasks({ book, ...picking }: TasksProps) {
  const used = [...book.samples.values()].flatMap(({ taskIds }) => taskIds);
  return <TaskPicker {...picking} tasks={everydayTasks()} nearIds={used} />;
}
