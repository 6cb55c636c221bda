/** Pages of the season ahead: what to measure next, plans, tomorrow; will it prove anything, a day ahead, money, results by date; gear. */
import type { Route } from './route.ts';

export const routesOfSeason: readonly Route[] = [
  { path: '/season', screen: 'Season', load: () => import('#screens/season/Season.tsx'), states: ['empty', 'filled'] },
  {
    path: '/plan',
    screen: 'NewPlan',
    load: () => import('#screens/plan/NewPlan.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/plan/:planId',
    screen: 'Plan',
    load: () => import('#screens/plan/Plan.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/tomorrow',
    screen: 'TomorrowWhere',
    load: () => import('#screens/tomorrow/TomorrowWhere.tsx'),
    states: ['empty', 'filled'],
  },
  {
    path: '/tomorrow/:shiftId',
    screen: 'Tomorrow',
    load: () => import('#screens/tomorrow/Tomorrow.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/prove',
    screen: 'Prove',
    load: () => import('#screens/prove/Prove.tsx'),
    states: ['empty', 'filled', 'error'],
    withoutBook: true,
  },
  {
    path: '/day-ahead',
    screen: 'DayAhead',
    load: () => import('#screens/dayAhead/DayAhead.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/money',
    screen: 'Money',
    load: () => import('#screens/money/Money.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/results-by-date',
    screen: 'ResultsByDate',
    load: () => import('#screens/resultsByDate/ResultsByDate.tsx'),
    states: ['empty', 'filled'],
  },
  { path: '/gear', screen: 'Gear', load: () => import('#screens/gear/Gear.tsx'), states: ['empty', 'filled'] },
  {
    path: '/gear/:kind/:id',
    screen: 'OneGear',
    load: () => import('#screens/gear/OneGear.tsx'),
    states: ['empty', 'filled', 'error'],
  },
];
