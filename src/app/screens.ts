/** Loads the screen of a route when it is first needed. */
import { type ComponentType, lazy } from 'react';
import { type Route, routeTable } from './routeTable.ts';

/** A screen takes the parameters of its path. */
export type Screen = ComponentType<Readonly<Record<string, string>>>;

async function loaded(route: Route): Promise<{ default: Screen }> {
  const module = (await route.load()) as Readonly<Record<string, unknown>>;
  const found = module[route.screen];
  if (typeof found !== 'function') throw new Error(`${route.path} has no screen called ${route.screen}`);
  return { default: found as Screen };
}

const lazyByPath = new Map<string, Screen>();

/** The lazy component of a route: the same one each time, so that its state survives a new render. */
export function screenFor(route: Route): Screen {
  const known = lazyByPath.get(route.path);
  if (known) return known;
  const made = lazy(() => loaded(route)) as unknown as Screen;
  lazyByPath.set(route.path, made);
  return made;
}

/** Today's page is fetched while the book is being opened, not after it, when it is the page that is asked for. */
export function preloadFirstPage(): void {
  if (!/^#?\/?$/.test(window.location.hash)) return;
  const first = routeTable.find(({ path }) => path === '/');
  void first?.load().catch(() => undefined);
}
