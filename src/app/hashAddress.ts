/**
 * The address inside the app: everything after `#`, split at the question mark, so that `#/shift/x/flow?pump=y` is the page
 * `/shift/x/flow` asked about pump y. The outer address (a sub-path, a host) never changes.
 */
import { useSyncExternalStore } from 'react';

const inside = (): string => `/${window.location.hash.replace(/^#?\/?/, '')}`;
const pathNow = (): string => inside().split('?', 1)[0] ?? '/';
const searchNow = (): string => inside().slice(pathNow().length + 1);

function onChange(listener: () => void): () => void {
  window.addEventListener('hashchange', listener);
  window.addEventListener('popstate', listener);
  return () => {
    window.removeEventListener('hashchange', listener);
    window.removeEventListener('popstate', listener);
  };
}

/** Goes to a path inside the app, with its question if it has one. */
function go(to: string, { replace = false, state = null }: { replace?: boolean; state?: unknown } = {}): void {
  const hash = `#${to.startsWith('/') ? to : `/${to}`}`;
  window.history[replace ? 'replaceState' : 'pushState'](state, '', hash);
  window.dispatchEvent(new HashChangeEvent('hashchange'));
}

/** What the router asks: the path, and how to leave it. */
export const useHashPath = Object.assign((): [string, typeof go] => [useSyncExternalStore(onChange, pathNow), go], {
  hrefs: (href: string) => `#${href}`,
  searchHook: () => useSyncExternalStore(onChange, searchNow),
});
