/** Triggers of protecting at a site: above the PEL, measured or presumed; above the level of daily cleaning; any work with lead. */
import type { DutyRow } from '#reference/duties.ts';
import type { Measurement } from '../measuring/measurement.ts';
import type { Job } from './dutyTriggersGround.ts';
import { type Level, ownPel } from './dutyTriggersLevels.ts';
import { figureOf } from './dutyTriggersMeasuring.ts';
import { earliest, fewOf, latest, type Met, type Sight, type Trigger, type Triggers } from './dutyTriggersMet.ts';

/** Measured: from the day on which the firm could first know. Presumed: from the first day of work. */
const startOf = ({ turn, since }: Level): string => (since !== null && since > turn.firstOn ? since : turn.firstOn);

const upper = (one: Measurement): number => {
  const figure = figureOf(one.twa8UgPerM3);
  return Number(figure.twa8UgPerM3 ?? figure.upToUgPerM3 ?? figure.atLeastUgPerM3 ?? 0);
};

const highestOf = (levels: readonly Level[]): Measurement | null =>
  levels.reduce<Measurement | null>(
    (top, { measurement }) => (measurement && (!top || upper(measurement) > upper(top)) ? measurement : top),
    null,
  );

function ofLevels(levels: readonly Level[], groupKey: string | null, sight: Sight, isPresumed: boolean): Met | null {
  const [first] = levels;
  if (!first) return null;
  const { siteId } = first.job;
  const highest = highestOf(levels);
  const taskIds = [...new Set(levels.flatMap(({ job }) => job.taskIds))].sort();
  const byOwn = levels.every((one) => one.byOwn);
  return {
    subjects: groupKey === null ? [siteId] : [siteId, groupKey],
    workerIds: [...new Set(levels.map(({ turn }) => turn.workerId))].sort(),
    siteId,
    groupKey,
    measurementIds: highest ? [highest.id] : [],
    params: {
      tasks: taskIds.join('+'),
      tier:
        levels
          .map(({ job }) => job.presumption.tier)
          .sort()
          .at(-1) ?? 'none',
      ...figureOf(highest?.twa8UgPerM3 ?? null),
      ...(highest ? { workOn: highest.workOn } : {}),
      ...(byOwn ? { ownLimitUgPerM3: ownPel(sight.ground)?.value ?? 0 } : {}),
    },
    presumed: isPresumed,
    because: fewOf([
      ...(highest?.because ?? []).slice(0, 12),
      ...levels
        .slice(0, 12)
        .flatMap(({ turn, measurement }) => [...turn.because.slice(0, 1), ...(measurement?.because ?? []).slice(0, 2)]),
    ]),
    startsOn: earliest(levels.map(startOf)),
    lastOn: latest(levels.map(({ turn }) => turn.lastOn)),
  };
}

/** By site, or by site and group, in the order in which they come. */
function gatheredBy(levels: readonly Level[], per: DutyRow['per']): Map<string, Level[]> {
  const found = new Map<string, Level[]>();
  for (const level of levels) {
    const { siteId, groupKey } = level.job;
    const key = per === 'siteGroup' ? `${siteId} ${groupKey}` : siteId;
    const held = found.get(key);
    if (held) held.push(level);
    else found.set(key, [level]);
  }
  return found;
}

/** A respirator and controls answer one figure: a higher one asks for them anew. */
const growsWith = ({ fulfilledBy, trigger }: DutyRow): boolean =>
  fulfilledBy === 'respirator' || trigger === 'abovePelMeasured';

/** First receipt of the highest measurement above. */
const newSince = (levels: readonly Level[]): string | null =>
  earliest(highestOf(levels)?.receipts.map(({ receivedOn }) => receivedOn) ?? []);

/** Workers for whom it holds, gathered. Presumed only where nobody among them was measured there. */
const where =
  (by: (level: Level) => 'measured' | 'presumed' | 'no'): Trigger =>
  (sight, row) => {
    const levels = sight.levels.filter(
      (level) => by(level) === 'measured' || (row.presumed && by(level) === 'presumed'),
    );
    return [...gatheredBy(levels, row.per).values()].flatMap((here) => {
      const groupKey = row.per === 'siteGroup' ? (here[0]?.job.groupKey ?? null) : null;
      const isPresumed = here.every((level) => by(level) === 'presumed');
      const met = ofLevels(here, groupKey, sight, isPresumed);
      return met ? [{ ...met, newSince: growsWith(row) ? newSince(here) : null }] : [];
    });
  };

function ofSite(siteId: string, jobs: readonly Job[]): Met {
  const turns = jobs.flatMap((job) => [...job.turns.values()]);
  return {
    subjects: [siteId],
    workerIds: [...new Set(turns.map(({ workerId }) => workerId))].sort(),
    siteId,
    groupKey: null,
    measurementIds: [],
    params: { tasks: [...new Set(jobs.flatMap(({ taskIds }) => taskIds))].sort().join('+') },
    presumed: false,
    because: fewOf(turns.flatMap(({ because }) => because.slice(0, 1))),
    startsOn: earliest(turns.map(({ firstOn }) => firstOn)),
    lastOn: latest(turns.map(({ lastOn }) => lastOn)),
  };
}

const leadWork: Trigger = ({ ground: { jobsBySite } }) => [...jobsBySite].map(([siteId, jobs]) => ofSite(siteId, jobs));

export const protecting: Triggers = {
  abovePel: where(({ pel }) => pel),
  abovePelMeasured: where(({ pel }) => pel),
  abovePelNotAboveDaily: where(({ pel, daily }) => (daily === 'no' ? pel : 'no')),
  aboveDaily: where(({ daily }) => daily),
  leadWork,
};
