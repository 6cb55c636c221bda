/** Seals in the built app as its pages do, by the built files and under the headers that the app is served with. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';

export const passphrase = 'walnut easel gravel canine unicorn lantern oboe';

export interface SealedInPage {
  readonly sealMs: number;
  readonly openMs: number;
  /** The longest task of the page meanwhile that the browser noticed: it tells those over 50 ms; 0 when there was none. */
  readonly longestTaskMs: number;
  /** The longest time between two turns of the page, by a timer of 4 ms. */
  readonly longestTurnMs: number;
  readonly sameBytes: boolean;
  readonly base64: string;
}

/** Random bytes sealed and opened again. `asBase64`: hands back what was sealed, for small ones. */
export async function sealInPage(page: Page, bytesCount: number, asBase64 = false): Promise<SealedInPage> {
  const chunk = readdirSync(join(process.env.BUILT_IN ?? 'dist', 'assets')).find((name) =>
    /^sealing-.*\.js$/.test(name),
  );
  if (chunk === undefined) throw new Error('the built app has no file that seals');
  return page.evaluate(
    async ([path, count, words, wanted]) => {
      // No function with a name in here: it is sent to the page as text, without what names it.
      const { seal, unseal } = await import(new URL(path, document.baseURI).href);
      const content = new Uint8Array(count);
      for (let at = 0; at < count; at += 65_536) crypto.getRandomValues(content.subarray(at, at + 65_536));
      const found = { longestTaskMs: 0, longestTurnMs: 0, lastMs: performance.now() };
      const observer = new PerformanceObserver((list) => {
        for (const { duration } of list.getEntries()) found.longestTaskMs = Math.max(found.longestTaskMs, duration);
      });
      observer.observe({ type: 'longtask' });
      const timer = setInterval(() => {
        const nowMs = performance.now();
        found.longestTurnMs = Math.max(found.longestTurnMs, nowMs - found.lastMs);
        found.lastMs = nowMs;
      }, 4);
      const startedMs = performance.now();
      const sealed: Blob = await seal(new Blob([content]), words);
      const sealedMs = performance.now();
      const opened = await unseal(sealed, words);
      const openedMs = performance.now();
      await new Promise((resolve) => setTimeout(resolve, 100));
      clearInterval(timer);
      observer.disconnect();
      const back = opened.kind === 'opened' ? new Uint8Array(await opened.blob.arrayBuffer()) : new Uint8Array();
      const bytes = wanted ? new Uint8Array(await sealed.arrayBuffer()) : new Uint8Array();
      return {
        sealMs: sealedMs - startedMs,
        openMs: openedMs - sealedMs,
        longestTaskMs: found.longestTaskMs,
        longestTurnMs: found.longestTurnMs,
        sameBytes: back.length === count && back.every((byte, at) => byte === content[at]),
        base64: btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')),
      };
    },
    [`assets/${chunk}`, bytesCount, passphrase, asBase64] as const,
  );
}
