/**
 * Where a day stands to limits beside the rule that judges it: other sets, one task's own limit, the firm's own stricter ones. They are
 * told and relax nothing; what the rule's standing leaves open stays open here too.
 */
import { besideLimitsOn } from '#reference/besideSet.ts';
import { holdsOn } from '#reference/dated.ts';
import { setOn } from '#reference/limitSet.ts';
import { allLimitSets, besideSets } from '#reference/limits.ts';
import { isOwnLimit, type OwnLimits, tightened } from '#reference/ownLimits.ts';
import type { ReadSource } from '#reference/source.ts';
import { dayAveragesOf, partsOf } from '../../dayAverages.ts';
import { type DayAverages, type DayStanding, standingAt } from '../../standing.ts';
import type { WorkdayFinding } from '../../workday.ts';

export interface BesideStanding {
  /** Id of the set; `own` for the firm's own limits; `<set>.<task>` for the limit that one task has. */
  readonly id: string;
  readonly kind: 'rule' | 'otherRule' | 'advice' | 'ofTask' | 'own';
  /** As the set names itself; null for the firm's own. */
  readonly document: string | null;
  readonly jurisdiction: string | null;
  /** Last day on which the value holds, as far as known. */
  readonly untilOn: string | null;
  /** Empty where no figure is known for that day. */
  readonly standings: readonly DayStanding[];
  readonly sources: readonly ReadSource[];
}

/** Standings of a day to the chosen sets, in the order of the list; unknown ids and the judging set itself are left out. */
export function standingsBeside(
  finding: WorkdayFinding,
  setIds: readonly string[],
  own: OwnLimits,
): readonly BesideStanding[] {
  const parts = partsOf(finding.segments, finding.samples);
  if (parts.length === 0) return [];
  const day = dayAveragesOf(parts, finding.blocksBelow);
  const on = finding.workOn;
  const wanted = new Set(setIds.filter((id) => id !== finding.limits.set.id));
  return [
    ...ownStandings(finding, own, day),
    ...ofTasks(finding, day),
    ...allLimitSets().flatMap((file) => (wanted.has(file.id) ? [ruleBeside(file, on, day)] : [])),
    ...besideSets().flatMap((file) => (wanted.has(file.id) ? [besideOf(file, on, day)] : [])),
  ];
}

function ownStandings({ limits }: WorkdayFinding, own: OwnLimits, day: DayAverages): BesideStanding[] {
  const set = tightened(limits.set, own);
  const standings = (['actionLevel', 'pel'] as const)
    .filter((which) => isOwnLimit(set[which]))
    .map((which) => standingAt(set[which], which, 'own', day));
  if (standings.length === 0) return [];
  return [{ id: 'own', kind: 'own', document: null, jurisdiction: null, untilOn: null, standings, sources: [] }];
}

/** A task's own limit, while it holds and differs from the one that judges. It is shown to whoever does that task. */
function ofTasks({ limits, workOn }: WorkdayFinding, day: DayAverages): BesideStanding[] {
  const { set } = limits;
  return set.exceptions.flatMap(({ key, which, unit, values }) => {
    const value = values.find((one) => holdsOn(workOn, one));
    if (!value || value.value === set[which].value) return [];
    const id = `${set.id}.${key}`;
    const limit = { id: which, value: value.value, unit, reachedWhen: set[which].reachedWhen };
    return [
      {
        id,
        kind: 'ofTask' as const,
        document: set.document,
        jurisdiction: set.jurisdiction,
        untilOn: value.to,
        standings: [standingAt(limit, which, id, day)],
        sources: [value.source],
      },
    ];
  });
}

function ruleBeside(file: Parameters<typeof setOn>[1], on: string, day: DayAverages): BesideStanding {
  const { id, document, jurisdiction, actionLevel, pel } = setOn(on, file);
  const holds = holdsOn(on, file.effective);
  return {
    id,
    kind: 'rule',
    document,
    jurisdiction,
    untilOn: pel.to,
    standings: holds ? [standingAt(actionLevel, 'actionLevel', id, day), standingAt(pel, 'pel', id, day)] : [],
    sources: [actionLevel.source, pel.source],
  };
}

function besideOf(file: ReturnType<typeof besideSets>[number], on: string, day: DayAverages): BesideStanding {
  const limits = besideLimitsOn(on, file);
  const { id, kind, document, jurisdiction } = file;
  return {
    id,
    kind,
    document,
    jurisdiction,
    untilOn: limits.find(({ to }) => to !== null)?.to ?? null,
    standings: limits.map((limit) => standingAt(limit, limit.which, id, day)),
    sources: limits.map(({ source }) => source),
  };
}
