/** Task groups: one job classification at the same tasks, indoors or outdoors; what is least known stands first. */
import type { ResemblanceTerm } from '#findings/duties/groups/taskGroup.ts';
import { formatDay, formatList } from './quantity.ts';

const count = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const en = {
  heading: 'Task groups',
  intro:
    'Days of the same tasks, job classification and setting, from who worked where and from the samples. What is least known stands first: measure that next.',
  none: 'No work is written down yet. Say on a day’s page who works there and at what.',
  list: 'What to measure next, first',
  also: 'Also',
  toReported: 'Measurements reported to us',
  toReportedDetail: 'A consultant’s, last year’s, an inspector’s',
  toKeyIn: 'Key in a paper form',
  settings: { indoors: 'indoors', outdoors: 'outdoors' },
  name: (tasks: readonly string[], setting: string, job: string | null) =>
    [`${formatList(tasks)}, ${setting}`, job].filter((part) => part !== null).join(' · '),
  detail: (workers: number, days: number, lastOn: string | null) =>
    [
      count(workers, 'worker', 'workers'),
      count(days, 'day of work', 'days of work'),
      lastOn === null ? null : `last on ${formatDay(lastOn)}`,
    ]
      .filter((part) => part !== null)
      .join(', '),
  standing: {
    never: 'Never measured: what is presumed for the tasks stands.',
    open: (day: string) => `Measured on ${formatDay(day)}, but it proves nothing low yet: what is presumed stands.`,
    measured: (day: string, value: string) => `Measured on ${formatDay(day)}: ${value}.`,
  },
  gone: 'No work of this group is in the book on this device.',
  back: 'Task groups',
  workers: 'Workers',
  workerDays: (days: number, lastOn: string) => `${count(days, 'day', 'days')}, last on ${formatDay(lastOn)}`,
  employer: (name: string, employer: string | null) => (employer === null ? name : `${name} (${employer})`),
  terms: 'How the work is done, by the conditions of its last day',
  termsNone: 'The conditions of its last day are not written down.',
  presumed: 'What is presumed until measured',
  termNames: {
    processes: 'The work itself',
    material: 'The paint',
    controls: 'Dust collection, containment, air',
    practices: 'Wet or dry',
    environment: 'Weather and size',
  } satisfies Record<ResemblanceTerm, string>,
  measurements: 'Measurements, newest first',
  measurementsNone: 'No measurement of this group yet.',
  measurement: (worker: string, day: string, value: string) => `${worker}, ${formatDay(day)}: ${value}`,
  someone: 'A worker who is not in the book',
  valueUnknown: 'average not known yet',
  reported: 'reported to us, without flow readings of our own',
  standsFor: (names: readonly string[]) =>
    names.length === 0 ? 'Stands for nobody else' : `Stands for ${formatList(names)}`,
  standsToo: 'Say in writing whom else it stands for',
  stands: {
    heading: 'This measurement stands for these workers too',
    intro:
      'Those who did the same work at the same site on that day stand there already. Name others only where their exposure is the same and somebody can answer for it: they are told of the result, and what follows for the measured worker follows for them.',
    already: 'It stands already for',
    who: 'Also for',
    none: 'Tick at least one worker.',
    nobody: 'Everyone in the book stands there already.',
    save: 'Save it in writing',
    gone: 'This measurement is not in the book on this device.',
  },
};

export type GroupsWords = typeof en;
