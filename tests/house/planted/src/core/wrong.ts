/** Planted: core reaching up. The layer test must catch it. */
export { record } from '../records/record.ts';
