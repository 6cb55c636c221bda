/**
 * What comes in, held against the book entry by entry, in slices: of the book only what stands beside them is read. Keeps what is new, as
 * rows ready for the journal, and what a preview says of it.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { ReadEntry } from '#records/bookLines.ts';
import { mayDispute } from '#records/bothSides.ts';
import type { Envelope, Fact, Happened } from '#records/fact.ts';
import { type HeldEntry, type Met, sifter } from '#records/sifting.ts';
import { Stretches } from '#records/stretches.ts';
import { pacer } from '../breath.ts';
import type { BookDatabase, JournalRow } from '../database.ts';
import { heldAround } from './held.ts';

/** A cassette that the file prepares, or a label that it prints. */
export interface Numbered {
  /** null = a label: no cassette bears the number yet. */
  readonly id: string | null;
  readonly sampleNumber: string;
  readonly row: JournalRow;
}

const nothing: ReadonlyMap<string, HeldEntry> = new Map();

export class Comparison {
  /** In the order of writer and sequence. */
  readonly rows: JournalRow[] = [];
  readonly rowsByKey = new Map<string, JournalRow[]>();
  readonly stretches = new Stretches();
  readonly newByKind: Record<string, number> = {};
  readonly forks: string[] = [];
  readonly numbered: Numbered[] = [];
  /** SHA-256 of papers and pictures that new facts name. */
  readonly namedFiles = new Set<string>();
  /** Records that a new fact can put into dispute. */
  readonly disputableKeys = new Set<string>();
  between: { from: Happened; to: Happened } | null = null;
  firmName: string | null = null;
  factsCount = 0;
  sameCount = 0;
  brokenCount = 0;
  unreadableCount = 0;
  newerCount = 0;

  private readonly db: BookDatabase | null;
  private readonly bookId: string;
  private readonly hash = sha256.create();
  private readonly pace = pacer();
  private beside = nothing;
  private readonly sift = sifter((id) => this.beside.get(id));

  /** `db`: the open book; null on an empty device. */
  constructor(db: BookDatabase | null, bookId: string) {
    this.db = db;
    this.bookId = bookId;
  }

  /** The next entries of the file, in its order. */
  async meet(entries: readonly ReadEntry[]): Promise<void> {
    if (entries.length === 0) return;
    this.beside =
      this.db === null
        ? nothing
        : await heldAround(
            this.db,
            entries.map(({ id }) => id),
          );
    let about = '';
    for (const entry of entries) {
      about += `${entry.id} ${entry.link}\n`;
      this.count(entry, this.sift(entry));
      await this.pace();
    }
    this.hash.update(utf8ToBytes(about));
  }

  /** Tells the same file, however it was packed: a hash over the ids and links of all its entries. */
  of(): string {
    return bytesToHex(this.hash.clone().digest());
  }

  private count(entry: ReadEntry, met: Met): void {
    this.factsCount += 1;
    if (met.kind === 'new') this.keepRead(entry, met.read);
    else if (met.kind === 'same') {
      this.noteFirm(entry);
      this.sameCount += 1;
    } else if (met.kind === 'fork') this.forks.push(entry.id);
    else if (met.kind === 'broken') this.brokenCount += 1;
    else this.unreadableCount += 1;
  }

  private noteFirm({ value }: ReadEntry): void {
    const { kind, body } = value as { kind?: unknown; body?: { bookId?: unknown; firmName?: unknown } };
    if (kind === 'bookOpened.v1' && body?.bookId === this.bookId) this.firmName = String(body.firmName);
  }

  private keep({ id, text, link }: ReadEntry, { about, happened }: Pick<Envelope, 'about' | 'happened'>, kind: string) {
    const row: JournalRow = { id, about, text, link };
    this.rows.push(row);
    this.stretches.add(id);
    this.newByKind[kind] = (this.newByKind[kind] ?? 0) + 1;
    if (this.between === null) this.between = { from: happened, to: happened };
    else if (happened.at < this.between.from.at) this.between.from = happened;
    else if (happened.at > this.between.to.at) this.between.to = happened;
    for (const key of new Set(about)) {
      const rows = this.rowsByKey.get(key);
      if (rows === undefined) this.rowsByKey.set(key, [row]);
      else rows.push(row);
    }
    return row;
  }

  private keepRead(entry: ReadEntry, read: Extract<Met, { kind: 'new' }>['read']): void {
    if (read.kind === 'known') {
      this.note(read.fact, this.keep(entry, read.fact, read.fact.kind));
      this.noteFirm(entry);
    } else {
      this.keep(entry, read.envelope, 'unknown');
      this.newerCount += 1;
    }
  }

  private note(fact: Fact, row: JournalRow): void {
    if (mayDispute(fact.kind)) for (const key of fact.about) this.disputableKeys.add(key);
    if (fact.kind === 'samplePrepared.v1' || fact.kind === 'blankOpened.v1') {
      const { sampleId: id, sampleNumber } = fact.body;
      this.numbered.push({ id, sampleNumber, row });
    } else if (fact.kind === 'labelsMade.v1') {
      for (const { sampleNumber } of fact.body.labels) this.numbered.push({ id: null, sampleNumber, row });
    } else if (fact.kind === 'photoTaken.v1') this.namedFiles.add(fact.body.hash);
    else if ('pdfHash' in fact.body) this.namedFiles.add(String(fact.body.pdfHash));
  }
}
