/**
 * How much a file may hold before it is refused. Own figures, no source: the file, its count of entries and what it inflates to follow
 * the goals set for this app (400 MB, 5,000 entries, 500 MB counted while inflating); the rest is decided here. A book of thirty years is
 * taken as 100,000 facts of some 500 bytes, 50 MB of text: three times that is let in, because the text of what is new stays in memory
 * until it is stored. Depth (20) and length (256 KiB) of a fact are `factLimits` in #records/canonical.ts.
 */
export const takeInLimits = {
  fileBytes: 400_000_000,
  inflatedBytes: 500_000_000,
  /** 5,000 papers and pictures, and what lies beside them. */
  entriesCount: 6000,
  bookTextBytes: 150_000_000,
  factsCount: 300_000,
  /** One paper or picture; a picture is at most 300,000 bytes, a sheet with a hundred cassettes far below one MB. */
  oneFileBytes: 30_000_000,
  /** Inflated from papers and pictures that turn out not to be what the archive says of them, all together. */
  wastedBytes: 100_000_000,
} as const;

export type Limits = { readonly [Name in keyof typeof takeInLimits]: number };

/** What goes into one transaction of a take-in. Own figures, no source. */
export const takeInSteps = {
  /** Up to this much goes in at once, derived rows and all. */
  atOnce: { rows: 1000, records: 300, files: 12 },
  /** Facts to a transaction: under a tenth of a second each on a phone, and a stop that is heard soon. */
  chunkRows: 1000,
  chunkBytes: 4_000_000,
} as const;
