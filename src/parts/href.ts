/** Addresses inside the app live behind the hash, so that one build answers every deep link on any static host and sub-path. */
export const hrefOf = (path: string): string => `#${path}`;
