/** One file against a device: looked into, taken in where it is shown, and the book held against what must be in it. */
import { createHash } from 'node:crypto';
import type { LookOptions, Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { openBooks } from '#store/opening.ts';
import { openSession } from '#store/session.ts';
import { newDevice, pickUp, testClock } from '../store/device.ts';
import type { BadFile } from './badFile.ts';
import { baseLines, bookText, type Line } from './making.ts';

/** The canonical hash: every fact with its link in the order of ids, and the hash of every file. null where there is no book. */
export async function hashOfBook(): Promise<string | null> {
  const session = openSession();
  if (session === null) return null;
  const files = await session.db.files.toArray();
  const hashes = files.map(({ bytes }) => createHash('sha256').update(bytes).digest('hex'));
  return hashOfUnion(await session.db.journal.toArray(), hashes);
}

/** The same of what should be there. */
export function hashOfUnion(
  lines: readonly Pick<Line, 'id' | 'text' | 'link'>[],
  files: readonly string[] = [],
): string {
  const hash = createHash('sha256');
  for (const { id, link, text } of [...lines].sort((a, b) => (a.id < b.id ? -1 : 1)))
    hash.update(`${id} ${link} ${text}\n`);
  for (const file of [...files].sort()) hash.update(`${file}\n`);
  return hash.digest('hex');
}

/** A device that holds the corpus's book, its practice book, or nothing. */
export async function deviceWith(into: NonNullable<BadFile['into']>): Promise<readonly Line[]> {
  testClock();
  await pickUp(newDevice());
  await openBooks();
  if (into === 'nothing') return [];
  const practice = into === 'practice';
  const lines = baseLines(practice);
  const looked = await lookInto(new Blob([bookText(lines, { header: { practice } })]));
  if (looked.kind !== 'preview') throw new Error(`the corpus's own book: ${JSON.stringify(looked)}`);
  const outcome = await takeIn(looked);
  if (outcome.kind !== 'takenIn') throw new Error(`the corpus's own book: ${JSON.stringify(outcome)}`);
  return lines;
}

/** What of the preview is not as written; empty where all is. */
const wrongIn = (looked: Preview, shown: Partial<Preview>): string =>
  Object.entries(shown)
    .filter(([name, value]) => JSON.stringify(looked[name as keyof Preview]) !== JSON.stringify(value))
    .map(([name, value]) => `${name} is ${JSON.stringify(looked[name as keyof Preview])}, not ${JSON.stringify(value)}`)
    .join('; ');

const isPoisoned = (): boolean => Object.keys(Object.prototype).length > 0 || 'poisoned' in {};

async function afterwards(wanted: string | null): Promise<string> {
  if (isPoisoned()) return 'the prototype of all objects was changed';
  return (await hashOfBook()) === wanted ? '' : 'the book is not what it should be';
}

const options = ({ passphrase }: BadFile): LookOptions => (passphrase === undefined ? {} : { passphrase });

async function judgedUnseen(bad: BadFile, file: Blob, said: string, before: string | null): Promise<string> {
  const { expected } = bad;
  const wanted = expected.kind === 'refused' ? expected.why : expected.kind;
  if (said !== wanted) return `it is ${said}, not ${wanted}`;
  // What is left of a damaged one may be shown when it is asked for, and changes nothing either.
  if (said === 'damaged') await lookInto(file, { ...options(bad), salvage: true });
  return afterwards(before);
}

async function judgedSeen({ expected }: BadFile, looked: Preview, held: readonly Line[], before: string | null) {
  if (expected.kind === 'refused' || expected.kind === 'sealed') return `it is shown, not ${JSON.stringify(expected)}`;
  const wrong = wrongIn(looked, expected.shown);
  if (wrong !== '') return wrong;
  if ((await hashOfBook()) !== before) return 'looking changed the book';
  const outcome = await takeIn(looked);
  if (expected.kind === 'notTaken')
    return outcome.kind === 'refused' ? afterwards(before) : `taking in said ${JSON.stringify(outcome)}`;
  if (outcome.kind !== 'takenIn') return `taking in said ${JSON.stringify(outcome)}`;
  return afterwards(hashOfUnion([...held, ...expected.adds], expected.files));
}

/** Empty when all is as expected; otherwise what is not. Throws what the app throws. */
export async function judged(bad: BadFile, file: Blob, held: readonly Line[]): Promise<string> {
  const before = await hashOfBook();
  const looked = await lookInto(file, options(bad));
  return looked.kind === 'preview'
    ? judgedSeen(bad, looked, held, before)
    : judgedUnseen(bad, file, looked.kind === 'refused' ? looked.why : looked.kind, before);
}
