/**
 * Lets every request of a write fail in turn: once, for ever, and one more during the recovery; by a lost connection, a full disk, and a
 * full disk as browsers tell it, by aborting the transaction. After each run the rows are read out of the engine itself and must be
 * exactly those from before or exactly those from after, as the answer said; then the book is opened again and goes on.
 */
import { isDeepStrictEqual } from 'node:util';
import { expect } from 'vitest';
import { verifyChain, writerOf } from '#records/chain.ts';
import { forgetRun } from '#store/clock.ts';
import { type DerivedRow, databaseNames, type JournalRow } from '#store/database.ts';
import { setPorts } from '#store/device.ts';
import { forgetDrafts } from '#store/drafts.ts';
import { derivedRow } from '#store/folding.ts';
import { factsByKey } from '#store/lookup.ts';
import { setDerivedComplete } from '#store/marks.ts';
import { closeBook, openBooks } from '#store/opening.ts';
import { rebuildSettled } from '#store/rebuild.ts';
import { bookState, theSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { pickUp, type TestClock, type TestDevice } from './device.ts';
import { copyOf, rowsIn } from './deviceCopy.ts';
import { diskFull, type Fault, lostConnection, withFault } from './faults.ts';
import { entry, sampleOf } from './scenario.ts';
import { seededRandom } from './seeded.ts';

export type Answer = 'done' | 'failed';

export interface UseCase {
  readonly name: string;
  readonly start: TestDevice;
  /** No book is there yet. */
  readonly empty?: boolean;
  /** Outside the fault: what a page had ready before the tap. */
  readonly ready?: () => Promise<unknown>;
  readonly act: (ready: unknown) => Promise<Answer>;
  /** What may be found besides all or nothing, and why is said where it is used. */
  readonly between?: (found: State, before: State, after: State, answer: Answer) => boolean;
  /** The book is gone afterwards, where the act was done. */
  readonly wipes?: boolean;
}

/** What lasts, line by line. Derived rows and what the browser promised can be made again and are left out. */
export interface State {
  readonly journal: readonly string[];
  readonly beside: readonly string[];
}

const disposable = new Set(['derived', 'unreadable', 'persisted']);

/** The engine replaces rows and never changes one, and copies of a device share them: one line is made of each. */
const lines = new WeakMap<object, string>();
function lineOf(row: Readonly<Record<string, unknown>>): string {
  const { id, link, text, about } = row;
  const line = lines.get(row) ?? JSON.stringify({ id, link, text, about });
  lines.set(row, line);
  return line;
}

function stateOf(device: TestDevice): State {
  const rows = rowsIn(device, databaseNames.book);
  const of = (store: string) => (rows.get(store) ?? []) as readonly Record<string, unknown>[];
  return {
    journal: of('journal').map(lineOf),
    beside: [
      ...of('files').map(({ hash, bytes }) => `file ${hash} ${(bytes as Uint8Array).length}`),
      ...of('drafts').map(({ key, value }) => `draft ${key} ${JSON.stringify(value)}`),
      ...of('meta').flatMap((row) => (disposable.has(String(row.key)) ? [] : [`meta ${JSON.stringify(row)}`])),
    ],
  };
}

export const alike = (a: State, b: State): boolean => isDeepStrictEqual(a, b);

export interface Mode {
  readonly name: string;
  readonly fault: Omit<Fault, 'at' | 'then'>;
  /** A second fault, at every place after the first. */
  readonly stacked?: boolean;
}

const lost = { error: lostConnection, widely: true };
const full = { error: diskFull, changesOnly: true };

export const modes: readonly Mode[] = [
  { name: 'lost once', fault: { ...lost, forEver: false } },
  { name: 'lost for ever', fault: { ...lost, forEver: true } },
  { name: 'full once', fault: { ...full, forEver: false } },
  { name: 'full for ever', fault: { ...full, forEver: true } },
  { name: 'aborted as full once', fault: { ...full, forEver: false, byAbort: true } },
  { name: 'aborted as full for ever', fault: { ...full, forEver: true, byAbort: true } },
];

export const stackedModes: readonly Mode[] = [
  { name: 'lost, then lost again', fault: { ...lost, forEver: false }, stacked: true },
  { name: 'full, then full again', fault: { ...full, forEver: false }, stacked: true },
];

const linesOf = ({ journal, beside }: State): readonly string[] => [...journal, ...beside];
const same = { lost: [], tooMuch: [] };
function differing(expected: State, found: State) {
  const short = (lines: readonly string[]) => lines.map((line) => line.replace(/"link":"\w+",/, '').slice(0, 160));
  const [wanted, held] = [linesOf(expected), linesOf(found)];
  const lost = wanted.filter((line) => !held.includes(line));
  return { lost: short(lost), tooMuch: short(held.filter((line) => !wanted.includes(line))) };
}

/** Folded from the journal alone. Most records are the same in thousands of runs: each is folded once from the same facts. */
const folded = new Map<string, DerivedRow | null>();
function foldedFrom(journal: readonly JournalRow[]): DerivedRow[] {
  const rows = [...factsByKey(journal)].map(([key, facts]) => {
    const from = JSON.stringify([key, facts.map(({ id, text, link }) => [id, text, link])]);
    const row = folded.get(from) ?? derivedRow(key, facts);
    folded.set(from, row);
    return row;
  });
  return rows.filter((row) => row !== null).sort(byKey);
}

const byKey = (a: { key: string }, b: { key: string }): number => (a.key < b.key ? -1 : 1);

/** Counts what was injected, by mode. */
export type Tally = Map<string, number>;
export const total = (tally: Tally): number => [...tally.values()].reduce((sum, count) => sum + count, 0);

export function faultsOf(clock: TestClock, runningId: string, tally: Tally) {
  const startMs = clock.atMs;
  const sample = sampleOf({} as never, runningId);

  /** The same device, the same clock, the same random numbers: what is written differs in nothing from the run before. */
  async function begin({ start, empty = false }: UseCase): Promise<TestDevice> {
    await rebuildSettled();
    forgetDrafts();
    const device = copyOf(start);
    await pickUp(device);
    forgetRun();
    clock.atMs = startMs;
    // Long after the last loss, so that this one is a loss of its own.
    clock.monotonicMs += 10_000;
    const { between } = seededRandom(20261125);
    const random = (bytes: Uint8Array<ArrayBuffer>): void => void bytes.set(Array.from(bytes, () => between(0, 255)));
    setPorts({ wallMs: () => clock.atMs, monotonicMs: () => clock.monotonicMs, random });
    setDerivedComplete('book', true);
    await openBooks();
    expect(bookState()).toMatchObject({ kind: empty ? 'none' : 'open' });
    await rebuildSettled();
    return device;
  }

  const acted = async (useCase: UseCase, ready: unknown): Promise<Answer> => {
    const answer = await useCase.act(ready);
    await rebuildSettled();
    return answer;
  };

  /** Opened again, the lists say what the journal says, every chain holds, and the next tap is written. */
  async function goesOn(what: string): Promise<void> {
    await closeBook();
    await openBooks();
    await rebuildSettled();
    expect(bookState(), what).toMatchObject({ kind: 'open', rebuilding: null });
    const { db } = theSession();
    const journal = await db.journal.orderBy('id').toArray();
    const [held, wanted] = [(await db.records.toArray()).sort(byKey), foldedFrom(journal)];
    // The strict comparison of the platform is quick; what differs for it is told by the other.
    if (!isDeepStrictEqual(held, wanted)) expect(held, what).toEqual(wanted);
    for (const writer of new Set(journal.map(({ id }) => writerOf(id)))) expectChain(journal, writer, what);
    clock.forward(600_000);
    const holds = journal.some(({ about }) => about.includes(`sample:${runningId}`));
    const next = holds ? sample.remark('goes on') : null;
    if (next !== null)
      expect({ what, next: await write([next(entry())]) }).toMatchObject({ next: { kind: 'written' } });
  }

  async function once(useCase: UseCase, mode: Mode, fault: Fault, before: State, after: State) {
    const device = await begin(useCase);
    const ready = await useCase.ready?.();
    const run = await withFault(fault, () => acted(useCase, ready));
    if (run.struckCount === 0) return run;
    const what = `${useCase.name}: ${mode.name} at ${fault.at}${fault.then ? ` and ${fault.then} later` : ''}`;
    tally.set(mode.name, (tally.get(mode.name) ?? 0) + Math.min(run.struckCount, 2));
    const found = stateOf(device);
    const told = (answer: Answer): State => (answer === 'done' ? after : before);
    if (!alike(found, told(run.result)) && useCase.between?.(found, before, after, run.result) !== true)
      expect({ what, answer: run.result, ...differing(told(run.result), found) }).toEqual({
        what,
        answer: run.result,
        ...same,
      });
    if (found.journal.length > 0) await goesOn(what);
    return run;
  }

  /** How many faults were injected into this use case. */
  async function everyRequest(useCase: UseCase, which: readonly Mode[]): Promise<number> {
    const device = await begin(useCase);
    const ready = await useCase.ready?.();
    const before = stateOf(device);
    expect(await acted(useCase, ready), useCase.name).toBe('done');
    const after = stateOf(device);
    expect(alike(before, after), useCase.name).toBe(false);
    const already = total(tally);
    for (const mode of which) {
      for (let at = 1; ; at += 1) {
        const { struckCount } = mode.stacked
          ? await secondEverywhere(useCase, mode, at, before, after)
          : await once(useCase, mode, { ...mode.fault, at }, before, after);
        if (struckCount === 0) break;
      }
    }
    return total(tally) - already;
  }

  async function secondEverywhere(useCase: UseCase, mode: Mode, at: number, before: State, after: State) {
    // At each of the next six places, then at every fourth: recoveries are long, and their steps alike.
    for (let then = 1; ; then += then < 6 ? 1 : 4) {
      const run = await once(useCase, mode, { ...mode.fault, at, then }, before, after);
      if (run.struckCount < 2) return run;
    }
  }

  return { everyRequest };
}

/** Chains that were verified, entry by entry: most runs end with the same. */
const sound = new Set<string>();

/** Entries of a writer from the first on, or after a gap: what stands side by side is linked. */
function expectChain(journal: readonly JournalRow[], writer: string, what: string): void {
  const rows = journal.filter(({ id }) => writerOf(id) === writer);
  const gapAt = rows.findIndex(({ id }, at) => Number(id.slice(-8)) !== at + 1);
  const whole = gapAt === -1 ? rows : rows.slice(0, gapAt);
  const as = JSON.stringify(whole.map(({ id, text, link }) => [id, text, link]));
  if (sound.has(as)) return;
  expect(verifyChain(whole), what).toBeNull();
  sound.add(as);
}
