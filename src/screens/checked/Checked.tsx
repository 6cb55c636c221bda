/**
 * For whoever wants to trust the arithmetic or take it apart: published examples with their inputs, what was printed, what we get now on
 * this device, and how far apart the two are.
 */
import { type CheckedExample, checkedCommon, checkedPublished } from '#findings/checkedExamples.ts';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { en as words } from '#words/checked.ts';
import { formatInWorking, nameInWords } from '#words/quantity.ts';
import styles from './checked.module.css';

export function Checked() {
  const published = checkedPublished();
  const common = checkedCommon();
  const all = [...published, ...common];
  const apart = all.filter(({ within }) => !within);
  return (
    <Page heading={words.heading} back="/about">
      <p>{words.intro}</p>
      <Notice kind={apart.length > 0 ? 'alert' : 'quiet'}>
        {apart.length > 0 ? words.someDiffer(apart.length, all.length) : words.allAgree(all.length)}
      </Notice>
      <section>
        <h2>{words.published}</h2>
        {published.map((one) => (
          <Example key={one.example.id} checked={one} />
        ))}
      </section>
      <section>
        <h2>{words.common}</h2>
        {common.map((one) => (
          <Example key={one.example.id} checked={one} />
        ))}
      </section>
    </Page>
  );
}

function Example({ checked: { example, formula, ours, difference, within } }: { readonly checked: CheckedExample }) {
  const { title, inputs, printed, unit, source, toleranceReason } = example;
  const cited = [source.title, source.section, source.edition].filter(Boolean).join(', ');
  const unitHere = unit === formula.unit ? formula.unit : '';
  const number = (value: number): string => formatInWorking(value, unitHere);
  return (
    <article className={styles.example}>
      <h3>{title}</h3>
      <p className={styles.sum}>{formula.expression}</p>
      <dl className={styles.numbers}>
        <dt>{words.inputs}</dt>
        <dd>
          {Object.entries(inputs).map(([symbol, value]) => (
            <span key={symbol} className={styles.input}>
              <i>{symbol}</i> ={' '}
              {([] as number[])
                .concat(value)
                .map((one) => formatInWorking(one, ''))
                .join(', ')}{' '}
              <span className={styles.quiet}>{nameInWords(formula.inputs[symbol]?.name ?? '')}</span>
            </span>
          ))}
        </dd>
        <dt>{words.printed}</dt>
        <dd>{printed}</dd>
        <dt>{words.ours}</dt>
        <dd>
          <strong>{number(ours)}</strong>
        </dd>
        <dt>{words.difference}</dt>
        <dd>
          {number(difference)}{' '}
          <StandingMark standing={within ? 'done' : 'due'}>{within ? words.agrees : words.differs}</StandingMark>
        </dd>
      </dl>
      <p className={styles.quiet}>
        {words.tolerance(toleranceReason)}. {source.mark.startsWith('READ') && `${words.source}: ${cited}.`}
      </p>
    </article>
  );
}
