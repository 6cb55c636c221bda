/** For whoever asks what this is and what it stands on: cautions first, then versions and editions, notices and licence. */
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { Page } from '#parts/Page.tsx';
import { editions } from '#reference/editions.ts';
import { allLimitSets } from '#reference/limits.ts';
import { methods } from '#reference/methods.ts';
import { appVersion } from '#store/version.ts';
import { en as words } from '#words/about.ts';
import styles from './checked.module.css';

export function About() {
  const { rules, formulas } = editions();
  return (
    <Page heading={words.heading} aside={<StandsOn />}>
      <p>{words.what}</p>
      <section className={styles.section}>
        <h2>{words.cautions.heading}</h2>
        <ul className={styles.list}>
          {words.cautions.lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <section className={styles.section}>
        <h2>{words.editions.heading}</h2>
        <Particulars
          items={[
            [words.editions.app, appVersion],
            [words.editions.rules, rules],
            [words.editions.formulas, formulas],
          ]}
        />
      </section>
      <Lines>
        <Line to="/checked">{words.links.checked}</Line>
      </Lines>
      <section className={styles.section}>
        <h2>{words.licence.heading}</h2>
        <p>{words.licence.text}</p>
        <p>
          <a className={styles.file} href="./third-party.txt" target="_blank" rel="noopener">
            {words.links.notices}
          </a>
        </p>
        <p className={styles.quiet}>{words.links.noticesDetail}</p>
      </section>
    </Page>
  );
}

/** The limit sets and methods that are held, as they name themselves. */
function StandsOn() {
  return (
    <>
      <Lines heading={words.editions.limits}>
        {allLimitSets().map(({ id, document, jurisdiction, textHeld, heldComplete }) => (
          <Line
            key={id}
            detail={`${jurisdiction}: ${textHeld.replace(/\.$/, '')}. ${heldComplete ? words.editions.complete : words.editions.figuresOnly}`}
          >
            {document}
          </Line>
        ))}
      </Lines>
      <Lines heading={words.methods}>
        {methods().map(({ id, title, issue }) => (
          <Line key={id} detail={issue}>
            {title}
          </Line>
        ))}
      </Lines>
    </>
  );
}
