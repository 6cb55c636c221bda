/**
 * An append beside its bare minimum: the requests that one `write` makes are noted, and made again by hand in one strict transaction of
 * the same database, one after the other as the write makes them. Both in turns, so that whatever else runs here weighs on both.
 */
import type { JournalRow } from '#store/database.ts';
import { theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { entry, library, openingFacts, sampleOf } from '#tests/store/scenario.ts';

type Method = (this: IDBObjectStore | IDBIndex, ...args: unknown[]) => IDBRequest;
interface Asked {
  readonly store: string;
  readonly index: string | null;
  readonly method: string;
  readonly args: readonly unknown[];
}

const methods = [
  'get',
  'getAll',
  'getKey',
  'getAllKeys',
  'openCursor',
  'openKeyCursor',
  'count',
  'add',
  'put',
  'delete',
];

/** Notes each request of writing transactions while `work` runs. */
async function noting(work: () => Promise<unknown>): Promise<readonly Asked[]> {
  const asked: Asked[] = [];
  const undo: (() => void)[] = [];
  for (const owner of [IDBObjectStore.prototype, IDBIndex.prototype]) {
    const held = owner as unknown as Record<string, Method | undefined>;
    for (const method of methods) {
      const original = held[method];
      if (original === undefined) continue;
      held[method] = function noted(...args) {
        const store = this instanceof IDBIndex ? this.objectStore : this;
        const index = this instanceof IDBIndex ? this.name : null;
        if (store.transaction.mode === 'readwrite') asked.push({ store: store.name, index, method, args });
        return original.apply(this, args);
      };
      undo.push(() => {
        held[method] = original;
      });
    }
  }
  try {
    await work();
  } finally {
    for (const restore of undo) restore();
  }
  return asked;
}

/** The noted fact goes in once more under a name and a record of its own, so that neither disturbs the other. */
function again({ method, args }: Asked): readonly unknown[] {
  const [row] = args as [JournalRow];
  return method === 'add' ? [{ ...row, id: `bare.${row.id}`, about: row.about.map((key) => `bare:${key}`) }] : args;
}

const answered = (request: IDBRequest): Promise<void> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve();
    request.onerror = () => reject(request.error);
  });

async function bare(database: IDBDatabase, stores: readonly string[], asked: readonly Asked[]): Promise<void> {
  const transaction = database.transaction([...stores], 'readwrite', { durability: 'strict' });
  const complete = new Promise<void>((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
  });
  for (const each of asked) {
    const store = transaction.objectStore(each.store);
    const owner = (each.index === null ? store : store.index(each.index)) as unknown as Record<string, Method>;
    const made = owner[each.method]?.apply(owner as never, [...again(each)]);
    if (made) await answered(made);
  }
  await complete;
}

export interface AppendTimes {
  readonly appendMs: readonly number[];
  readonly bareMs: readonly number[];
  readonly requestsCount: number;
}

/** Eight looks to a sample, as a long day has. The first `warm` pairs are not counted. */
export async function timeAppends(pairs: number, warm: number): Promise<AppendTimes> {
  const { db } = theSession();
  const day = library();
  await write(openingFacts(day));
  const appendMs: number[] = [];
  const bareMs: number[] = [];
  let asked: readonly Asked[] = [];
  let sample = sampleOf(day);
  for (let pair = 0; pair < pairs + warm; pair += 1) {
    if (pair % 8 === 0) {
      sample = sampleOf(day);
      const written = await write([sample.prepared(entry())]);
      if (written.kind !== 'written') throw new Error(JSON.stringify(written));
    }
    const look = [sample.remark(`Looked, ${pair}`)(entry())];
    let startedMs = 0;
    let tookMs = 0;
    asked = await noting(async () => {
      startedMs = performance.now();
      const written = await write(look, { draftKey: 'bench' });
      tookMs = performance.now() - startedMs;
      if (written.kind !== 'written') throw new Error(JSON.stringify(written));
    });
    startedMs = performance.now();
    await bare(db.backendDB(), ['journal', 'records', 'drafts', 'meta'], asked);
    const bareTookMs = performance.now() - startedMs;
    if (pair < warm) continue;
    appendMs.push(tookMs);
    bareMs.push(bareTookMs);
  }
  return { appendMs, bareMs, requestsCount: asked.length };
}
