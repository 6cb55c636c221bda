/** Planted: a screens folder that imports its sibling. */
export { two } from '../two/two.ts';
