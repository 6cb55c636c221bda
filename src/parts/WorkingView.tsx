/**
 * A working, written like a hand calculation: the formula, the same with the numbers in it, the value; then each input, which opens in
 * turn. Only a source that was read is cited; anything else says that it is ours or common practice.
 */
import type { Recorded, Source, Term, Working } from '#core/formula.ts';
import type { PartsWords } from '#words/parts.ts';
import { formatEstimate, nameInWords } from '#words/quantity.ts';
import { withNumbers } from '#words/workingNumbers.ts';
import { usePartsWords } from './language.ts';
import styles from './WorkingView.module.css';

export interface WorkingViewProps {
  readonly working: Term;
  /** Words for the name of a quantity ('averageFlow'); by default the name is split into its words. */
  readonly nameOf?: ((name: string) => string) | undefined;
}

export function WorkingView({ working, nameOf = nameInWords }: WorkingViewProps) {
  return (
    <div className={styles.working}>
      {working.kind === 'working' ? (
        <Sum working={working} nameOf={nameOf} />
      ) : (
        <p className={styles.line}>
          <Name term={working} nameOf={nameOf} /> <Value term={working} />
        </p>
      )}
    </div>
  );
}

type NameOf = (name: string) => string;

function Sum({ working, nameOf }: { readonly working: Working; readonly nameOf: NameOf }) {
  const { formula, inputs } = working;
  const numbers = withNumbers(working);
  return (
    <>
      <p className={styles.name}>{nameOf(formula.name)}</p>
      <p className={styles.line}>{formula.expression}</p>
      {numbers !== null && <p className={styles.line}>= {numbers}</p>}
      <p className={styles.result}>
        = <Value term={working} />
      </p>
      <ul className={styles.inputs}>
        {Object.entries(inputs).map(([symbol, term]) =>
          (Array.isArray(term) ? (term as readonly Term[]) : [term as Term]).map((each, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the terms of one sum have no other name
            <li key={`${symbol}${i}`}>
              <Input symbol={symbol} term={each} nameOf={nameOf} />
            </li>
          )),
        )}
      </ul>
      <SourceLine source={formula.source} />
    </>
  );
}

function Input({ symbol, term, nameOf }: { readonly symbol: string; readonly term: Term; readonly nameOf: NameOf }) {
  const words = usePartsWords();
  const head = (
    <>
      <span className={styles.symbol}>{symbol}</span> <Name term={term} nameOf={nameOf} /> <Value term={term} />
    </>
  );
  if (term.kind === 'recorded')
    return (
      <p className={styles.input}>
        {head} <span className={styles.quiet}>{whereFrom(term, words)}</span>
      </p>
    );
  return (
    <details className={styles.opens}>
      <summary className={styles.input}>{head}</summary>
      <div className={styles.inner}>
        <Sum working={term} nameOf={nameOf} />
      </div>
    </details>
  );
}

/** A value from the rule or the method is not something that somebody here wrote down. */
function whereFrom({ because }: Recorded, words: PartsWords): string {
  const first = because[0];
  if (first === undefined) return '';
  if (first.startsWith('limit:')) return words.fromRule;
  return first.startsWith('method:') ? words.fromMethod : words.recorded;
}

const nameOfTerm = (term: Recorded | Working): string => (term.kind === 'working' ? term.formula.name : term.name);

function Name({ term, nameOf }: { readonly term: Term; readonly nameOf: NameOf }) {
  return <span>{nameOf(nameOfTerm(term))}</span>;
}

function Value({ term }: { readonly term: Term }) {
  return <strong className={styles.value}>{formatEstimate(term.estimate, term.unit, { digits: 'working' })}</strong>;
}

/** READ and READ-2 were read and are cited; DERIVED is ours; MEMORY is common practice. */
function SourceLine({ source }: { readonly source: Source }) {
  const words = usePartsWords();
  if (source.mark === 'DERIVED') return <p className={styles.source}>{words.ownDerivation}</p>;
  if (source.mark === 'MEMORY') return <p className={styles.source}>{words.commonPractice}</p>;
  return (
    <p className={styles.source}>
      {words.source}: {[source.title, source.section, source.edition].filter(Boolean).join(', ')}
      {source.note !== undefined && `. ${source.note}`}
    </p>
  );
}
