/** Everyday names of tasks, and the task of the rule's list that each stands for. */
import { z } from 'zod';
import everydayFile from '#shared/tasks/everyday.json';
import { period } from './dated.ts';
import { readOnce, source } from './source.ts';

/**
 * `listed`: the rule's list names it. `open`: whether it does depends on a question; `question` names it, the answers are everyday
 * tasks of their own, and until one is chosen the higher tier stands. `notListed`: the list does not name it.
 */
const everydayTask = z
  .strictObject({
    id: z.string().regex(/^[a-z][A-Za-z]+$/),
    en: z.string(),
    es: z.string(),
    trades: z.array(z.enum(['painter', 'windowRestorer', 'steelPainter'])).min(1),
    mapping: z.enum(['listed', 'open', 'notListed']),
    ruleTaskIds: z.array(z.string()).describe('Tasks of the rule that it may stand for; the highest tier stands'),
    question: z.string().nullable(),
    answerTaskIds: z.array(z.string()),
    hotWork: z.boolean(),
    source,
  })
  .refine((t) => (t.mapping === 'open') === (t.question !== null), 'open means a question')
  .refine((t) => (t.mapping === 'notListed') === (t.ruleTaskIds.length === 0), 'not listed means no task of the rule');
export type EverydayTask = z.infer<typeof everydayTask>;

export const everydayTasksFile = z.strictObject({ effective: period, tasks: z.array(everydayTask) });

const read = readOnce(everydayTasksFile, everydayFile);

export const everydayTasks = (): readonly EverydayTask[] => read().tasks;

export const taskById = (id: string): EverydayTask | undefined => read().tasks.find((task) => task.id === id);
