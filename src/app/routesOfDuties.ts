/** Pages of what the rule asks next: roster, job start, measurements of others, to do, notices, determinations, people, papers. */
import type { Route } from './route.ts';

export const routesOfDuties: readonly Route[] = [
  {
    path: '/shift/:shiftId/roster',
    screen: 'Roster',
    load: () => import('#screens/roster/Roster.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/shift/:shiftId/job-start',
    screen: 'JobStart',
    load: () => import('#screens/jobStart/JobStart.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/shift/:shiftId/rely',
    screen: 'Rely',
    load: () => import('#screens/jobStart/Rely.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/groups',
    screen: 'Groups',
    load: () => import('#screens/groups/Groups.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/reported',
    screen: 'Reported',
    load: () => import('#screens/reported/Reported.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/key-in',
    screen: 'KeyIn',
    load: () => import('#screens/paperForm/KeyIn.tsx'),
    states: ['empty', 'error'],
  },
  { path: '/todo', screen: 'Todo', load: () => import('#screens/todo/Todo.tsx'), states: ['empty', 'filled'] },
  {
    path: '/todo/:dutyId',
    screen: 'DutyPage',
    load: () => import('#screens/todo/DutyPage.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  { path: '/asked', screen: 'Asked', load: () => import('#screens/todo/Asked.tsx'), states: ['empty', 'error'] },
  {
    path: '/notice/:measurementId',
    screen: 'Notice',
    load: () => import('#screens/notice/Notice.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/determination/:siteId',
    screen: 'Determination',
    load: () => import('#screens/determination/Determination.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  { path: '/person', screen: 'People', load: () => import('#screens/person/People.tsx'), states: ['filled'] },
  {
    path: '/person/:personId',
    screen: 'Person',
    load: () => import('#screens/person/Person.tsx'),
    states: ['empty', 'filled'],
  },
  {
    path: '/exposure-record/:workdayId',
    screen: 'ExposureRecord',
    load: () => import('#screens/person/ExposureRecord.tsx'),
    states: ['empty', 'filled', 'error'],
  },
  {
    path: '/inspector',
    screen: 'Inspector',
    load: () => import('#screens/inspector/Inspector.tsx'),
    states: ['filled'],
  },
  {
    path: '/inspector/:siteId',
    screen: 'InspectorSite',
    load: () => import('#screens/inspector/InspectorSite.tsx'),
    states: ['empty', 'filled'],
  },
  { path: '/papers', screen: 'Papers', load: () => import('#screens/papers/Papers.tsx'), states: ['filled', 'error'] },
];
