/** What every paper is made with beside its finding: given by the device and the book, kept in the fact and attached to the PDF. */
import type { Paper } from './paper.ts';
import type { FontBytes } from './pdf/open.ts';

export type PaperLanguage = 'en' | 'es';

/** Edition, heads and moment: printed at the foot of each page. */
export interface Occasion {
  readonly firmName: string;
  /** EXAMPLE stands across every page. */
  readonly practice: boolean;
  /** UTC instant, and the zone in which it is printed. */
  readonly issuedInstant: string;
  readonly zone: string;
  readonly heads: readonly { readonly factId: string; readonly link: string }[];
  readonly editions: { readonly app: string; readonly rules: string; readonly formulas: string };
}

/** On which paper, in which typeface: not part of what is kept. */
export interface Printing {
  readonly paper: Paper;
  readonly fonts: FontBytes;
}

/** A person as papers name them. `shift`: hours of the day in figures alone, such as '07:00–15:30', where no number identifies them. */
export interface PaperPerson {
  readonly name: string;
  readonly identifier: string | null;
  /** Another firm; null = this one. */
  readonly employer: string | null;
  readonly jobClassification: string | null;
  readonly shift?: string | null;
}
export type PeopleById = ReadonlyMap<string, PaperPerson>;

/** Text that workers read in their own language. */
export interface InTwoLanguages {
  readonly en: string;
  readonly es: string;
}

/** A made paper: bytes to hand out, and the values to keep in the fact, the same that are attached to the PDF. */
export interface MadePaper<Values> {
  readonly bytes: Uint8Array;
  readonly values: Values;
}

/** The part of an input that is kept. */
export const occasionOf = (from: Occasion): Occasion => ({
  firmName: from.firmName,
  practice: from.practice,
  issuedInstant: from.issuedInstant,
  zone: from.zone,
  heads: from.heads.map((head) => ({ ...head })),
  editions: { ...from.editions },
});
