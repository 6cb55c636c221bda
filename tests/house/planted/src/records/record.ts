import { other } from './other.ts';
/** Planted: two files that need each other. */
export const record = (): number => other() + 1;
