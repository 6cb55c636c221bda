/**
 * Every working of a day as lines of a hand calculation, the same that screens open: formula, numbers, value, source, then each input in
 * turn, indented. What was already worked out is named by its number.
 */
import type { Recorded, Source, Term, Working } from '#core/formula.ts';
import type { WorkdayFinding } from '#findings/workday.ts';
import { en } from '#words/exposureRecord.ts';
import { en as parts } from '#words/parts.ts';
import { formatEstimate, nameInWords } from '#words/quantity.ts';
import { withNumbers } from '#words/workingNumbers.ts';

/** A line of a hand calculation, indented by its depth. */
export interface WorkingLine {
  readonly depth: number;
  readonly text: string;
}
export interface PrintedWorking {
  readonly number: number;
  readonly title: string;
  readonly lines: readonly WorkingLine[];
}

const { workings: words } = en;
const value = (term: Term): string => formatEstimate(term.estimate, term.unit, { digits: 'working' });

/** READ and READ-2 were read and are cited; DERIVED is ours; MEMORY is common practice. */
function sourceText(source: Source): string {
  if (source.mark === 'DERIVED') return parts.ownDerivation;
  if (source.mark === 'MEMORY') return parts.commonPractice;
  const cited = [source.title, source.section, source.edition].filter(Boolean).join(', ');
  return words.source(source.note === undefined ? cited : `${cited}. ${source.note}`);
}

function whereFrom({ because }: Recorded): string {
  const first = because[0];
  if (first === undefined) return '';
  const from = first.startsWith('limit:')
    ? parts.fromRule
    : first.startsWith('method:')
      ? parts.fromMethod
      : parts.recorded;
  return ` (${from})`;
}

const termsOf = (input: Term | readonly Term[]): readonly Term[] =>
  Array.isArray(input) ? (input as readonly Term[]) : [input as Term];

type Numbers = ReadonlyMap<Term, number>;

function inputLines(symbol: string, term: Term, depth: number, numbers: Numbers): WorkingLine[] {
  if (term.kind === 'recorded')
    return [{ depth, text: `${words.input(symbol, nameInWords(term.name), value(term))}${whereFrom(term)}` }];
  const name = nameInWords(term.formula.name);
  const known = numbers.get(term);
  const head = words.input(symbol, name, value(term));
  if (known !== undefined) return [{ depth, text: `${head} (${words.see(known)})` }];
  return [{ depth, text: head }, ...sumLines(term, depth + 1, numbers)];
}

function sumLines(working: Working, depth: number, numbers: Numbers): WorkingLine[] {
  const written = withNumbers(working);
  const { expression, source } = working.formula;
  return [
    { depth, text: expression },
    ...(written === null ? [] : [{ depth, text: `= ${written}` }]),
    { depth, text: `= ${value(working)}` },
    ...Object.entries(working.inputs).flatMap(([symbol, input]) =>
      termsOf(input).flatMap((term) => inputLines(symbol, term, depth + 1, numbers)),
    ),
    { depth, text: sourceText(source) },
  ];
}

interface Wanted {
  readonly term: Term | null;
  readonly of: string | null;
  readonly name?: string;
}

/** In the order in which one is worked out from the other. */
function wantedOf(finding: WorkdayFinding): Wanted[] {
  const samples = finding.samples.flatMap((sample): Wanted[] => {
    const of = words.ofSample(sample.sampleNumber);
    const { flowBefore, flowAfter, flowChange, averageFlow, lowerFlow, wornMin, volume, mass } = sample;
    const { concentration, protectiveConcentration, judged, twaShare } = sample;
    return [
      { term: flowBefore, of, name: 'flowBefore' },
      { term: flowAfter, of, name: 'flowAfter' },
      ...[flowChange, averageFlow, lowerFlow, wornMin, volume, mass].map((term) => ({ term, of })),
      { term: concentration, of },
      { term: protectiveConcentration, of, name: words.judging('concentration') },
      { term: judged, of },
      { term: twaShare, of },
    ];
  });
  const day: Wanted[] = [
    { term: finding.hoursWorked, of: null },
    { term: finding.twa8, of: null },
    { term: finding.protectiveTwa8, of: null, name: words.judging('TWA8') },
    { term: finding.shiftAverage, of: null },
    { term: finding.allowableAverage, of: null },
  ];
  // what is reached already needs nothing more to reach it
  const unreached = finding.standings.filter(({ crossed, atOrAbove }) => crossed !== 'yes' && atOrAbove !== 'yes');
  const open = unreached.map(({ which, unknownWouldReach }) => ({
    term: unknownWouldReach,
    of: null,
    name: words.toReach(en.result[which].toLowerCase()),
  }));
  return [...samples, ...day, ...open];
}

/** Every working once, numbered from 1. */
export function workingsOf(finding: WorkdayFinding): PrintedWorking[] {
  const numbers = new Map<Term, number>();
  return wantedOf(finding).flatMap(({ term, of, name }) => {
    if (term === null || term.kind === 'recorded' || numbers.has(term)) return [];
    const lines = sumLines(term, 0, numbers);
    const number = numbers.size + 1;
    numbers.set(term, number);
    const named = nameInWords(name ?? term.formula.name);
    return [{ number, title: words.title(number, named.charAt(0).toUpperCase() + named.slice(1), of), lines }];
  });
}
