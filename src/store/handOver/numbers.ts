/** Sample numbers that would stand on more than one cassette once a file is taken in. Only numbers that the file brings are looked at. */
import { readFact } from '#records/canonical.ts';
import { type SameNumber, sameNumber } from '#records/sampleNumber.ts';
import { pacer } from '../breath.ts';
import type { BookDatabase } from '../database.ts';
import { samplesOf } from '../lookup.ts';
import { derivedIsComplete } from '../marks.ts';
import { numberLink } from '../rows.ts';
import type { Session } from '../session.ts';
import type { Numbered } from './comparing.ts';

interface Bearer {
  readonly id: string;
  readonly sampleNumber: string;
}

/** Labels are left out: a cassette may take the number of a label of its own day. */
const isBorne = (one: Numbered): one is Numbered & Bearer => one.id !== null;

const sliceCount = 200;

/** Cassettes here that bear one of these numbers, by index. */
async function bearersByIndex(db: BookDatabase, numbers: readonly string[]): Promise<readonly Bearer[]> {
  const found: Bearer[] = [];
  const pace = pacer();
  for (let from = 0; from < numbers.length; from += sliceCount) {
    const links = numbers.slice(from, from + sliceCount).map(numberLink);
    const answers = await db.transaction('r', db.records, async () =>
      Promise.all(links.map((link) => db.records.where('links').equals(link).toArray())),
    );
    found.push(...samplesOf(answers.flat()));
    await pace();
  }
  return found;
}

const sliceRows = 1000;

/** The same from the journal, while the derived rows are not whole. */
async function bearersInJournal(db: BookDatabase, numbers: readonly string[]): Promise<readonly Bearer[]> {
  const wanted = new Set(numbers);
  const found: Bearer[] = [];
  const pace = pacer();
  for (let after = ''; ; ) {
    const rows = await db.journal.where('id').above(after).limit(sliceRows).toArray();
    for (const { text } of rows) {
      if (!/"(samplePrepared|blankOpened)\.v1"/.test(text)) continue;
      const read = readFact(text);
      if (read.kind !== 'known') continue;
      const { sampleId: id, sampleNumber } = read.fact.body as { sampleId: string; sampleNumber: string };
      if (wanted.has(sampleNumber)) found.push({ id, sampleNumber });
    }
    const last = rows.at(-1);
    if (last === undefined) return found;
    after = last.id;
    await pace();
  }
}

/** Labels that two cassettes would bear. `session`: null on an empty device. */
export async function numbersShared(session: Session | null, all: readonly Numbered[]): Promise<readonly SameNumber[]> {
  const numbered = all.filter(isBorne);
  const numbers = [...new Set(numbered.map(({ sampleNumber }) => sampleNumber))];
  const bearers = new Map<string, Bearer>();
  if (session !== null && numbers.length > 0) {
    const { db, which } = session;
    const held = await (derivedIsComplete(which) ? bearersByIndex(db, numbers) : bearersInJournal(db, numbers));
    for (const bearer of held) bearers.set(bearer.id, bearer);
  }
  for (const bearer of numbered) bearers.set(bearer.id, bearer);
  return sameNumber(bearers.values());
}
