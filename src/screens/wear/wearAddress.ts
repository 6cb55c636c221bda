/** What was answered stands in the address: it outlives a reload without any book, and can be sent to somebody else. */
import { taskById } from '#reference/tasks.ts';

export interface WearAnswers {
  readonly stateCode: string;
  readonly taskIds: readonly string[];
  readonly paint: 'notKnown' | 'tested';
  readonly shiftHours: number;
}

/** Lengths that are offered; 8 stands for 8 or less. */
export const shiftLengths = [8, 9, 10, 11, 12, 14, 16] as const;

export function answersIn(search: string): WearAnswers {
  const at = new URLSearchParams(search);
  const typed = Number(at.get('shift'));
  return {
    stateCode: at.get('state') ?? '',
    taskIds: (at.get('tasks') ?? '').split(',').filter((id) => taskById(id) !== undefined),
    paint: at.get('paint') === 'tested' ? 'tested' : 'notKnown',
    shiftHours: shiftLengths.find((length) => length === typed) ?? shiftLengths[0],
  };
}

export const isShown = (search: string): boolean => new URLSearchParams(search).get('show') === '1';

/** The page with these answers; `show` is the page that answers them. */
export function wearPath({ stateCode, taskIds, paint, shiftHours }: WearAnswers, show: boolean): string {
  const at = new URLSearchParams({
    ...(stateCode === '' ? {} : { state: stateCode }),
    ...(taskIds.length === 0 ? {} : { tasks: taskIds.join(',') }),
    ...(paint === 'tested' ? { paint } : {}),
    ...(shiftHours === shiftLengths[0] ? {} : { shift: String(shiftHours) }),
    ...(show ? { show: '1' } : {}),
  });
  return `/wear?${at}`;
}
