/**
 * A formula is one object that computes and explains itself. Applied to terms it gives a working: the value, the formula and the
 * inputs, each of which is a recorded quantity or a working of its own. Screens, papers and the command line read workings only.
 */
import { type Estimate, exactly, lowerOf, upperOf } from './estimate.ts';
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

/** One input of a formula; `list` when the formula takes any number of them, one after the other. */
export interface InputText {
  readonly name: string;
  readonly unit: Unit;
  readonly list?: true;
}

/** The part of a formula that explains: what a working carries. */
export interface FormulaText {
  readonly name: string;
  readonly symbol: string;
  readonly unit: Unit;
  readonly expression: string;
  readonly inputs: Readonly<Record<string, InputText>>;
  readonly source: Source;
}

type Inputs = Readonly<Record<string, InputText>>;
export type NumbersOf<I extends Inputs> = {
  readonly [K in keyof I]: I[K] extends { readonly list: true } ? readonly number[] : number;
};
export type TermsOf<I extends Inputs> = {
  readonly [K in keyof I]: I[K] extends { readonly list: true } ? readonly Term[] : Term;
};

export interface Formula<I extends Inputs> extends FormulaText {
  readonly inputs: I;
  /** The relation itself, on plain numbers in the units of the inputs. Never rounds. */
  readonly compute: (inputs: NumbersOf<I>) => number;
  /** The relation applied to terms, with what is known of them carried through. */
  readonly of: (inputs: TermsOf<I>) => Working;
}

interface Definition<I extends Inputs> extends FormulaText {
  readonly inputs: I;
  /** Inputs in which the result never falls as they rise, and those in which it never rises. Others must be exact. */
  readonly increasesWith?: readonly (keyof I & string)[];
  readonly decreasesWith?: readonly (keyof I & string)[];
  readonly compute: (inputs: NumbersOf<I>) => number;
}

type Direction = 'increases' | 'decreases' | 'neither';
interface Slot {
  readonly symbol: string;
  readonly unit: Unit;
  readonly list: boolean;
  readonly direction: Direction;
}

type Plain = Record<string, number | number[]>;
type Bound = (e: Estimate) => number;
const exactValue: Bound = (e) => (e.kind === 'exact' ? e.value : Number.NaN);

/** Term of a quantity that was written down. */
export const recorded = (name: string, unit: Unit, estimate: Estimate, because: readonly string[]): Recorded => ({
  kind: 'recorded',
  name,
  unit,
  estimate,
  because,
});

/**
 * Makes a formula. For inputs known only within bounds the relation is evaluated at the ends, by the monotonicity declared; an
 * input without an upper bound gives a result without one, where the result rises with it. Throws (a bug) on a term of another
 * unit, on bounds in an input without a declared direction, and on a result that is not a number.
 */
export function formula<const I extends Inputs>(definition: Definition<I>): Formula<I> {
  const { increasesWith = [], decreasesWith = [], compute, ...explained } = definition;
  const text: FormulaText = explained;
  const slots = Object.entries(definition.inputs).map(
    ([symbol, input]): Slot => ({
      symbol,
      unit: input.unit,
      list: input.list === true,
      direction: increasesWith.includes(symbol)
        ? 'increases'
        : decreasesWith.includes(symbol)
          ? 'decreases'
          : 'neither',
    }),
  );
  const numbersAt = compute as (inputs: Plain) => number;

  const of = (inputs: TermsOf<I>): Working => {
    const terms = inputs as Record<string, Term | readonly Term[]>;
    const estimate = allExact(text, slots, terms)
      ? exactly(checked(text, numbersAt(plain(slots, terms, exactValue, exactValue))))
      : bounded(text, slots, terms, numbersAt);
    return {
      kind: 'working',
      formula: text,
      unit: text.unit,
      estimate,
      inputs: terms,
    };
  };
  return { ...text, inputs: definition.inputs, compute, of };
}

function allExact(text: FormulaText, slots: readonly Slot[], terms: Record<string, Term | readonly Term[]>): boolean {
  let exact = true;
  for (const slot of slots) {
    const term = terms[slot.symbol];
    if (term === undefined) throw new Error(`${text.name}: ${slot.symbol} is missing`);
    if (!slot.list) exact = isExact(text, slot, term as Term) && exact;
    else for (const one of term as readonly Term[]) exact = isExact(text, slot, one) && exact;
  }
  return exact;
}

function isExact(text: FormulaText, slot: Slot, term: Term): boolean {
  if (term.unit !== slot.unit) throw new Error(`${text.name}: ${slot.symbol} is ${term.unit}, not ${slot.unit}`);
  if (term.estimate.kind === 'exact') return true;
  if (slot.direction === 'neither') throw new Error(`${text.name}: ${slot.symbol} must be exact`);
  return false;
}

function plain(slots: readonly Slot[], terms: Record<string, Term | readonly Term[]>, up: Bound, down: Bound): Plain {
  const numbers: Plain = {};
  for (const slot of slots) {
    const bound = slot.direction === 'decreases' ? down : up;
    const term = terms[slot.symbol];
    numbers[slot.symbol] = slot.list
      ? (term as readonly Term[]).map((one) => bound(one.estimate))
      : bound((term as Term).estimate);
  }
  return numbers;
}

function bounded(
  text: FormulaText,
  slots: readonly Slot[],
  terms: Record<string, Term | readonly Term[]>,
  compute: (inputs: Plain) => number,
): Estimate {
  const lower = checked(text, compute(plain(slots, terms, lowerOf, upperOf)));
  const upper = compute(plain(slots, terms, upperOf, lowerOf));
  // infinity times nothing: the careful reading is that nothing bounds it
  if (!Number.isFinite(upper)) return { kind: 'atLeast', lower };
  if (upper < lower) throw new Error(`${text.name}: bounds cross, ${lower} and ${upper}`);
  return upper === lower ? exactly(lower) : { kind: 'between', lower, upper };
}

function checked(text: FormulaText, value: number): number {
  if (!Number.isFinite(value)) throw new Error(`${text.name}: not a number`);
  return value;
}
