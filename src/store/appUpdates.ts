/**
 * What is known of newer versions of the app. Whoever keeps the app on the device says so here, and pages below it hear of it; what may
 * be offered when is decided in the app's own update policy.
 */

export interface Updates {
  /** The app has just been stored for use without a connection, for the first time. */
  readonly ready: boolean;
  /** A newer version is on the device and waits. */
  readonly waiting: boolean;
  /** Another window has already changed to it. */
  readonly changedElsewhere: boolean;
}

let updates: Updates = { ready: false, waiting: false, changedElsewhere: false };
let change: () => Promise<void> = async () => undefined;
const listeners = new Set<() => void>();

export const currentUpdates = (): Updates => updates;

/** Tells `listener` of every change until the returned function is called. */
export function onUpdates(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

export function setUpdates(changed: Partial<Updates>): void {
  updates = { ...updates, ...changed };
  for (const listener of listeners) listener();
}

/** The keeper of the app hands in how the change is made. */
export function onChangeNow(how: () => Promise<void>): void {
  change = how;
}

/** The user said yes. */
export const changeNow = (): Promise<void> => change();
