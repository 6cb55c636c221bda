/** Trigger of the right to watch: 29 CFR 1926.62(o). Wherever something is measured, or is owed to be measured. */
import { measuring } from './dutyTriggersMeasuring.ts';
import { earliest, fewOf, latest, type Sight, type Trigger, type Triggers } from './dutyTriggersMet.ts';

/** Triggers that a measurement fulfils. */
const owed: readonly Trigger[] = (
  ['notAssessed', 'positiveNotMeasured', 'provesNothing', 'sixMonthly', 'quarterly', 'change'] as const
).flatMap((name) => measuring[name] ?? []);

/** Where something is measured, or is to be measured: at each such site workers and their representatives may watch. */
const monitoring: Trigger = (sight: Sight, row) => {
  const { ground } = sight;
  const sites = new Map<string, string[]>();
  const note = (siteId: string | null, because: readonly string[]): void => {
    if (siteId !== null && ground.isHeld(siteId))
      sites.set(siteId, [...(sites.get(siteId) ?? []), ...because.slice(0, 2)]);
  };
  for (const trigger of owed) for (const { siteId, because } of trigger(sight, row)) note(siteId, because);
  for (const { from, siteId, workOn, because } of ground.parts.measurements.values())
    if (from === 'sampled' && workOn >= ground.today) note(siteId, because);
  return [...sites].map(([siteId, because]) => {
    const turns = (ground.jobsBySite.get(siteId) ?? []).flatMap(({ turns: all }) => [...all.values()]);
    return {
      subjects: [siteId],
      workerIds: [...new Set(turns.map(({ workerId }) => workerId))].sort(),
      siteId,
      groupKey: null,
      measurementIds: [],
      params: {},
      presumed: false,
      because: fewOf(because),
      startsOn: earliest(turns.map(({ firstOn }) => firstOn)),
      lastOn: latest(turns.map(({ lastOn }) => lastOn)),
    };
  });
};

export const observation: Triggers = { monitoring };
