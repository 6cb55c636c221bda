/**
 * A hand-over file: the whole book, or only what a partner lacked, in one file that can be read without this app. Made ahead of the tap
 * that hands it out. Looking into a file is in looking.ts, taking it in is in taking.ts.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { wallTimeOf } from '#core/calendar.ts';
import { sequenceOf, writerOf } from '#records/chain.ts';
import { type BookAbout, endLine, headerLine } from '#records/fileFormat.ts';
import type { BookDatabase, FileRow } from '../database.ts';
import { deviceZone, now } from '../device.ts';
import { type ChainHead, idsOf, wholeHeads } from '../heads.ts';
import { theSession } from '../session.ts';
import type { HandOver, HandOverWish, Progress } from './handOver.ts';
import { lackedFiles, setLackedFiles } from './lackedFiles.ts';
import { Packing, piecesOf, slicesOf } from './packing.ts';
import { deviceNameIn, type PartnerRow, partnerRow } from './partners.ts';
import { readmeOf } from './readme.ts';
import { type Scope, scopeFor } from './scope.ts';
import { Spool, type Spooled } from './spooling.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const extensions: Readonly<Record<string, string>> = { 'application/pdf': 'pdf', 'image/jpeg': 'jpg' };

/** Tells how far it has come and stops when asked to: called between pieces of work. */
type Tell = (step: Progress['step'], done: number, total: number) => void;

const teller =
  ({ onProgress, signal }: HandOverWish): Tell =>
  (step, done, total) => {
    signal?.throwIfAborted();
    onProgress?.({ step, done, total });
  };

async function spooled(db: BookDatabase, { stretches }: Scope, tell: Tell): Promise<Spooled> {
  const counts = await Promise.all(
    stretches.map(({ after, upTo }) =>
      idsOf(
        db,
        writerOf(upTo.factId),
        after === null ? 1 : sequenceOf(after.factId) + 1,
        sequenceOf(upTo.factId),
      ).count(),
    ),
  );
  const total = counts.reduce((sum, count) => sum + count, 0);
  const spool = new Spool();
  let done = 0;
  tell('reading', done, total);
  for (const stretch of stretches) {
    await spool.read(db, stretch, (count) => {
      done += count;
      tell('reading', done, total);
    });
  }
  return spool.done();
}

/** Without what is not sound here: it must be sent back by whoever holds it whole. */
function soundHeads(heads: readonly ChainHead[], { soundTo }: Spooled): readonly ChainHead[] {
  return heads.flatMap((head) => {
    const sound = soundTo.get(writerOf(head.factId));
    if (sound === undefined) return [head];
    if (sound === null) return [];
    return [sound.factId < head.factId ? sound : head];
  });
}

interface FilesWanted {
  readonly hashes: readonly string[];
  readonly lacking: readonly string[];
}

/** Which papers and pictures go along, and which are named here and not held. */
async function filesFor(db: BookDatabase, { namesFiles, mayNameFiles }: Spooled, partner: PartnerRow | null) {
  if (partner === null) {
    const hashes = await db.files.toCollection().primaryKeys();
    const held = new Set(hashes);
    const lacking = [...namesFiles].filter((hash) => !held.has(hash));
    await setLackedFiles(db, lacking);
    return { hashes, lacking } satisfies FilesWanted;
  }
  const wanted = new Set([...mayNameFiles, ...partner.lacksFiles]);
  const hashes = await db.files
    .where('hash')
    .anyOf([...wanted])
    .primaryKeys();
  return { hashes, lacking: await lackedFiles(db) } satisfies FilesWanted;
}

/** The text in pieces, hashed on its way, so that the end mark can close it. */
async function* bookText(header: Uint8Array, { lines, factsCount }: Spooled): AsyncGenerator<Uint8Array> {
  const hash = sha256.create().update(header);
  yield header;
  for await (const piece of piecesOf(lines)) {
    for (const slice of slicesOf(piece)) {
      hash.update(slice);
      yield slice;
    }
  }
  yield utf8(endLine(factsCount, bytesToHex(hash.digest())));
}

/** For the progress only: about what a file takes, in bytes of text. Its size is not known before it is read. */
const fileWeight = 100_000;

/**
 * Within what a device takes in (limits.ts: 400 MB, 500 MB unpacked, of which 150 MB text, 6,000 entries): a file that no device took in
 * would be no backup. What does not fit goes into a second one.
 */
const mostFiles = { count: 5000, bytes: 300_000_000 } as const;

const nameOf = (file: FileRow): string => `files/${file.hash}.${extensions[file.type] ?? 'bin'}`;

async function packed(
  db: BookDatabase,
  header: Uint8Array,
  spool: Spooled,
  hashes: readonly string[],
  wish: HandOverWish,
  tell: Tell,
): Promise<Pick<HandOver, 'blob' | 'filesCount' | 'filesLeftOut'>> {
  const zip = new Packing(wallTimeOf(now(), deviceZone()));
  await zip.deflate('README.txt', [utf8(readmeOf(wish.part))]);
  const textBytes = spool.lines.size;
  const total = textBytes + hashes.length * fileWeight;
  await zip.deflate('book.txt', bookText(header, spool), (done) => tell('packing', Math.min(done, textBytes), total));
  for (const { name, text } of wish.papers) await zip.deflate(`dictionary.${name}`, [utf8(text)]);
  if (spool.unreadable.size > 0) await zip.deflate('unreadable.txt', piecesOf(spool.unreadable));
  let filesCount = 0;
  let filesBytes = 0;
  for (const [index, hash] of hashes.entries()) {
    if (filesCount >= mostFiles.count || filesBytes >= mostFiles.bytes)
      return { blob: zip.end(), filesCount, filesLeftOut: { count: hashes.length - index, from: hash } };
    // One at a time: a few hundred pictures are more than a phone's memory has to spare.
    const file = await db.files.get(hash);
    if (file !== undefined) {
      await zip.store(nameOf(file), file.bytes);
      filesCount += 1;
      filesBytes += file.bytes.length;
    }
    tell('packing', textBytes + (index + 1) * fileWeight, total);
  }
  return { blob: zip.end(), filesCount };
}

function fileNameFor(which: string, { part, filesFrom }: HandOverWish): string {
  const { day, time } = wallTimeOf(now(), deviceZone());
  const book = which === 'practice' ? 'EXAMPLE' : 'book';
  const what = part === 'everything' ? 'everything' : 'news';
  return `fullshift-${book}-${what}-${day}-${time.replace(':', '')}${filesFrom === undefined ? '' : '-more'}.zip`;
}

/**
 * Reads the book and packs it, in bounded memory and in pieces that leave the page awake. Without a partner, or with one of whom no file
 * was ever taken in here, it is everything. Rejects with what the database throws, and with the signal's reason when it was stopped.
 */
export async function makeHandOver(asked: HandOverWish): Promise<HandOver> {
  const { db, bookId, which, writer } = theSession();
  const madeAt = now();
  const partner = asked.part === 'lacking' && asked.partner !== null ? await partnerRow(db, asked.partner) : null;
  const wish: HandOverWish = { ...asked, part: partner === null ? 'everything' : 'lacking' };
  const tell = teller(wish);
  const scope = await scopeFor(db, partner);
  const holds = await wholeHeads(db, scope.upTo);
  const bookFactsCount = await db.journal.count();
  const spool = await spooled(db, scope, tell);
  const { hashes, lacking } = await filesFor(db, spool, partner);
  const { filesFrom = '' } = wish;
  const about: BookAbout = {
    bookId,
    practice: which === 'practice',
    writtenBy: wish.writtenBy,
    part: wish.part,
    from: { writer, deviceName: await deviceNameIn(db), madeAt },
    holds: soundHeads(holds, spool),
    ...(partner === null ? {} : { since: [...scope.since] }),
    lacksFiles: lacking.slice(0, 5000),
  };
  const wanted = hashes.filter((hash) => hash >= filesFrom);
  const { blob, ...files } = await packed(db, utf8(headerLine(about, spool.heads)), spool, wanted, wish, tell);
  const made = { part: wish.part, partner: partner?.writer ?? null, factsCount: spool.factsCount, ...files };
  const name = fileNameFor(which, wish);
  if (wish.passphrase === null) return { blob, name, sealed: false, bookFactsCount, ...made };
  const { seal } = await import('./sealing.ts');
  const { onProgress, signal } = wish;
  const sealed = await seal(blob, wish.passphrase, {
    ...(onProgress === undefined ? {} : { onProgress }),
    ...(signal === undefined ? {} : { signal }),
  });
  signal?.throwIfAborted();
  return { blob: sealed, name: `${name}.age`, sealed: true, bookFactsCount, ...made };
}
