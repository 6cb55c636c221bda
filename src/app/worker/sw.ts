/**
 * The worker that keeps the app on the device: every built file is stored at the first visit, and each page is answered from there. It
 * also puts by what another app shares with this one. It never touches the book. Its whole runtime is in this one file: a part fetched
 * later by a plain string would be refused under Trusted Types.
 */
import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { isShare, receive } from './receiving.ts';

/** What a worker has and a page has not, as far as it is needed here. */
interface WorkerScope {
  /** The build puts the list of all files here. */
  readonly __WB_MANIFEST: readonly (PrecacheEntry | string)[];
  readonly registration: { readonly scope: string };
  readonly skipWaiting: () => Promise<void>;
  readonly addEventListener: (type: 'message', listener: (event: MessageEvent) => void) => void;
}
declare const self: WorkerScope;

// A newer version waits until the user says yes: see updates.ts.
self.addEventListener('message', ({ data }) => {
  if ((data as { type?: unknown } | null)?.type === 'SKIP_WAITING') void self.skipWaiting();
});
// The very first visit is served from the device as soon as everything is stored, without loading the page again.
clientsClaim();
precacheAndRoute([...self.__WB_MANIFEST]);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));
registerRoute(
  ({ url }) => isShare(url, self.registration.scope),
  ({ request }) => receive(request, self.registration.scope),
  'POST',
);
