/**
 * A formula is one object that computes and explains itself. Applied to terms it gives a working: the value, the formula and the
 * inputs, each of which is a recorded quantity or a working of its own. Screens, papers and the command line read workings only.
 */
import type { Estimate } from './estimate.ts';
import type { Unit } from './units.ts';

/** How a source was read: carried through from the reference pages. Only READ and READ-2 may be shown as a citation. */
export type ReadingMark = 'READ' | 'READ-2' | 'DERIVED' | 'MEMORY';

export interface Source {
  readonly title: string;
  readonly section?: string;
  readonly url?: string;
  readonly edition?: string;
  readonly mark: ReadingMark;
  readonly note?: string;
}

/** A quantity that somebody wrote down; `because` holds the ids of the facts (or the path in an input file) it stands in. */
export interface Recorded {
  readonly kind: 'recorded';
  readonly name: string;
  readonly unit: Unit;
  readonly estimate: Estimate;
  readonly because: readonly string[];
}

export interface Working {
  readonly kind: 'working';
  readonly formula: FormulaText;
  readonly unit: Unit;
  readonly estimate: Estimate;
  readonly inputs: Readonly<Record<string, Term | readonly Term[]>>;
}

export type Term = Recorded | Working;

/** The part of a formula that explains: what a working carries. */
export interface FormulaText {
  readonly name: string;
  readonly symbol: string;
  readonly unit: Unit;
  readonly expression: string;
  readonly inputs: Readonly<Record<string, { readonly name: string; readonly unit: Unit }>>;
  readonly source: Source;
}
