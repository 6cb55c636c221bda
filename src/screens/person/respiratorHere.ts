/** Which measurements say what this worker wears at a kind of task, and the more protective of what they ask for. */
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { RespiratorAdvice } from '#findings/duties/protecting/respirator.ts';
import { respiratorFor } from '#findings/duties/protecting/respirators.ts';
import { findPresumption } from '#findings/presumption.ts';
import { limitSetOn } from '#reference/limits.ts';
import type { OfPersonProps } from './Courses.tsx';
import { coursesOfPerson, noticesOfPerson, partsOfGroup } from './people.ts';

export interface AdviceHere {
  readonly advice: RespiratorAdvice;
  /** null: nothing was measured that stands for this worker. */
  readonly measurement: Measurement | null;
}

/** The state in which the tasks were done last decides whose limits hold. */
function stateOf(groupKey: string, { duties, book }: OfPersonProps): string {
  const siteId = duties.groups.get(groupKey)?.days.at(-1)?.siteId;
  return book.sites.get(siteId ?? '')?.stateCode ?? '';
}

/**
 * The last one with a result, in doubt or not: what proves nothing low leaves the presumption standing. While every three months last,
 * the last one above the PEL stands too: one low result alone ends nothing.
 */
function judging(groupKey: string, { duties, personId }: OfPersonProps): readonly (Measurement | null)[] {
  const course = coursesOfPerson(personId, duties).find((one) => one.groupKey === groupKey);
  const ids = [...noticesOfPerson(personId, duties).map(({ measurementId }) => measurementId)];
  const found = [...new Set([...ids, course?.lastMeasurementId ?? ''])]
    .map((id) => duties.measurements.get(id))
    .filter((one) => one !== undefined)
    .filter(
      ({ groupKey: of, mayBeKeys, resultOwed }) => !resultOwed && (of === groupKey || mayBeKeys?.includes(groupKey)),
    )
    .toSorted((a, b) => (a.workOn < b.workOn ? -1 : a.workOn > b.workOn ? 1 : 0));
  const last = found.at(-1);
  const sameDay = found.filter(({ workOn }) => workOn === last?.workOn);
  const above = course?.schedule === 'quarterly' ? found.filter(({ band }) => band === 'abovePel').at(-1) : undefined;
  const all = [...sameDay, ...(above === undefined ? [] : [above])];
  return all.length === 0 ? [null] : all;
}

/** No factor named stands above any that is. */
const rank = ({ advice: { beyond, floorApf, leastApf } }: AdviceHere): number => {
  if (beyond) return Number.POSITIVE_INFINITY;
  if (floorApf === null) return 0;
  return leastApf === null ? Number.MAX_VALUE : floorApf;
};

export function adviceFor(groupKey: string, props: OfPersonProps): AdviceHere {
  const { duties, book } = props;
  const each = judging(groupKey, props).map(
    (measurement): AdviceHere => ({
      measurement,
      advice: respiratorFor({
        measurement,
        presumption: findPresumption(partsOfGroup(groupKey).taskIds),
        limits: measurement?.limits ?? limitSetOn(duties.today, stateOf(groupKey, props)),
        ownPelUgPerM3: book.book?.limits?.ownPelUgPerM3 ?? null,
      }),
    }),
  );
  return each.reduce((top, one) => (rank(one) > rank(top) ? one : top));
}
