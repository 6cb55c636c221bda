/** One drawn file, the book's text that it would have to say if it were shown, and whether it came to what it must. */
import { deflateSync } from 'node:zlib';
import { Encrypter } from 'age-encryption';
import type { Preview } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { theSession } from '#store/session.ts';
import type { Lots } from '../records/interleavings.ts';
import { firstBroken, type Journal, unionWith } from './carrying.ts';
import { baseLines, bookText, type Line, utf8 } from './making.ts';
import { besideBase, changedBytes, changedLines, freshLines, hostileChain, hostileHeader } from './mutations.ts';
import { zip } from './zipMaking.ts';

export interface Drawn {
  readonly how: string;
  readonly bytes: Uint8Array;
  /** What it says where it is shown; null: what its bytes say. */
  readonly text: string | null;
  readonly passphrase?: string;
}

const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());
const sorted = (lines: readonly Line[]): Line[] => [...lines].sort((a, b) => (a.id < b.id ? -1 : 1));
const textOf = (lines: readonly Line[]): string => bookText(sorted([...baseLines(), ...lines]));

async function sealed(text: string): Promise<Uint8Array> {
  const encrypter = new Encrypter();
  encrypter.setPassphrase('oboe');
  encrypter.setScryptWorkFactor(1);
  return encrypter.encrypt(text);
}

function paper(text: string): Uint8Array {
  const packed = deflateSync(utf8(text));
  const head = `%PDF-1.7\n1 0 obj\n<< /Type /EmbeddedFile /Filter /FlateDecode /Length ${packed.length} >>\nstream\n`;
  return Buffer.concat([utf8(head), packed, utf8('\nendstream\nendobj\n%%EOF')]);
}

const archive = (text: string, stored: boolean): Promise<Uint8Array> =>
  bytesOf(
    zip([
      { name: 'README.txt', bytes: utf8('Read me'), stored: true },
      { name: 'book.txt', bytes: utf8(text), stored },
    ]),
  );

const ways: readonly ((lots: Lots) => Promise<Drawn> | Drawn)[] = [
  (lots) => ({ how: 'bytes of a text', bytes: changedBytes(utf8(textOf(freshLines(lots))), lots), text: null }),
  (lots) => ({ how: 'lines of a text', bytes: utf8(changedLines(textOf(freshLines(lots)), lots)), text: null }),
  (lots) => ({ how: 'values of a chain', bytes: utf8(textOf(hostileChain(lots))), text: null }),
  (lots) => ({
    how: 'values of a chain',
    bytes: utf8(textOf([...freshLines(lots), ...hostileChain(lots)])),
    text: null,
  }),
  (lots) => ({
    how: 'values of a header',
    bytes: utf8(hostileHeader(sorted([...baseLines(), ...freshLines(lots)]), lots)),
    text: null,
  }),
  (lots) => ({ how: 'beside what is here', bytes: utf8(bookText(besideBase(lots))), text: null }),
  async (lots) => {
    const text = textOf(freshLines(lots));
    return { how: 'bytes of an archive', bytes: changedBytes(await archive(text, lots.upTo(2) === 0), lots), text };
  },
  async (lots) => {
    const text = textOf(freshLines(lots));
    return { how: 'bytes of a sealed file', bytes: changedBytes(await sealed(text), lots), text, passphrase: 'oboe' };
  },
  (lots) => {
    const text = textOf(freshLines(lots));
    return { how: 'bytes of a paper', bytes: changedBytes(paper(text), lots), text };
  },
];

/** Texts and archives come most often. */
export const draw = (lots: Lots): Promise<Drawn> | Drawn => (lots.one(ways) as (typeof ways)[number])(lots);

const mostMs = 5000;

async function journalHere(): Promise<Journal> {
  const rows = await theSession().db.journal.toArray();
  return new Map(rows.map(({ id, link, text }) => [id, `${link} ${text}`]));
}

const differs = (one: Journal, other: Journal): string | null => {
  if (one.size !== other.size) return `${one.size} facts instead of ${other.size}`;
  for (const [id, line] of other) if (one.get(id) !== line) return `${id} is not what it should be`;
  return null;
};

export interface Met {
  readonly outcome: string;
  readonly held: Journal;
  /** null: all is as it must be. */
  readonly wrong: string | null;
}

/** Taken in, and the journal held against the plain union of what was here and what the text says. */
async function meetShown(looked: Preview, text: string, held: Journal): Promise<Met> {
  const outcome = await takeIn(looked);
  const now = await journalHere();
  if (outcome.kind === 'refused' && outcome.why === 'forks')
    return { outcome: 'fork', held: now, wrong: looked.forks.length === 0 ? 'no fork was named' : differs(now, held) };
  if (outcome.kind !== 'takenIn') return { outcome: outcome.kind, held: now, wrong: JSON.stringify(outcome) };
  const broken = firstBroken(now);
  const wrong = differs(now, unionWith(held, text)) ?? (broken === null ? null : `the link of ${broken}`);
  return { outcome: looked.newCount > 0 ? 'taken' : 'nothing new', held: now, wrong };
}

/** Looks, takes what is shown, and tells what is not as it must be. Throws what the app throws. */
export async function meet({ bytes, text, passphrase }: Drawn, held: Journal): Promise<Met> {
  const startedMs = performance.now();
  const file = new Blob([bytes as Uint8Array<ArrayBuffer>]);
  const options = passphrase === undefined ? {} : { passphrase };
  const looked = await lookInto(file, options);
  if (looked.kind === 'preview') return meetShown(looked, text ?? new TextDecoder().decode(bytes), held);
  const said = looked.kind === 'refused' ? looked.why : looked.kind;
  const left = looked.kind === 'refused' && looked.intactCount > 0;
  if (left) await lookInto(file, { ...options, salvage: true });
  const tookMs = performance.now() - startedMs;
  const wrong = tookMs > mostMs ? `took ${Math.round(tookMs)} ms` : null;
  return { outcome: left ? `${said}, in part` : said, held, wrong };
}
