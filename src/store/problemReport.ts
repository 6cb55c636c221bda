/**
 * A text for whoever looks into a problem: versions, counts, what the browser says of its storage, marks, the last errors. It holds no
 * name, number or note of the book: counts are all that is asked of it, and messages of errors are searched for what stands in it.
 */
import { databaseNames, databaseVersion, type Which } from './database.ts';
import { deviceZone, estimate, now, persisted } from './device.ts';
import { derivedEdition } from './edition.ts';
import { isInstalled } from './handOver/delivery.ts';
import { type LastError, lastErrors } from './lastErrors.ts';
import { derivedIsComplete, heldMark, lastOpened } from './marks.ts';
import { bookState, openSession, type Session } from './session.ts';
import { appVersion } from './version.ts';
import { wordsInBooks, wordsOf } from './wordsOfBooks.ts';

export interface ReportInput {
  /** Editions and versions that layers above know: name -> value. */
  readonly editions: Readonly<Record<string, string>>;
  readonly update: string;
}

/** Words of the errors' messages and places that also stand in a book of this device; null when nobody knows. */
const wordsToHide = (errors: readonly LastError[]): Promise<ReadonlySet<string> | null> =>
  wordsInBooks(new Set(errors.flatMap(({ message, where }) => wordsOf(`${message} ${where.join(' ')}`))));

const hidden = (text: string, hide: ReadonlySet<string>): string =>
  text.replace(/[\p{L}\p{N}]+/gu, (word) => (hide.has(word.toLowerCase()) ? '…' : word));

async function countsOf({ db }: Session): Promise<readonly string[]> {
  const [journal, records, drafts, files, meta] = await Promise.all(
    [db.journal, db.records, db.drafts, db.files, db.meta].map((table) => table.count()),
  );
  const running = await db.records.where('links').equals('running').count();
  const keys = (await db.meta.toCollection().primaryKeys()).sort();
  const takeIn = (await db.meta.get('takeIn'))?.value as { doneCount?: number; totalCount?: number } | undefined;
  const missing = ((await db.meta.get('missing'))?.value as readonly unknown[] | undefined) ?? [];
  return [
    `entries: ${journal}`,
    `records: ${records}`,
    `drafts: ${drafts}`,
    `papers and pictures: ${files}`,
    `meta rows: ${meta} (${keys.join(', ')})`,
    `pumps running: ${running}`,
    `half taken in: ${takeIn === undefined ? 'no' : `${Number(takeIn.doneCount)} of ${Number(takeIn.totalCount)}`}`,
    `missing stretches: ${missing.length}`,
    `derived edition: ${String((await db.meta.get('derived'))?.value ?? 'none')} (this version: ${derivedEdition})`,
    `engine version: ${db.backendDB().version}`,
  ];
}

function stateLine(): string {
  const state = bookState();
  const more = state.kind === 'failed' ? ` (${state.why})` : '';
  const which = 'which' in state ? ` ${state.which}` : '';
  const unreadable = state.kind === 'open' ? `, unreadable: ${state.unreadable.length}` : '';
  const rebuilding = state.kind === 'open' && state.rebuilding ? ', lists being made' : '';
  return `book: ${state.kind}${which}${more}${unreadable}${rebuilding}`;
}

const markLine = (which: Which): string => {
  const mark = heldMark(which);
  return `mark of ${which}: ${mark === null ? 'none' : `last sequence ${mark.lastSequence}`}, lists ${derivedIsComplete(which) ? 'complete' : 'incomplete'}`;
};

async function databaseLine(): Promise<string> {
  if (typeof indexedDB === 'undefined' || !indexedDB.databases) return 'databases: the browser does not say';
  const ours = new Set(Object.values(databaseNames));
  const found = (await indexedDB.databases()).filter(({ name }) => ours.has(name ?? ''));
  return `databases: ${found.map(({ name, version }) => `${name} ${version}`).join(', ') || 'none'}`;
}

const errorLines = (error: LastError, hide: ReadonlySet<string>): readonly string[] => [
  `${error.at} ${error.name}: ${hidden(error.message, hide)}`,
  ...error.where.map((frame) => `    ${hidden(frame, hide)}`),
];

/** Best effort: what cannot be read is said to be unreadable, since a report is made when something is wrong. */
const orSaid = async (ask: () => Promise<readonly string[]>): Promise<readonly string[]> => {
  try {
    return await ask();
  } catch (error) {
    return [`could not be read: ${error instanceof Error ? error.name : 'unknown'}`];
  }
};

export async function problemReport({ editions, update }: ReportInput): Promise<string> {
  const session = openSession();
  const errors = lastErrors();
  const hide = await wordsToHide(errors);
  const { usedBytes } = await estimate().catch(() => ({ usedBytes: null }));
  const lines = [
    'FULLSHIFT PROBLEM REPORT',
    'No name, number or note of the book stands in here. Read it before you send it.',
    '',
    `made: ${now()}`,
    `zone: ${deviceZone()}`,
    `app: ${appVersion}`,
    ...Object.entries(editions).map(([name, value]) => `${name}: ${value}`),
    `database version: ${databaseVersion}`,
    `update: ${update}`,
    `installed: ${typeof navigator !== 'undefined' && isInstalled() ? 'yes' : 'no'}`,
    `browser: ${typeof navigator === 'undefined' ? 'unknown' : navigator.userAgent}`,
    '',
    `persisted: ${String(await persisted().catch(() => 'could not be read'))}`,
    `bytes used: ${usedBytes ?? 'the browser does not say'}`,
    ...(await orSaid(async () => [await databaseLine()])),
    stateLine(),
    `open last: ${lastOpened()}`,
    markLine('book'),
    markLine('practice'),
    '',
    ...(session === null ? ['no book is open'] : await orSaid(() => countsOf(session))),
    '',
    `last errors: ${errors.length}`,
    // Where a book could not be searched, what was said of it stays out.
    ...errors.flatMap((error) => (hide === null ? [`${error.at} ${error.name}`] : errorLines(error, hide))),
    '',
  ];
  return lines.join('\n');
}
