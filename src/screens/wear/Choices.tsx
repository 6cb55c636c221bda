/** Respirators that reach the factor, in plain words, and what must be there for the factor to hold. */
import type { FirstDay } from '#findings/duties/protecting/firstDay.ts';
import type { RespiratorAdvice } from '#findings/duties/protecting/respirator.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Respirator } from '#reference/respirators.ts';
import { isCitable } from '#reference/source.ts';
import { en } from '#words/wear.ts';
import styles from './wear.module.css';

const words = en.answer;
const shownFirst = 4;

/** The commonest first: those that only clean the air, then those with a blower, then air from elsewhere. */
const bySupply: readonly Respirator['supply'][] = ['airPurifying', 'poweredAirPurifying', 'suppliedContinuous'];
const place = ({ supply }: Respirator): number => {
  const at = bySupply.indexOf(supply);
  return at < 0 ? bySupply.length : at;
};

export function RespiratorLines({ advice }: { readonly advice: RespiratorAdvice }) {
  const sorted = [...advice.choices].sort((a, b) => place(a) - place(b));
  const lines = (some: readonly Respirator[]) =>
    some.map((one) => (
      <Line key={one.id} end={words.factorOf(one.apf.value)}>
        {words.respirator[one.supply][one.facepiece]}
      </Line>
    ));
  return (
    <section className={styles.choices}>
      <Lines heading={words.choices}>{lines(sorted.slice(0, shownFirst))}</Lines>
      {sorted.length > shownFirst && (
        <details>
          <summary className={styles.summary}>{words.allChoices(sorted.length)}</summary>
          <Lines>{lines(sorted.slice(shownFirst))}</Lines>
          {advice.withEvidence.map(({ id, supply, facepiece }) => (
            <p key={id} className={styles.source}>
              {words.withEvidence(words.respirator[supply][facepiece])}
            </p>
          ))}
        </details>
      )}
      <p>{words.hepa}</p>
      <p className={styles.source}>
        {words.eyes} {words.powered}
      </p>
    </section>
  );
}

export function Conditions({ first }: { readonly first: FirstDay }) {
  return (
    <section className={styles.choices}>
      <h2>{words.conditions}</h2>
      <ul className={styles.plain}>
        {first.conditions.map(({ key, source }) => (
          <li key={key}>
            {words.condition[key]}
            {!isCitable(source) && <span className={styles.source}> ({words.notCited})</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
