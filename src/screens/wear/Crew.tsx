/** For the crew, in their language: what each of them does tomorrow. The paragraph stands quietly beside each line. */
import { useState } from 'react';
import type { FirstDay } from '#findings/duties/protecting/firstDay.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { type Language, LanguageContext } from '#parts/language.ts';
import { QuietAction } from '#parts/QuietAction.tsx';
import { isCitable } from '#reference/source.ts';
import { en as gear } from '#words/gear.ts';
import { formatInWorking, formatNumber } from '#words/quantity.ts';
import { en } from '#words/wear.ts';
import { crew } from '#words/wearCrew.ts';
import styles from './wear.module.css';

export function Crew({ first }: { readonly first: FirstDay }) {
  const [language, setLanguage] = useState<Language>('en');
  const { presumption, advice, levels } = first;
  const words = crew[language];
  const other = language === 'en' ? 'es' : 'en';
  const factor = advice.floorApf === null ? null : formatNumber(advice.floorApf, '', { digits: 'working' });
  return (
    <LanguageContext value={language}>
      <section className={styles.crew} lang={language}>
        <div className={styles.crewHead}>
          <h2>{words.heading}</h2>
          <span lang={other}>
            <QuietAction onClick={() => setLanguage(other)}>{gear.person.languages[other]}</QuietAction>
          </span>
        </div>
        {levels.aboveUgPerM3 !== null && <p>{words.why(formatInWorking(levels.aboveUgPerM3, 'µg/m³'))}</p>}
        <Lines>
          {presumption.interimProtections.map(({ key, paragraph, source }) => (
            <Line
              key={key}
              detail={isCitable(source) ? <span lang="en">{en.answer.paragraph(paragraph)}</span> : undefined}
            >
              {key === 'respirator' ? words.respirator(factor ?? '') : words.protection[key]}
            </Line>
          ))}
          {factor === null && <Line key="ask">{words.respiratorAsk}</Line>}
          {first.sign !== null && <Line key="sign">{words.sign}</Line>}
          <Line key="noEating">{words.noEating}</Line>
          <Line key="tell">{words.tell}</Line>
        </Lines>
      </section>
    </LanguageContext>
  );
}
