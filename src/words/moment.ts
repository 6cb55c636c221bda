/** A time typed afterwards, from a watch or from paper: a normal entry. */
import { formatDay } from './quantity.ts';

export const en = {
  other: 'At another time',
  nowAfterAll: 'Now after all',
  time: 'Time',
  day: 'Day',
  from: 'From what, and by whom',
  fromHint: 'Such as: my watch, Ana; paper form, R. Ortiz',
  fromWatch: (name: string | null) => (name === null ? 'From a watch' : `From a watch, ${name}`),
  twice: (time: string) => `The clocks go back that night: ${time} comes twice. Which one?`,
  first: 'The first time, before the clocks went back',
  second: 'The second time, after the clocks went back',
  doesNotExist: (time: string, jump: string) =>
    `There is no ${time} on that day: the clocks go forward, straight to ${jump}. Write the time that a clock showed.`,
  future: (time: string) => `${time} has not come yet. Write the time at which it happened.`,
  typedAt: (day: string, time: string) => `${time} on ${formatDay(day, 'en', 'short')}`,
};

export type MomentWords = typeof en;
