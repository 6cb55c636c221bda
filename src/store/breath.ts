/**
 * Long work in pieces, so that a tap is answered meanwhile. Not by timers: a page out of view gets one a second, later one a minute.
 * Never inside a transaction, which would be over before the next piece.
 */
import { monotonicMs } from './device.ts';

/** Lets everything that waits have its turn: taps, paints, answers of the database. */
export const breathe = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });

/** Decided here: a frame at 60 a second lasts 17 ms. */
const pieceMs = 12;

/** Call the function handed back between small pieces of work: it breathes when they have lasted a while. */
export function pacer(): () => Promise<void> {
  let sinceMs = monotonicMs();
  return async () => {
    if (monotonicMs() - sinceMs < pieceMs) return;
    await breathe();
    sinceMs = monotonicMs();
  };
}
