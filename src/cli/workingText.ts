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
  return words.from([source.title, source.section, source.edition].filter(Boolean).join(', '));
}

/** Lines of a term; a working that was already written out in full is only named again. */
export function workingLines(term: Term, indent = '', told: Set<Term> = new Set()): string[] {
  const name = nameInWords(term.kind === 'working' ? term.formula.name : term.name);
  if (term.kind === 'recorded') {
    const because = term.because.length > 0 ? `  (${words.writtenAt([...new Set(term.because)].join(', '))})` : '';
    return [`${indent}${name} = ${value(term)}${because}`];
  }
  if (told.has(term)) return [`${indent}${name} = ${value(term)}`];
  told.add(term);
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
