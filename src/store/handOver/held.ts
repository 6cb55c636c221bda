/** What this device holds beside what comes in, read in slices: neighbours by id, stretches of sequences, what is missing. */
import type { MissingEntries } from '#records/book.ts';
import { factIdOf, sequenceOf, writerOf } from '#records/chain.ts';
import { missingOf } from '#records/exchange.ts';
import type { Gap } from '#records/merge.ts';
import type { HeldEntry } from '#records/sifting.ts';
import { afterGap, gapsBetween, Stretches } from '#records/stretches.ts';
import { pacer } from '../breath.ts';
import type { BookDatabase, JournalRow } from '../database.ts';
import { isReadable } from '../folding.ts';
import { beyondHeld, elsewhereIn } from './elsewhere.ts';

interface Run {
  readonly writer: string;
  readonly from: number;
  to: number;
}

/** Ids in order, as runs of one writer without a gap. */
function runsOf(ids: readonly string[]): readonly Run[] {
  const runs: Run[] = [];
  for (const id of ids) {
    const [writer, sequence] = [writerOf(id), sequenceOf(id)];
    const last = runs.at(-1);
    if (last?.writer === writer && sequence === last.to + 1) last.to = sequence;
    else runs.push({ writer, from: sequence, to: sequence });
  }
  return runs;
}

/** Held entries among these ids (in order) and right before and after them. */
export async function heldAround(db: BookDatabase, ids: readonly string[]): Promise<ReadonlyMap<string, HeldEntry>> {
  const found = new Map<string, HeldEntry>();
  const answers = await db.transaction('r', db.journal, async () =>
    Promise.all(
      runsOf(ids).map(({ writer, from, to }) =>
        db.journal
          .where('id')
          .between(factIdOf(writer, from - 1), factIdOf(writer, to + 1), true, true)
          .toArray(),
      ),
    ),
  );
  for (const { id, text, link } of answers.flat()) found.set(id, { text, link });
  return found;
}

/** Which of these ids (in order) are held; inside the caller's transaction. */
export async function heldAmong(db: BookDatabase, ids: readonly string[]): Promise<ReadonlySet<string>> {
  const answers = await Promise.all(
    runsOf(ids).map(({ writer, from, to }) =>
      db.journal.where('id').between(factIdOf(writer, from), factIdOf(writer, to), true, true).primaryKeys(),
    ),
  );
  return new Set(answers.flat());
}

const sliceKeys = 10_000;
const idShape = /^[0-9a-hjkmnp-tv-z]{12}\.\d{8}$/;

/** The stretches of all that is held. */
export async function stretchesHeld(db: BookDatabase): Promise<Stretches> {
  const stretches = new Stretches();
  const pace = pacer();
  for (let from = ''; ; ) {
    const ids = await db.journal.where('id').above(from).limit(sliceKeys).primaryKeys();
    for (const id of ids) if (idShape.test(id)) stretches.add(id);
    const last = ids.at(-1);
    if (last === undefined) return stretches;
    from = last;
    await pace();
  }
}

/** No day is known: everything may be touched by what is missing. */
const forEver = '9999-12-31';

const untilOn = (row: Pick<JournalRow, 'id' | 'text'> | undefined): string =>
  row !== undefined && isReadable(row) ? (missingOf([row])[0]?.untilOn ?? forEver) : forEver;

/** Gaps with the day until which they may bear on something. `textOf`: entries that are about to be held; `db`: null on an empty device. */
export async function missingIn(
  db: BookDatabase | null,
  gaps: readonly Gap[],
  textOf: (id: string) => string | undefined,
): Promise<readonly MissingEntries[]> {
  const missing: MissingEntries[] = [];
  for (const gap of gaps) {
    const id = afterGap(gap);
    const text = textOf(id);
    missing.push({ ...gap, untilOn: untilOn(text === undefined ? await db?.journal.get(id) : { id, text }) });
  }
  return missing;
}

/** What is missing in the journal as it stands. */
export async function missingHere(db: BookDatabase): Promise<readonly MissingEntries[]> {
  const held = (await stretchesHeld(db)).list();
  const between = await missingIn(db, gapsBetween(held, []), () => undefined);
  return [...between, ...beyondHeld(await elsewhereIn(db), held)];
}
