/**
 * Every page of the app: one line a page. The parameters of a path are handed to its screen as properties, so a screen is a plain
 * function of them (`/sample/:sampleId` renders `<Sample sampleId="…" />`). The component is exported by the name of its file.
 */
import type { Route } from './route.ts';
import { routesOfDuties } from './routesOfDuties.ts';
import { routesOfSeason } from './routesOfSeason.ts';

export type { PageState, Route } from './route.ts';

export const routeTable: readonly Route[] = [
  {
    path: '/',
    screen: 'Today',
    load: () => import('#screens/today/Today.tsx'),
    states: ['empty', 'filled', 'running'],
  },
  {
    path: '/start',
    screen: 'Start',
    load: () => import('#screens/start/Start.tsx'),
    states: ['empty', 'error'],
    withoutBook: true,
  },
  {
    path: '/wear',
    screen: 'Wear',
    load: () => import('#screens/wear/Wear.tsx'),
    states: ['empty', 'filled', 'error'],
    withoutBook: true,
  },
  { path: '/who', screen: 'Who', load: () => import('#screens/start/Who.tsx'), states: ['filled', 'error'] },
  {
    path: '/shift/:shiftId',
    screen: 'Shift',
    load: () => import('#screens/shift/Shift.tsx'),
    states: ['empty', 'filled', 'running'],
  },
  {
    path: '/shift/:shiftId/flow',
    screen: 'FlowCheck',
    load: () => import('#screens/flow/FlowCheck.tsx'),
    states: ['empty', 'error'],
  },
  {
    path: '/shift/:shiftId/fit',
    screen: 'Fit',
    load: () => import('#screens/fitting/Fit.tsx'),
    states: ['empty', 'error'],
  },
  {
    path: '/shift/:shiftId/blank',
    screen: 'Blank',
    load: () => import('#screens/shift/Blank.tsx'),
    states: ['empty', 'error'],
  },
  {
    path: '/shift/:shiftId/conditions',
    screen: 'Conditions',
    load: () => import('#screens/shift/Conditions.tsx'),
    states: ['empty', 'filled'],
  },
  {
    path: '/worker/:sampleId',
    screen: 'WorkerPage',
    load: () => import('#screens/fitting/WorkerPage.tsx'),
    states: ['empty', 'error'],
  },
  {
    path: '/sample/:sampleId',
    screen: 'Sample',
    load: () => import('#screens/sampling/Sample.tsx'),
    states: ['filled', 'running'],
  },
  {
    path: '/sample/:sampleId/after',
    screen: 'After',
    load: () => import('#screens/sampling/After.tsx'),
    states: ['filled', 'error'],
  },
  {
    path: '/samples',
    screen: 'Samples',
    load: () => import('#screens/samples/Samples.tsx'),
    states: ['empty', 'filled'],
  },
  {
    path: '/results',
    screen: 'Results',
    load: () => import('#screens/results/Results.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/day/:workdayId',
    screen: 'Day',
    load: () => import('#screens/exposure/Day.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  { path: '/boxes', screen: 'Boxes', load: () => import('#screens/box/Boxes.tsx'), states: ['empty', 'filled'] },
  { path: '/pack', screen: 'PackBox', load: () => import('#screens/box/PackBox.tsx'), states: ['empty', 'error'] },
  { path: '/box/:boxId', screen: 'Box', load: () => import('#screens/box/Box.tsx'), states: ['filled', 'error'] },
  {
    path: '/box/:boxId/change',
    screen: 'ChangeBox',
    load: () => import('#screens/box/ChangeBox.tsx'),
    states: ['filled', 'error'],
  },
  {
    path: '/keep',
    screen: 'Keep',
    load: () => import('#screens/keep/Keep.tsx'),
    states: ['filled'],
    withoutBook: true,
  },
  {
    path: '/send',
    screen: 'Send',
    load: () => import('#screens/keep/Send.tsx'),
    states: ['filled', 'error'],
    withoutBook: true,
  },
  {
    path: '/take-in',
    screen: 'TakeIn',
    load: () => import('#screens/keep/TakeIn.tsx'),
    states: ['empty', 'filled', 'error'],
    withoutBook: true,
  },
  {
    path: '/storage',
    screen: 'Storage',
    load: () => import('#screens/keep/Storage.tsx'),
    states: ['filled', 'error'],
    withoutBook: true,
  },
  {
    path: '/wipe',
    screen: 'Wipe',
    load: () => import('#screens/keep/Wipe.tsx'),
    states: ['empty', 'filled', 'error'],
    withoutBook: true,
  },
  {
    path: '/received',
    screen: 'Received',
    load: () => import('#screens/received/Received.tsx'),
    states: ['empty', 'filled', 'error'],
    withoutBook: true,
  },
  { path: '/settle', screen: 'Settle', load: () => import('#screens/settle/Settle.tsx'), states: ['empty', 'filled'] },
  {
    path: '/settle/:matterKey',
    screen: 'SettleMatter',
    load: () => import('#screens/settle/SettleMatter.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/story/:recordKey',
    screen: 'Story',
    load: () => import('#screens/story/Story.tsx'),
    states: ['empty', 'filled'],
  },
  { path: '/lists', screen: 'Lists', load: () => import('#screens/lists/Lists.tsx'), states: ['empty', 'filled'] },
  {
    path: '/checked',
    screen: 'Checked',
    load: () => import('#screens/checked/Checked.tsx'),
    states: ['filled'],
    withoutBook: true,
  },
  {
    path: '/rules',
    screen: 'Rules',
    load: () => import('#screens/rules/Rules.tsx'),
    states: ['filled', 'error'],
    withoutBook: true,
  },
  {
    path: '/about',
    screen: 'About',
    load: () => import('#screens/checked/About.tsx'),
    states: ['filled'],
    withoutBook: true,
  },
  {
    path: '/gallery',
    screen: 'Gallery',
    load: () => import('./gallery/Gallery.tsx'),
    states: ['filled'],
    withoutBook: true,
  },
  ...routesOfDuties,
  ...routesOfSeason,
];
