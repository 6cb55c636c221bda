/** Loads the screen of a route when it is first needed. Every one of them is in the cache from the first visit on. */
import { type ComponentType, lazy } from 'react';
import type { Route } from './routeTable.ts';

/** A screen takes the parameters of its path. */
export type Screen = ComponentType<Readonly<Record<string, string>>>;
type Module = Readonly<Record<string, unknown>>;

const modules = import.meta.glob<Module>(['../screens/*/[A-Z]*.tsx', './gallery/Gallery.tsx']);

const nameOf = (screen: string): string => screen.slice(screen.lastIndexOf('/') + 1);

async function screenOf(screen: string): Promise<{ default: Screen }> {
  const load = modules[`../screens/${screen}.tsx`] ?? modules[`./${screen}.tsx`];
  const found = (await load?.())?.[nameOf(screen)];
  if (typeof found !== 'function') throw new Error(`No screen ${screen}`);
  return { default: found as Screen };
}

const lazyByScreen = new Map<string, Screen>();

/** The lazy component of a route: the same one each time, so that its state survives a new render. */
export function screenFor(route: Route): Screen {
  const known = lazyByScreen.get(route.screen);
  if (known) return known;
  const made = lazy(() => screenOf(route.screen)) as unknown as Screen;
  lazyByScreen.set(route.screen, made);
  return made;
}
