/**
 * Facts out of the journal as lines of text, slice by slice, each looked at once: into blobs, which the browser may put on disk. What is
 * not sound (no fact, or a link that does not follow) goes into a text of its own, so that it cannot make the rest unreadable.
 */
import { readFact } from '#records/canonical.ts';
import { factIdOf, link, noLink, sequenceOf, writerOf } from '#records/chain.ts';
import { factLine } from '#records/fileFormat.ts';
import { pacer } from '../breath.ts';
import type { BookDatabase, JournalRow } from '../database.ts';
import type { ChainHead } from '../heads.ts';
import { Gatherer } from './packing.ts';

/** Of one writer: what lies after `after` (nothing: from the first) up to and with `upTo`. */
export interface Stretch {
  readonly after: ChainHead | null;
  /** Whether the entry it begins after is held here, so that the first link can be checked against it. */
  readonly afterIsHere: boolean;
  readonly upTo: ChainHead;
}

export interface Spooled {
  readonly lines: Blob;
  readonly factsCount: number;
  readonly unreadable: Blob;
  /** Last sound fact of each writer among the lines. */
  readonly heads: readonly ChainHead[];
  /** Writers with an unsound entry, and the last sound fact before the first of them; null when none is. */
  readonly soundTo: ReadonlyMap<string, ChainHead | null>;
  /** SHA-256 of papers and pictures that the facts name. */
  readonly namesFiles: ReadonlySet<string>;
  /** Every other hash in the facts' texts: a newer version may name a file in a way that this one does not know. */
  readonly mayNameFiles: ReadonlySet<string>;
}

const sliceRows = 300;
const namedFile = /"(?:pdfHash|hash)":"([0-9a-f]{64})"/g;
const anyHash = /"([0-9a-f]{64})"/g;
const utf8 = new TextEncoder();

/** Collects what is read; one for each hand-over file. */
export class Spool {
  private readonly lines = new Gatherer();
  private readonly unreadable = new Gatherer();
  private readonly heads = new Map<string, ChainHead>();
  private readonly soundTo = new Map<string, ChainHead | null>();
  private readonly names = new Set<string>();
  private readonly mayName = new Set<string>();
  private readonly pace = pacer();
  private factsCount = 0;

  private isSound(row: JournalRow, last: ChainHead | null): boolean {
    const sequence = sequenceOf(row.id);
    const follows =
      last !== null && writerOf(last.factId) === writerOf(row.id) && sequence === sequenceOf(last.factId) + 1;
    const previous = follows ? last.link : sequence === 1 ? noLink : null;
    return (previous === null || row.link === link(previous, row.text)) && readFact(row.text).kind !== 'refused';
  }

  private take(row: JournalRow): string {
    this.factsCount += 1;
    this.heads.set(writerOf(row.id), { factId: row.id, link: row.link });
    for (const [, hash] of row.text.matchAll(namedFile)) this.names.add(hash as string);
    for (const [, hash] of row.text.matchAll(anyHash)) this.mayName.add(hash as string);
    return factLine(row);
  }

  private setAside(row: JournalRow, last: ChainHead | null): void {
    const writer = writerOf(row.id);
    if (!this.soundTo.has(writer)) this.soundTo.set(writer, last);
    this.unreadable.push(utf8.encode(`${row.link} ${row.id} ${row.text}\n`));
  }

  /** Reads one stretch. `onRows` hears after each slice how many rows were read. Rejects with what the database throws. */
  async read(db: BookDatabase, { after, afterIsHere, upTo }: Stretch, onRows: (count: number) => void): Promise<void> {
    const writer = writerOf(upTo.factId);
    let last = afterIsHere ? after : null;
    let from = after?.factId ?? factIdOf(writer, 0);
    for (;;) {
      const rows = await db.journal.where('id').between(from, upTo.factId, false, true).limit(sliceRows).toArray();
      const texts: string[] = [];
      for (const row of rows) {
        await this.pace();
        if (this.isSound(row, last)) {
          texts.push(this.take(row));
          last = { factId: row.id, link: row.link };
        } else this.setAside(row, last);
      }
      this.lines.push(utf8.encode(texts.join('')));
      onRows(rows.length);
      const end = rows.at(-1);
      if (end === undefined || end.id === upTo.factId) return;
      from = end.id;
    }
  }

  done(): Spooled {
    return {
      lines: this.lines.blob(),
      factsCount: this.factsCount,
      unreadable: this.unreadable.blob(),
      heads: [...this.heads.values()].sort((a, b) => (a.factId < b.factId ? -1 : 1)),
      soundTo: this.soundTo,
      namesFiles: this.names,
      mayNameFiles: this.mayName,
    };
  }
}
