/** Every trigger of shared/duties, by its name. */
import { type DutyTrigger, dutyTriggers } from '#reference/duties.ts';
import { measuring } from './dutyTriggersMeasuring.ts';
import type { Trigger } from './dutyTriggersMet.ts';
import { observation } from './dutyTriggersObservation.ts';
import { people } from './dutyTriggersPeople.ts';
import { protecting } from './dutyTriggersProtecting.ts';
import { telling } from './dutyTriggersTelling.ts';

const found = { ...measuring, ...observation, ...telling, ...protecting, ...people };

/** Throws (a bug) for a trigger that nothing looks for. */
export function triggerNamed(name: DutyTrigger): Trigger {
  const trigger = found[name];
  if (!trigger) throw new Error(`no trigger ${name}`);
  return trigger;
}

/** Names without a trigger: none, held by a test. */
export const triggersMissing = (): readonly DutyTrigger[] => dutyTriggers.filter((name) => !found[name]);
