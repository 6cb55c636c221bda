/** From what was read of a file to what a person is shown of it. */
import type { BookRecord } from '#records/book.ts';
import { afterGap, gapsBetween } from '#records/stretches.ts';
import type { BookDatabase } from '../database.ts';
import type { Session } from '../session.ts';
import { contents } from './contents.ts';
import { disputesWith } from './disputes.ts';
import { beyondHeld, elsewhereIn, type TakeIns, withTold } from './elsewhere.ts';
import type { CheckedFiles } from './fileCheck.ts';
import type { Preview } from './handOver.ts';
import { missingIn, stretchesHeld } from './held.ts';
import { numbersShared } from './numbers.ts';
import type { ReadThrough } from './throughText.ts';

async function firmName(db: BookDatabase | null, bookId: string): Promise<string> {
  const row = await db?.records.get(`book:${bookId}`);
  return (row?.record as BookRecord | undefined)?.firmName ?? bookId;
}

const nameOf = (file: Blob): string => (typeof File !== 'undefined' && file instanceof File ? file.name : '');

/** What is said of the file before anything is taken in, and what a take-in needs of it. */
export async function previewOf(
  file: Blob,
  { header, comparison, fault }: ReadThrough,
  files: CheckedFiles,
  session: Session | null,
  takeIns: TakeIns,
): Promise<Preview> {
  const db = session?.db ?? null;
  const { bookId, practice, from = null } = header;
  const here = new Set(db === null ? [] : await db.files.toCollection().primaryKeys());
  const inFile = new Set(files.sound.map(({ hash }) => hash));
  const lacked = [...comparison.namedFiles].filter((hash) => !here.has(hash) && !inFile.has(hash));
  const held = db === null ? [] : (await stretchesHeld(db)).list();
  const gaps = gapsBetween(comparison.stretches.list(), held);
  const known = db === null ? [] : await elsewhereIn(db);
  const elsewhere = withTold(known, header, comparison.between?.to.at ?? null);
  const beyond = beyondHeld(elsewhere, [...held, ...comparison.stretches.list()]);
  const shared = await numbersShared(session, comparison.numbered);
  const sides = db === null ? { bothChanged: [], voidAgainstResult: [] } : await disputesWith(db, comparison);
  const preview: Preview = {
    kind: 'preview',
    fileName: nameOf(file),
    bookId,
    firmName: comparison.firmName ?? (await firmName(db, bookId)),
    practice,
    from: from === null ? null : { writer: from.writer, deviceName: from.deviceName, madeAt: from.madeAt },
    part: header.part === 'paper' ? 'paper' : (header.since?.length ?? 0) > 0 ? 'lacking' : 'everything',
    factsCount: comparison.factsCount,
    newCount: comparison.rows.length,
    newByKind: comparison.newByKind,
    newBetween: comparison.between,
    sameCount: comparison.sameCount,
    forks: comparison.forks,
    ...sides,
    sharedNumbers: shared.map(({ sampleNumber }) => sampleNumber),
    gaps: [...gaps, ...beyond.map(({ untilOn: _, ...gap }) => gap)],
    brokenCount: comparison.brokenCount,
    unreadableCount: comparison.unreadableCount,
    newerCount: comparison.newerCount,
    filesCount: files.sound.length,
    newFilesCount: files.sound.filter(({ hash }) => !here.has(hash)).length,
    filesDamagedCount: files.damagedCount,
    filesMissingCount: lacked.length,
    salvaged: fault !== null,
  };
  const after = new Set(gaps.map(afterGap));
  const texts = new Map(comparison.rows.filter(({ id }) => after.has(id)).map(({ id, text }) => [id, text]));
  contents.set(preview, {
    which: practice ? 'practice' : 'book',
    header,
    of: comparison.of(),
    rows: comparison.rows,
    rowsByKey: comparison.rowsByKey,
    numbered: comparison.numbered,
    files: files.sound.filter(({ hash }) => !here.has(hash)),
    paperHashes: [...inFile],
    lackedFiles: lacked,
    shared,
    missing: [...(await missingIn(db, gaps, (id) => texts.get(id))), ...beyond],
    elsewhere,
    takeIns,
    against: session,
  });
  return preview;
}
