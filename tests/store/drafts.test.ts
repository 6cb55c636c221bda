// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { clearDraft, draftKeyOf, flushDrafts, flushOnLeaving, loadDraft, setDraft, tabId } from '#store/drafts.ts';
import { newBook } from '#store/opening.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { diskFull, withFault } from './faults.ts';
import { library, openingFacts } from './scenario.ts';

beforeEach(async () => {
  testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
});
afterEach(() => vi.restoreAllMocks());

const name = 'sample:abc/stop';
const held = async (key = draftKeyOf(name)) => (await theSession().db.drafts.get(key))?.value;
const until = (kept: (resolve: (value: boolean) => void) => void): Promise<boolean> => new Promise(kept);

describe('a draft', () => {
  test('is durable within a second of the last keystroke, and says so', async () => {
    // The quickest of three: a busy machine is no defect.
    const tookMs: number[] = [];
    for (const last of ['three', 'some', 'four']) {
      const startedMs = performance.now();
      setDraft(name, 'f');
      setDraft(name, 'fo');
      const kept = await until((resolve) => setDraft(name, last, resolve));
      expect(kept).toBe(true);
      tookMs.push(performance.now() - startedMs);
    }
    expect(Math.min(...tookMs)).toBeLessThan(1000);
    expect(await held()).toBe('four');
  });

  test.each([
    ['the field is left', () => document.dispatchEvent(new Event('focusout'))],
    ['the page is hidden', () => document.dispatchEvent(new Event('visibilitychange'))],
    ['the page is closed', () => window.dispatchEvent(new Event('pagehide'))],
    ['the window loses the focus', () => window.dispatchEvent(new Event('blur'))],
  ])('is written at once when %s', async (_, leave) => {
    const undo = flushOnLeaving();
    setDraft(name, 'half a word');
    leave();
    await vi.waitFor(async () => expect(await held()).toBe('half a word'), { timeout: 200, interval: 5 });
    undo();
  });

  test('comes back to the same tab, and to no other screen', async () => {
    setDraft(name, { text: '2,5' });
    await flushDrafts();
    const { db } = theSession();
    expect(await loadDraft(db, name)).toEqual({ value: { text: '2,5' } });
    expect(await loadDraft(db, 'sample:abc/sto')).toBeNull();
    expect(await loadDraft(db, 'sample:abd/stop')).toBeNull();
  });

  test('of a tab that is gone is taken over by the next one, the newest first', async () => {
    const { db } = theSession();
    await db.drafts.bulkPut([
      { key: `${name}#tabone`, value: 'older', savedAt: '2026-11-25T10:00:00.000Z' },
      { key: `${name}#tabtwo`, value: 'newer', savedAt: '2026-11-25T10:05:00.000Z' },
    ]);
    expect(await loadDraft(db, name)).toEqual({ value: 'newer' });
    expect(await held()).toBe('newer');
    expect(await held(`${name}#tabtwo`)).toBeUndefined();
    expect(await held(`${name}#tabone`)).toBe('older');
  });

  test('of a tab that still lives stays with it', async () => {
    const locks = { query: async () => ({ held: [{ name: 'fullshift.tab.tabone' }] }), request: async () => undefined };
    vi.spyOn(globalThis, 'navigator', 'get').mockReturnValue({ locks } as unknown as Navigator);
    const { db } = theSession();
    await db.drafts.put({ key: `${name}#tabone`, value: 'theirs', savedAt: '2026-11-25T10:00:00.000Z' });
    expect(await loadDraft(db, name)).toBeNull();
  });

  test('goes in the transaction that makes it good, and no late timer brings it back', async () => {
    setDraft(name, 'waiting for its timer');
    expect(await write(openingFacts(library()), { draftKey: name })).toMatchObject({ kind: 'written' });
    await new Promise((done) => setTimeout(done, 400));
    await flushDrafts();
    expect(await held()).toBeUndefined();
  });

  test('that was waiting for its timer is kept when the write fails', async () => {
    setDraft(name, 'waiting for its timer');
    const { result } = await withFault({ at: 1, forEver: true, error: diskFull, changesOnly: true }, () =>
      write(openingFacts(library()), { draftKey: name }),
    );
    expect(result).toMatchObject({ kind: 'failed' });
    await flushDrafts();
    expect(await held()).toBe('waiting for its timer');
  });

  test('that the disk has no room for says that it is not kept, and is kept later', async () => {
    const { result } = await withFault({ at: 1, forEver: true, error: diskFull, changesOnly: true }, () =>
      until((resolve) => setDraft(name, 'long text', resolve)),
    );
    expect(result).toBe(false);
    await flushDrafts();
    expect(await held()).toBe('long text');
  });

  test('is thrown away only when someone says so', async () => {
    setDraft(name, 'x');
    await flushDrafts();
    await clearDraft(name);
    expect(await held()).toBeUndefined();
    expect(tabId()).toHaveLength(12);
  });
});
