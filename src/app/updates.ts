/**
 * Keeps the whole app on the device, and hears of newer versions. It changes nothing by itself: what is offered when is decided in
 * updatePolicy.ts, and only `change` ever loads the page again. The worker never touches the book.
 */
import type { Workbox } from 'workbox-window';
import { currentUpdates, onChangeNow, setUpdates } from '#store/appUpdates.ts';
import { nowMs } from '#store/device.ts';
import { flushDrafts } from '#store/drafts.ts';

let workbox: Workbox | null = null;
let asked = false;

/** The user said yes: what is being typed goes to the disk, the waiting version takes over, then this page loads again once. */
async function change(): Promise<void> {
  asked = true;
  await flushDrafts();
  if (currentUpdates().changedElsewhere) window.location.reload();
  else workbox?.messageSkipWaiting();
}

interface TrustedTypes {
  createPolicy(
    name: string,
    rules: { createScriptURL: (url: string) => string },
  ): { createScriptURL(url: string): unknown };
}

/** The one address that the policy lets through. `Workbox` hands on what it is given, so the typed address arrives as it is. */
function trustedWorkerUrl(): string {
  const url = new URL('sw.js', document.baseURI).href;
  const trustedTypes = (globalThis as { readonly trustedTypes?: TrustedTypes }).trustedTypes;
  const policy = trustedTypes?.createPolicy('app-sw', {
    createScriptURL: (wanted) => {
      if (wanted !== url) throw new TypeError('Only the worker of this app may be registered');
      return wanted;
    },
  });
  return (policy?.createScriptURL(url) ?? url) as string;
}

const checkEveryMs = 60 * 60_000;

/** Starts it all, once the first page stands and the line is free. */
export function keepOnDevice(): void {
  onChangeNow(change);
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  if (document.readyState === 'complete') void register();
  else window.addEventListener('load', () => void register(), { once: true });
}

async function register(): Promise<void> {
  const worker = navigator.serviceWorker;
  let controlled = worker.controller !== null;
  worker.addEventListener('controllerchange', () => {
    if (asked) window.location.reload();
    else if (controlled) setUpdates({ changedElsewhere: true, waiting: false });
    controlled = true;
  });
  try {
    const { Workbox } = await import('workbox-window');
    workbox = new Workbox(trustedWorkerUrl());
    workbox.addEventListener('waiting', () => setUpdates({ waiting: true }));
    workbox.addEventListener('activated', (event) => {
      if (!event.isUpdate) setUpdates({ ready: true });
    });
    tryAgain(workbox);
    await workbox.register();
    lookAgain(workbox);
  } catch (error) {
    // Private windows refuse workers. The app still runs, it is only not kept for the next time without a connection.
    console.info('The app could not be kept on this device', error);
  }
}

const againAfterMs = [5_000, 20_000, 60_000];

/** A weak signal loses one of many files, and then nothing was kept: it is tried again a few times. */
function tryAgain(known: Workbox): void {
  let tries = 0;
  known.addEventListener('redundant', () => {
    const afterMs = againAfterMs[tries];
    if (afterMs === undefined || navigator.serviceWorker.controller !== null) return;
    tries += 1;
    setTimeout(() => known.update().catch(() => undefined), afterMs);
  });
}

/** Looks for a newer version when the page comes back into view, at most once an hour. No connection is no error. */
function lookAgain(known: Workbox): void {
  let lookedMs = nowMs();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || nowMs() - lookedMs < checkEveryMs) return;
    lookedMs = nowMs();
    known.update().catch(() => undefined);
  });
}
