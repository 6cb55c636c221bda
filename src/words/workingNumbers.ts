/** A working with its numbers in place, as a hand calculation writes it: for the screen and for the command line. */
import type { Term, Working } from '#core/formula.ts';
import { formatInWorking } from './quantity.ts';

const symbolOrWord = /[\p{L}_][\p{L}\p{N}_]*/gu;
/** A sum sign with what it sums: one symbol or a bracket, with a square behind it. */
const sumOf = /Σ\s*(\([^()]*\)|[\p{L}_][\p{L}\p{N}_]*)(²?)/gu;
const termsShownAtMost = 6;

const numberOf = (term: Term): string | null =>
  term.estimate.kind === 'exact' ? formatInWorking(term.estimate.value, term.unit) : null;

/** The expression's right side with numbers in place of symbols, sums written out; null where an input is not one number. */
export function withNumbers(working: Working): string | null {
  const { expression } = working.formula;
  let complete = true;
  const put = (symbol: string, index: number): string => {
    const input = working.inputs[symbol];
    if (input === undefined) return symbol === 'n' && length > 0 ? String(length) : symbol;
    const term = Array.isArray(input) ? (input as readonly Term[])[index] : (input as Term);
    const number = term === undefined ? null : numberOf(term);
    complete &&= number !== null && (index >= 0 || !Array.isArray(input));
    return number ?? symbol;
  };
  const putAll = (text: string, index: number): string => text.replace(symbolOrWord, (symbol) => put(symbol, index));
  const lists = Object.values(working.inputs).filter((input): input is readonly Term[] => Array.isArray(input));
  const length = Math.max(0, ...lists.map((list) => list.length));
  if (length > termsShownAtMost) return null;
  const writtenOut = (_: string, inner: string, square: string): string =>
    `(${Array.from({ length }, (_, i) => putAll(inner, i) + square).join(' + ')})`;
  const right = expression.slice(expression.indexOf('=') + 1).trim();
  // Sums first, set aside under a mark, so that their numbers are not read as symbols again.
  const sums: string[] = [];
  const without = right.replace(sumOf, (...match: string[]) => {
    sums.push(writtenOut(match[0] ?? '', match[1] ?? '', match[2] ?? ''));
    return `\u0001`;
  });
  const text = putAll(without, -1).replaceAll('\u0001', () => sums.shift() ?? '');
  return complete ? text : null;
}
