/**
 * Every page of the app: one line a page. The parameters of a path are handed to its screen as properties, so a screen is a plain
 * function of them (`/sample/:sampleId` renders `<Sample sampleId="…" />`). The component is exported by the name of its file.
 */

/** The states that a page is looked at in by the accessibility journey; a page without a state fails there. */
export type PageState = 'empty' | 'filled' | 'error' | 'running';

export interface Route {
  readonly path: string;
  /** Folder and file under src/screens (or src/app), without the ending. */
  readonly screen: string;
  readonly states: readonly PageState[];
  /** Shown also while no book is open: first start, restore, reading matter. */
  readonly withoutBook?: boolean;
}

export const routeTable: readonly Route[] = [
  { path: '/', screen: 'today/Today', states: ['empty', 'filled', 'running'] },
  { path: '/start', screen: 'start/Start', states: ['empty', 'error'], withoutBook: true },
  { path: '/who', screen: 'start/Who', states: ['filled', 'error'] },
  { path: '/shift/:shiftId', screen: 'shift/Shift', states: ['empty', 'filled', 'running'] },
  { path: '/shift/:shiftId/flow', screen: 'flow/FlowCheck', states: ['empty', 'error'] },
  { path: '/shift/:shiftId/fit', screen: 'fitting/Fit', states: ['empty', 'error'] },
  { path: '/shift/:shiftId/blank', screen: 'shift/Blank', states: ['empty', 'error'] },
  { path: '/shift/:shiftId/conditions', screen: 'shift/Conditions', states: ['empty', 'filled'] },
  { path: '/worker/:sampleId', screen: 'fitting/WorkerPage', states: ['empty', 'error'] },
  { path: '/sample/:sampleId', screen: 'sampling/Sample', states: ['filled', 'running'] },
  { path: '/sample/:sampleId/after', screen: 'sampling/After', states: ['filled', 'error'] },
  { path: '/samples', screen: 'samples/Samples', states: ['empty', 'filled'] },
  { path: '/results', screen: 'results/Results', states: ['empty', 'filled', 'error'] },
  { path: '/day/:workdayId', screen: 'exposure/Day', states: ['empty', 'filled', 'error'] },
  { path: '/boxes', screen: 'box/Boxes', states: ['empty', 'filled'] },
  { path: '/box/:boxId', screen: 'box/Box', states: ['filled', 'error'] },
  { path: '/keep', screen: 'keep/Keep', states: ['filled', 'error'], withoutBook: true },
  { path: '/lists', screen: 'lists/Lists', states: ['empty', 'filled'] },
  { path: '/checked', screen: 'checked/Checked', states: ['filled'], withoutBook: true },
  { path: '/about', screen: 'checked/About', states: ['filled'], withoutBook: true },
  { path: '/gallery', screen: 'gallery/Gallery', states: ['filled'], withoutBook: true },
];
