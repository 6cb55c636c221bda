/**
 * What a backup holds, read through to the end in slices: ids with links, and papers and pictures whose bytes are what their name says.
 * Nothing of it is kept but these, so that a large backup is checked in little memory.
 */
import { bookReader } from '#records/bookReading.ts';
import { pacer } from '../breath.ts';
import { checkFiles } from './fileCheck.ts';
import type { LookRefusal, Progress } from './handOver.ts';
import { takeInLimits } from './limits.ts';
import { unsealed } from './looking.ts';
import { type Source, sourceOf } from './source.ts';
import { refusalByFault } from './throughText.ts';
import { stopIfAsked, Unfit } from './unfit.ts';

export interface Whole {
  readonly kind: 'whole';
  readonly bookId: string;
  readonly practice: boolean;
  /** Fact id -> link. */
  readonly linkById: ReadonlyMap<string, string>;
  readonly fileHashes: ReadonlySet<string>;
}

export interface WholeOptions {
  readonly passphrase?: string;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

/** Reads the text to its end mark: every link is verified on the way. Throws `Unfit`. */
async function linksIn(source: Source, options: WholeOptions) {
  const reader = bookReader();
  const pace = pacer();
  const linkById = new Map<string, string>();
  const take = (): void => {
    for (const { id, link } of reader.take()) linkById.set(id, link);
    if (linkById.size > takeInLimits.factsCount) throw new Unfit('tooLarge');
  };
  let done = 0;
  for await (const chunk of source.text()) {
    reader.push(chunk);
    take();
    if (reader.fault() !== null) break;
    done += chunk.length;
    stopIfAsked(options.signal);
    options.onProgress?.({ step: 'reading', done: Math.min(done, source.textBytes), total: source.textBytes });
    await pace();
  }
  const fault = reader.end();
  take();
  const header = reader.header();
  if (fault !== null || header === null) throw new Unfit(fault === null ? 'damaged' : refusalByFault[fault.why]);
  return { header, linkById };
}

async function wholeOf(chosen: Blob, options: WholeOptions): Promise<Whole | { readonly kind: 'sealed' }> {
  const file = await unsealed(chosen, options);
  if (file === 'sealed') return { kind: 'sealed' };
  stopIfAsked(options.signal);
  const source = await sourceOf(file, false);
  const { header, linkById } = await linksIn(source, options);
  const total = source.files.length;
  const { sound } = await checkFiles(source.files, (done) => {
    stopIfAsked(options.signal);
    options.onProgress?.({ step: 'comparing', done, total });
  });
  const { bookId, practice } = header;
  return { kind: 'whole', bookId, practice, linkById, fileHashes: new Set(sound.map(({ hash }) => hash)) };
}

/** Never throws for what is in the file. */
export async function readWhole(
  file: Blob,
  options: WholeOptions = {},
): Promise<Whole | { readonly kind: 'sealed' } | { readonly kind: 'refused'; readonly why: LookRefusal }> {
  try {
    return await wholeOf(file, options);
  } catch (error) {
    if (error instanceof Unfit) return { kind: 'refused', why: error.why };
    throw error;
  }
}
