/** Hand-over files for tests, made as a page makes them. */
import type { HandOver, HandOverWish } from '#store/handOver/handOver.ts';
import { makeHandOver } from '#store/handOver/making.ts';

const plain = { partner: null, passphrase: null, writtenBy: 'fullshift', papers: [] } as const;

/** Everything, not sealed. */
export const makeBackup = (wish: Partial<HandOverWish> = {}): Promise<HandOver> =>
  makeHandOver({ ...plain, part: 'everything', ...wish });

/** What this partner lacked, not sealed. */
export const makeNews = (partner: string, wish: Partial<HandOverWish> = {}): Promise<HandOver> =>
  makeHandOver({ ...plain, part: 'lacking', partner, ...wish });
