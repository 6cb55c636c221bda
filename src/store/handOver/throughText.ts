/** The text of a book from its header to its end mark, each entry held against the book as it comes. */
import type { BookTextFault } from '#records/bookLines.ts';
import { type BookReader, bookReader } from '#records/bookReading.ts';
import type { BookHeader } from '#records/fileFormat.ts';
import { pacer } from '../breath.ts';
import type { Session } from '../session.ts';
import { Comparison } from './comparing.ts';
import type { LookOptions, LookRefusal } from './handOver.ts';
import { takeInLimits } from './limits.ts';
import type { Source } from './source.ts';
import { stopIfAsked, Unfit } from './unfit.ts';

/** Whether this header is for the book that is open here, or for a device without one. */
function mismatch({ bookId, practice, since, part }: BookHeader, session: Session | null): LookRefusal | null {
  if (session === null) return (since?.length ?? 0) > 0 && part !== 'paper' ? 'partOnly' : null;
  if (practice !== (session.which === 'practice')) return practice ? 'practiceIntoReal' : 'realIntoPractice';
  return bookId === session.bookId ? null : 'otherBook';
}

export const refusalByFault = {
  foreign: 'notABackup',
  newerFormat: 'newerFormat',
  cut: 'damaged',
  damaged: 'damaged',
} as const satisfies Readonly<Record<BookTextFault['why'], LookRefusal>>;

/** At most so much of the text is parsed in one go. */
const pieceBytes = 1 << 16;

export interface ReadThrough {
  readonly header: BookHeader;
  readonly comparison: Comparison;
  readonly fault: BookTextFault | null;
}

/** Hands on what the reader has; begins the comparison once the header is known. */
async function meetReady(reader: BookReader, begun: Comparison | null, session: Session | null) {
  const header = reader.header();
  if (header === null) return null;
  const why = begun === null ? mismatch(header, session) : null;
  if (why !== null) throw new Unfit(why);
  const comparison = begun ?? new Comparison(session?.db ?? null, header.bookId);
  await comparison.meet(reader.take());
  if (comparison.factsCount > takeInLimits.factsCount) throw new Unfit('tooLarge');
  return comparison;
}

/** Reads the whole text. Throws `Unfit`; a fault in the text is told beside what stood before it. */
export async function readText(source: Source, options: LookOptions, session: Session | null): Promise<ReadThrough> {
  const reader = bookReader();
  const pace = pacer();
  let comparison: Comparison | null = null;
  let done = 0;
  for await (const chunk of source.text()) {
    for (let from = 0; from < chunk.length && reader.fault() === null; from += pieceBytes) {
      reader.push(chunk.subarray(from, from + pieceBytes));
      comparison = await meetReady(reader, comparison, session);
      await pace();
    }
    if (reader.fault() !== null) break;
    done += chunk.length;
    stopIfAsked(options.signal);
    options.onProgress?.({ step: 'reading', done: Math.min(done, source.textBytes), total: source.textBytes });
  }
  const fault = reader.end();
  comparison = await meetReady(reader, comparison, session);
  const header = reader.header();
  if (header === null || comparison === null) throw new Unfit(fault === null ? 'damaged' : refusalByFault[fault.why]);
  return { header, comparison, fault };
}
