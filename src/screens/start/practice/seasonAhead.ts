/**
 * Plans of the season: all of a small crew, some of a larger one by lot, the one expected to breathe most, and one that was given up. What
 * became of their places follows from the shifts (seasonPlan.ts) and from what is said here of days that did not come about.
 */
import type { FactBody, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds, Worker } from './seasonIds.ts';
import { gunsShrouded, sander, sanding, tearing, walls } from './seasonPlan.ts';

/** Days ago; below zero ahead; null: the day is still open. */
type Place = readonly [Worker, number | null];

interface Plan {
  readonly planId: string;
  readonly saidDaysAgo: number;
  readonly site: 'site' | 'bridge' | 'readingRoom' | null;
  readonly tasks: readonly string[];
  readonly job: 'painter' | 'restorer' | 'steelPainter';
  readonly crewCount: number;
  readonly choice?: 'random' | 'highest';
  readonly places: readonly Place[];
}

type Missed = readonly [Worker, number, FactBody<'plannedDayMissed.v1'>['because'], string | null];

const { ahead: told } = words;

function planned(plan: Plan, ids: SeasonIds, { at, fact, on }: SeasonClock): NewFact {
  const { planId, saidDaysAgo, site, tasks, job, crewCount, choice = 'all', places } = plan;
  return fact(at(saidDaysAgo, '17:45'), 'measurementPlanned.v1', {
    ...{ planId, jobClassificationId: ids[job], setting: site === 'bridge' ? 'outdoors' : 'indoors' },
    ...{ taskIds: [...tasks], siteId: site === null ? null : ids[site], season: told.season, crewCount, choice },
    reason: choice === 'highest' ? told.highest : null,
    slots: places.map(([who, daysAgo]) => ({
      workerId: ids[who],
      workOn: daysAgo === null ? null : on(daysAgo),
    })),
    ...{ methodId: 'niosh-7082', reportingLimitUg: 2.5, flowLPerMin: 2, cassettesCount: 1, remark: null },
  });
}

/** Ten do this work with the subcontractor's; of those drawn three have names in the book, the others get them on the day. */
const byLot: readonly Place[] = [
  ['maya', 35],
  ['rex', 35],
  ['sam', 28],
  ['rex', 21],
  ['rex', 14],
  ['maya', 5],
  ['sam', 5],
  ['rex', -4],
  ['sam', -4],
];
const missedOfLot: readonly Missed[] = [
  ['rex', 35, 'rainedOff', told.rain],
  ['rex', 21, 'notAtWork', null],
  ['rex', 14, 'otherWork', told.calledAway],
];

const ofWalls: readonly Place[] = [
  ['second', 87],
  ['second', 75],
  ['dora', 60],
  ['second', 1],
  ['dora', -1],
];
const ofTearing: readonly Place[] = [
  ['dora', 92],
  ['dora', 20],
  ['second', 18],
  ['second', 13],
  ['dora', 12],
  ['dora', 11],
];
const missedTearing: readonly Missed[] = [
  ['second', 13, 'gear', told.pumpStopped],
  ['dora', 12, 'other', told.shut],
];

/** A plan is given up by whoever knew of it: written after the rest. */
export const planGivenUp = ({ planStripping }: SeasonIds, { at, fact }: SeasonClock): NewFact => ({
  ...fact(at(68, '17:45'), 'planDropped.v1', { planId: planStripping }),
  why: told.dropped,
});

export function seasonAhead(ids: SeasonIds, clock: SeasonClock): NewFact[] {
  const { at, fact, on } = clock;
  const [tearingId, lotId] = [newId(), newId()];
  const indoors = { site: 'site', job: 'painter', crewCount: 2 } as const;
  const plans: readonly Plan[] = [
    { ...indoors, planId: ids.planWalls, saidDaysAgo: 90, tasks: walls, places: ofWalls },
    { ...indoors, planId: tearingId, saidDaysAgo: 94, site: 'readingRoom', tasks: tearing, places: ofTearing },
    {
      ...{ planId: lotId, saidDaysAgo: 40, site: 'bridge', tasks: gunsShrouded, job: 'steelPainter' },
      ...{ crewCount: 10, choice: 'random', places: byLot },
    },
    {
      ...{ ...indoors, planId: newId(), saidDaysAgo: 84, tasks: sander, choice: 'highest' },
      places: [
        ['second', 82],
        ['second', -6],
      ],
    },
    {
      ...{ planId: ids.planTakeOut, saidDaysAgo: 2, site: 'site', tasks: ['windowTakeOut'], job: 'restorer' },
      crewCount: 1,
      places: [
        ['first', 1],
        ['first', 0],
        ['first', -1],
        ['first', null],
      ],
    },
    {
      ...{ ...indoors, planId: newId(), saidDaysAgo: 3, site: null, tasks: sanding, crewCount: 1 },
      places: [['dora', -9]],
    },
    {
      ...{ ...indoors, planId: ids.planStripping, saidDaysAgo: 70, site: 'readingRoom', tasks: ['chemicalStripping'] },
      places: [['dora', 66]],
    },
  ];
  const missed =
    (planId: string) =>
    ([who, daysAgo, because, remark]: Missed): NewFact =>
      fact(at(daysAgo, '16:30'), 'plannedDayMissed.v1', {
        ...{ planId, workerId: ids[who], workOn: on(daysAgo), because, remark },
      });
  return [
    ...plans.map((plan) => planned(plan, ids, clock)),
    missed(ids.planWalls)(['dora', 60, 'declined', told.declined]),
    ...missedOfLot.map(missed(lotId)),
    ...missedTearing.map(missed(tearingId)),
  ];
}
