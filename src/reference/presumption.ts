/** What the rule presumes of a task until it is assessed, and what the crew wears meanwhile: 29 CFR 1926.62(d)(2). */
import { z } from 'zod';
import tiersFile from '#shared/tasks/presumedTiers.json';
import { period } from './dated.ts';
import { quantity, type ReadSource, readOnce, source } from './source.ts';
import { taskById } from './tasks.ts';

export const tierNames = ['none', '1', '1b', '2', '3'] as const;
/** Our names, from least to most. `none`: not on the rule's list. `1b`: the firm has reason to believe it is above the PEL. */
export type Tier = (typeof tierNames)[number];

const interimProtection = z.strictObject({
  key: z.enum(['respirator', 'protectiveClothing', 'changeArea', 'handWashing', 'bloodTests', 'training']),
  paragraph: z.string(),
  source,
});
export type InterimProtection = z.infer<typeof interimProtection>;

const tier = z.strictObject({
  tier: z.enum(tierNames),
  paragraph: z.string().nullable(),
  presumedTextKey: z.enum(['notListed', 'pelToTenPel', 'abovePel', 'aboveTenPel', 'aboveFiftyPel']),
  presumedAbove: quantity('µg/m³').nullable(),
  presumedUpTo: quantity('µg/m³').nullable(),
  leastApf: quantity('').nullable(),
  source,
});
export type PresumedTier = z.infer<typeof tier>;

export const presumedTiersFile = z.strictObject({
  effective: period,
  interimProtections: z.array(interimProtection),
  sign: z.strictObject({ paragraph: z.string(), source }),
  tiers: z.array(tier),
  ruleTasks: z.array(z.strictObject({ id: z.string(), tier: z.enum(tierNames), text: z.string(), source })),
});

const read = readOnce(presumedTiersFile, tiersFile);

export const presumedTiers = (): readonly PresumedTier[] => read().tiers;
/** The sign where exposure is above the PEL, and so where it is presumed above. */
export const presumptionSign = (): z.infer<typeof presumedTiersFile>['sign'] => read().sign;
export const ruleTasks = (): z.infer<typeof presumedTiersFile>['ruleTasks'] => read().ruleTasks;

export interface Presumption {
  readonly tier: Tier;
  /** Key of the sentence that says what is presumed. */
  readonly presumedTextKey: PresumedTier['presumedTextKey'];
  readonly presumedAbove: PresumedTier['presumedAbove'];
  readonly presumedUpTo: PresumedTier['presumedUpTo'];
  /** Least assigned protection factor; DERIVED from the presumed level and 1910.134 Table 1. null: nothing presumed. */
  readonly leastApf: PresumedTier['leastApf'];
  readonly interimProtections: readonly InterimProtection[];
  /** `open`: the tier stands on a mapping that a question would settle; the higher tier stands until it is answered. */
  readonly mapping: 'listed' | 'open' | 'notListed';
  /** The everyday tasks that put the day in this tier, and unknown ids. */
  readonly becauseTaskIds: readonly string[];
  /** Questions that are open for any of the tasks. */
  readonly questions: readonly {
    readonly taskId: string;
    readonly question: string;
    readonly answerTaskIds: readonly string[];
  }[];
  readonly sources: readonly ReadSource[];
}

const rank = (name: Tier): number => tierNames.indexOf(name);
/** A task nobody has mapped gets the most careful reading. */
const unknownTier: Tier = '3';

function tierOfTask(taskId: string): Tier {
  const task = taskById(taskId);
  if (!task) return unknownTier;
  const tiers = task.ruleTaskIds.map((id) => {
    const ruleTask = read().ruleTasks.find((one) => one.id === id);
    if (!ruleTask) throw new Error(`no task of the rule named ${id}`);
    return ruleTask.tier;
  });
  return tiers.reduce<Tier>((highest, one) => (rank(one) > rank(highest) ? one : highest), 'none');
}

/** What is presumed for a day with these everyday tasks: the highest tier among them. No task named is read most carefully. */
export function presumptionFor(taskIds: readonly string[]): Presumption {
  const tiers = taskIds.map((taskId) => ({ taskId, tier: tierOfTask(taskId), task: taskById(taskId) }));
  const highest = tiers.reduce<Tier>(
    (top, one) => (rank(one.tier) > rank(top) ? one.tier : top),
    taskIds.length ? 'none' : unknownTier,
  );
  const deciding = tiers.filter((one) => one.tier === highest);
  const row = read().tiers.find((one) => one.tier === highest);
  if (!row) throw new Error(`no presumed tier ${highest}`);
  const listed = deciding.some(({ task }) => task?.mapping === 'listed');
  const open = taskIds.length === 0 || deciding.some(({ task }) => !task || task.mapping === 'open');
  return {
    tier: highest,
    presumedTextKey: row.presumedTextKey,
    presumedAbove: row.presumedAbove,
    presumedUpTo: row.presumedUpTo,
    leastApf: row.leastApf,
    interimProtections: highest === 'none' ? [] : read().interimProtections,
    mapping: listed ? 'listed' : open ? 'open' : 'notListed',
    becauseTaskIds: deciding.map(({ taskId }) => taskId),
    questions: tiers.flatMap(({ taskId, task }) =>
      task?.mapping === 'open' && task.question
        ? [{ taskId, question: task.question, answerTaskIds: task.answerTaskIds }]
        : [],
    ),
    sources: [row.source, ...deciding.flatMap(({ task }) => (task ? [task.source] : []))],
  };
}
