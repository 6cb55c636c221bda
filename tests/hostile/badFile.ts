/** One bad file of the corpus, and what must come of it, written by hand. */
import type { LookRefusal, Preview } from '#store/handOver/handOver.ts';
import type { Line } from './making.ts';

export type Expected =
  | { readonly kind: 'refused'; readonly why: LookRefusal }
  | { readonly kind: 'sealed' }
  /** Shown, and taking in refuses: nothing is taken. */
  | { readonly kind: 'notTaken'; readonly shown: Partial<Preview> }
  /** Shown like this, then the book is what it was and these facts, and files of these hashes: no more, no less. */
  | {
      readonly kind: 'taken';
      readonly adds: readonly Line[];
      readonly files: readonly string[];
      readonly shown: Partial<Preview>;
    };

export interface BadFile {
  readonly name: string;
  readonly file: () => Blob | Promise<Blob>;
  /** The book it meets; a book of the corpus where nothing is said. */
  readonly into?: 'book' | 'practice' | 'nothing';
  readonly passphrase?: string;
  readonly expected: Expected;
}

export const refused = (why: LookRefusal): Expected => ({ kind: 'refused', why });
export const taken = (
  adds: readonly Line[],
  shown: Partial<Preview> = {},
  files: readonly string[] = [],
): Expected => ({ kind: 'taken', adds, files, shown: { newCount: adds.length, forks: [], brokenCount: 0, ...shown } });
export const notTaken = (shown: Partial<Preview>): Expected => ({ kind: 'notTaken', shown });
