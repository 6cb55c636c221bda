/** What devices write of roster, notices and duties in the plays of the merge laws; each names what its device knew of. */
import type { NewFact } from '#records/fact.ts';
import type { HeldEntry } from '#records/sifting.ts';
import { done, employed, given, notice, personAdded, reopened, struck, workdayKey, worked } from './dutyFacts.ts';
import { corrects, ids, wanted } from './facts.ts';

export const dutyActs = [
  ...(['person', 'work', 'work', 'strike', 'strike', 'workCorrect', 'workCorrect'] as const),
  ...(['employ', 'done', 'done', 'reopen', 'notice', 'give', 'represent'] as const),
] as const;
export type DutyAct = (typeof dutyActs)[number];

/** Records that these acts make, beside the samples. */
export const dutyKeys = [workdayKey, `person:${ids.ana}`, `duty:writtenProgramme.${ids.site}`, 'notice:n00000000001'];

const tasks = ['handScraping', 'windowTakeOut', 'powerToolCleaning'] as const;
type Held = ReadonlyMap<string, HeldEntry>;
const idsOf = (held: Held, ...parts: readonly string[]): string[] =>
  [...held].flatMap(([id, { text }]) => (parts.every((part) => text.includes(part)) ? [id] : []));

/** null when there is nothing of the kind yet. */
export function dutyFactOf(held: Held, act: DutyAct, value: number): NewFact | null {
  const task = tasks[value % tasks.length] ?? 'handScraping';
  const noted = idsOf(held, '"workNoted.v1"')[0];
  switch (act) {
    case 'person':
      return personAdded();
    case 'work':
      return worked([task], { respirator: value > 6 ? 'airPurifyingHalf' : null });
    case 'strike':
      if (noted === undefined) return null;
      return struck(noted, idsOf(held, '"valueCorrected.v1"', `"replaces":"${noted}"`));
    case 'workCorrect': {
      if (noted === undefined) return null;
      const old = (JSON.parse(held.get(noted)?.text ?? '') as { body: { taskIds: string[] } }).body.taskIds;
      return corrects(noted, '/taskIds', old, [task, 'sweeping'], null, [workdayKey]);
    }
    case 'employ':
      return employed(`2026-0${value}-01`, value > 5 ? null : '2026-11-30', idsOf(held, '"employmentStated.v1"'));
    case 'done':
      return done(`2026-11-2${value}`);
    case 'reopen':
      return reopened(idsOf(held, '"dutyDone.v1"'));
    case 'notice':
      return notice({ places: [] });
    case 'give':
      return given({ workerId: value > 4 ? ids.ana : ids.ben });
    case 'represent':
      return wanted('representsStated.v1', { workdayId: `${ids.ana}.2026-11-25`, workerIds: [ids.ben] });
    default:
      return act satisfies never;
  }
}
