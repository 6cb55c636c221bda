/** A working as text, indented like a hand calculation: expression, numbers, value, source, then each input in turn. */
import type { Source, Term } from '#core/formula.ts';
import { en as words } from '#words/assess.ts';
import { formatEstimate, nameInWords } from '#words/quantity.ts';
import { withNumbers } from '#words/workingNumbers.ts';

const value = (term: Term): string => formatEstimate(term.estimate, term.unit, { digits: 'working' });

/** READ and READ-2 were read and are cited; DERIVED is ours; MEMORY is common practice. */
export function sourceText(source: Source): string {
  if (source.mark === 'DERIVED') return words.own;
  if (source.mark === 'MEMORY') return words.practice;
  const cited = [source.title, source.section, source.edition].filter(Boolean).join(', ');
  return words.from(source.note === undefined ? cited : `${cited}. ${source.note}`);
}

/** Written so far, and where a limit's own number is published. */
export interface Told {
  readonly terms: Set<Term>;
  readonly sourceOfLimit: (name: string) => Source | null;
}

function becauseText(term: Term & { readonly kind: 'recorded' }, told: Told): string {
  const limit = term.because.some((one) => one.startsWith('limit:')) ? told.sourceOfLimit(term.name) : null;
  if (limit) return `   [${sourceText(limit)}]`;
  return term.because.length > 0 ? `   (${words.writtenAt([...new Set(term.because)].join(', '))})` : '';
}

const nameOf = (name: string): string => words.name(name) ?? nameInWords(name);

/** Lines of a term; a working that was already written out in full is only named again. */
export function workingLines(term: Term, indent: string, told: Told): string[] {
  if (term.kind === 'recorded') return [`${indent}${nameOf(term.name)} = ${value(term)}${becauseText(term, told)}`];
  const name = nameOf(term.formula.name);
  if (told.terms.has(term)) return [`${indent}${name} = ${value(term)}`];
  told.terms.add(term);
  const numbers = withNumbers(term);
  const inner = `${indent}    `;
  return [
    `${indent}${name}: ${term.formula.expression}`,
    ...(numbers === null ? [] : [`${indent}  = ${numbers}`]),
    `${indent}  = ${value(term)}   [${sourceText(term.formula.source)}]`,
    ...Object.values(term.inputs).flatMap((input) =>
      (Array.isArray(input) ? (input as readonly Term[]) : [input as Term]).flatMap((one) =>
        workingLines(one, inner, told),
      ),
    ),
  ];
}
