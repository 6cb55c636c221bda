/**
 * What a browser has promised, kept outside of it: each transaction that it called complete, each tap that the page heard, and each
 * sentence that tells whoever holds the device that a thing is done. A promise that was still under way at a kill is not counted.
 */
import type { BrowserContext } from '@playwright/test';

interface Row {
  readonly id: string;
  readonly text: string;
}
interface DraftRow {
  readonly key: string;
  readonly value: unknown;
}

export type Said =
  | {
      readonly kind: 'complete';
      readonly facts: readonly Row[];
      readonly draftsKept: readonly DraftRow[];
      readonly draftsGone: readonly string[];
    }
  | { readonly kind: 'tapped'; readonly atMs: number }
  | { readonly kind: 'shown'; readonly text: string };

/** Runs in every page before the app does. Only listens: each call is passed on as it is. */
function listen(): void {
  const tell = (said: Said): void => {
    (globalThis as unknown as { tellOutside: (said: Said) => void }).tellOutside(said);
  };
  interface Written {
    readonly facts: Row[];
    readonly draftsKept: DraftRow[];
    readonly draftsGone: string[];
  }
  const writtenBy = new WeakMap<IDBTransaction, Written>();
  const writtenIn = (transaction: IDBTransaction): Written => {
    const known = writtenBy.get(transaction);
    if (known) return known;
    const written: Written = { facts: [], draftsKept: [], draftsGone: [] };
    writtenBy.set(transaction, written);
    transaction.addEventListener('complete', () => tell({ kind: 'complete', ...written }));
    return written;
  };
  const { add, put, delete: remove } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.add = function (value, ...key) {
    if (this.name === 'journal') writtenIn(this.transaction).facts.push({ id: value.id, text: value.text });
    return add.call(this, value, ...key);
  };
  IDBObjectStore.prototype.put = function (value, ...key) {
    if (this.name === 'drafts') writtenIn(this.transaction).draftsKept.push({ key: value.key, value: value.value });
    return put.call(this, value, ...key);
  };
  IDBObjectStore.prototype.delete = function (query) {
    if (this.name === 'drafts') writtenIn(this.transaction).draftsGone.push(String(query));
    return remove.call(this, query);
  };
  addEventListener(
    'click',
    (event) => event.isTrusted && tell({ kind: 'tapped', atMs: performance.timeOrigin + performance.now() }),
    { capture: true },
  );
  const shown = new Map<string, string>();
  const look = (): void => {
    for (const place of ['main h1', 'main p[role=status]']) {
      const text = document.querySelector(place)?.textContent ?? '';
      if (shown.get(place) === text) continue;
      shown.set(place, text);
      if (text !== '') tell({ kind: 'shown', text });
    }
  };
  new MutationObserver(look).observe(document, { subtree: true, childList: true, characterData: true });
}

interface Awaited {
  /** The kind of fact that the sentence stands for. */
  readonly factKind: string;
  readonly about: string;
  readonly sentence: RegExp;
}

/** A draft as it was last known to be on the disk; null once it was made good. */
export type DraftPromise = { readonly value: unknown } | null;

export interface Ledger {
  /** Text of each fact whose transaction was complete, by id. */
  readonly facts: ReadonlyMap<string, string>;
  readonly drafts: ReadonlyMap<string, DraftPromise>;
  /** How many facts of a kind about a record someone was shown to be saved: `kind about` -> count. */
  readonly shown: ReadonlyMap<string, number>;
  /** Transactions with facts in them that were called complete. */
  acknowledgedCount: number;
  /** What a kill left undecided, because its acknowledgement was still under way, is from now on as it was found. */
  readonly settleDrafts: (openForm: string, found: readonly DraftRow[]) => void;
  /** From the next tap on, this sentence means that such a fact is saved. */
  readonly await: (awaited: Awaited) => void;
  /** Resolves when it was shown. */
  readonly settled: () => Promise<void>;
  /** Called at each tap that the page heard, with the wall time of that tap. */
  onTap: (atMs: number) => void;
  readonly attachTo: (context: BrowserContext) => Promise<void>;
}

export function newLedger(): Ledger {
  const facts = new Map<string, string>();
  const drafts = new Map<string, DraftPromise>();
  const shown = new Map<string, number>();
  let awaited: Awaited | null = null;
  let whenShown: () => void = () => {};
  const complete = (said: Said & { kind: 'complete' }): void => {
    if (said.facts.length > 0) ledger.acknowledgedCount += 1;
    for (const { id, text } of said.facts) facts.set(id, text);
    for (const { key, value } of said.draftsKept) drafts.set(key, { value });
    for (const key of said.draftsGone) drafts.set(key, null);
  };
  const ledger: Ledger = {
    facts,
    drafts,
    shown,
    acknowledgedCount: 0,
    settleDrafts: (openForm, found) => {
      const valueByKey = new Map(found.map(({ key, value }) => [key, value]));
      for (const key of drafts.keys())
        if (key.startsWith(openForm)) drafts.set(key, valueByKey.has(key) ? { value: valueByKey.get(key) } : null);
    },
    await: (next) => {
      awaited = next;
    },
    settled: () =>
      awaited === null
        ? Promise.resolve()
        : new Promise((resolve) => {
            whenShown = resolve;
          }),
    onTap: () => {},
    attachTo: async (context) => {
      awaited = null;
      await context.exposeBinding('tellOutside', (_source, said: Said) => {
        if (said.kind === 'tapped') ledger.onTap(said.atMs);
        if (said.kind === 'complete') complete(said);
        if (said.kind !== 'shown' || awaited === null || !awaited.sentence.test(said.text)) return;
        const key = `${awaited.factKind} ${awaited.about}`;
        shown.set(key, (shown.get(key) ?? 0) + 1);
        awaited = null;
        whenShown();
      });
      await context.addInitScript(listen);
    },
  };
  return ledger;
}
