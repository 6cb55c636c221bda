/**
 * Looks into a file of a book and says what it holds against the open book, or against an empty device. Changes nothing. Reads in slices,
 * within the limits of limits.ts, and never throws for what is in the file.
 */
import { breathe } from '../breath.ts';
import { storageFailure } from '../failures.ts';
import { reopen } from '../reopening.ts';
import { openSession, type Session } from '../session.ts';
import { takeInsIn } from './elsewhere.ts';
import { checkFiles } from './fileCheck.ts';
import type { Looked, LookOptions } from './handOver.ts';
import { takeInLimits } from './limits.ts';
import { previewOf } from './previewing.ts';
import { sourceOf } from './source.ts';
import { readText, refusalByFault } from './throughText.ts';
import { stopIfAsked, Unfit } from './unfit.ts';

/** The file itself, out of its seal if it has one. */
export async function unsealed(file: Blob, options: LookOptions): Promise<Blob | 'sealed'> {
  const head = await file.slice(0, 40).text();
  if (!head.startsWith('age-encryption.org/') && !head.startsWith('-----BEGIN AGE')) return file;
  const { passphrase, signal, onProgress } = options;
  if (file.size > takeInLimits.fileBytes) throw new Unfit('tooLarge');
  if (passphrase === undefined) return 'sealed';
  const { unseal } = await import('./sealing.ts');
  const opened = await unseal(file, passphrase, {
    ...(signal === undefined ? {} : { signal }),
    ...(onProgress === undefined ? {} : { onProgress }),
  });
  if (opened.kind === 'opened') return opened.blob;
  throw new Unfit(opened.why);
}

/** Damaged: what could still be read of it is counted, so that a person can choose. */
async function intactIn(file: Blob, options: LookOptions, session: Session | null): Promise<number> {
  try {
    return (await readText(await sourceOf(file, true), options, session)).comparison.rows.length;
  } catch (error) {
    if (error instanceof Unfit) return 0;
    throw error;
  }
}

/** The text, read through. Throws `Unfit`. */
async function readBook(file: Blob, options: LookOptions, session: Session | null) {
  const salvage = options.salvage === true;
  try {
    const source = await sourceOf(file, salvage);
    return { source, ...(await readText(source, options, session)) };
  } catch (error) {
    if (!(error instanceof Unfit) || error.why !== 'damaged' || salvage) throw error;
    throw new Unfit('damaged', await intactIn(file, options, session));
  }
}

async function looked(chosen: Blob, options: LookOptions): Promise<Looked> {
  const session = openSession();
  // Before anything is compared: what comes in meanwhile makes the preview untrue.
  const takeIns = session === null ? { count: 0, of: '' } : await takeInsIn(session.db);
  const file = await unsealed(chosen, options);
  if (file === 'sealed') return { kind: 'sealed' };
  stopIfAsked(options.signal);
  const read = await readBook(file, options, session);
  const { source, fault, comparison } = read;
  const newCount = comparison.rows.length;
  const salvage = options.salvage === true;
  if (fault !== null && !(salvage && newCount > 0)) throw new Unfit(refusalByFault[fault.why], newCount);
  if (comparison.brokenCount > 0 && comparison.forks.length === 0 && !salvage) throw new Unfit('damaged', newCount);
  const total = source.files.length;
  const files = await checkFiles(source.files, (done) => {
    stopIfAsked(options.signal);
    options.onProgress?.({ step: 'comparing', done, total });
  });
  await breathe();
  stopIfAsked(options.signal);
  return previewOf(chosen, read, files, session, takeIns);
}

/** A connection that was lost meanwhile is opened again, and the file is looked into once more. */
async function lookedTwice(file: Blob, options: LookOptions): Promise<Looked> {
  try {
    return await looked(file, options);
  } catch (error) {
    const session = openSession();
    if (session === null || storageFailure(error) !== 'lost') throw error;
    await reopen(session.db);
    return await looked(file, options);
  }
}

/** Never throws for what is in the file. `salvage` shows what is left of a damaged one. Rejects with what the database throws. */
export async function lookInto(file: File | Blob, options: LookOptions = {}): Promise<Looked> {
  try {
    return await lookedTwice(file, options);
  } catch (error) {
    if (error instanceof Unfit) return { kind: 'refused', why: error.why, intactCount: error.intactCount };
    throw error;
  }
}
