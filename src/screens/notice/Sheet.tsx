/** One language of the notice, as the worker reads it on paper: the same values and the same words. */
import type { NoticeStanding, NoticeValues } from '#documents/noticeValues.ts';
import { Particulars } from '#parts/Lines.tsx';
import { LanguageContext } from '#parts/language.ts';
import { noticeGear, noticeGearLines } from '#words/gearOnPaper.ts';
import { noticeWords } from '#words/notice.ts';
import { formatDay, formatEstimate, formatMinutes, formatQuantity } from '#words/quantity.ts';
import styles from './notice.module.css';
import type { PaperLanguage } from './noticeDraft.ts';

export interface SheetProps {
  readonly values: NoticeValues;
  readonly language: PaperLanguage;
}

export function Sheet({ values, language }: SheetProps) {
  const words = noticeWords[language];
  const { twa8UgPerM3: average, correctiveAction: action } = values;
  const against = [values.actionLevel.limitUgPerM3, values.pel.limitUgPerM3];
  const figure = average === null ? words.averageNone : formatEstimate(average, 'µg/m³', { language, against });
  return (
    <LanguageContext value={language}>
      <article className={styles.sheet} lang={language}>
        <h3>{words.title}</h3>
        <p>{words.lead(values.firmName, values.workOn)}</p>
        <p>{words.average}</p>
        <p className={styles.figure}>{figure}</p>
        <p>{words.averageText}</p>
        {average?.kind === 'atLeast' && <p>{words.atLeast}</p>}
        {average?.kind === 'between' && <p>{average.lower === 0 ? words.lessThan : words.between}</p>}
        {values.resultOwed && <p>{words.owed}</p>}
        <GearInDoubt values={values} language={language} />
        <Statement values={values} language={language} />
        {action !== null && <Action action={action} language={language} also={values.pelStatement === null} />}
        <Particulars
          items={[
            [
              words.limit('actionLevel', values.actionLevel.limitUgPerM3),
              words.verdicts[standingOf(values.actionLevel)],
            ],
            [words.limit('pel', values.pel.limitUgPerM3), words.verdicts[standingOf(values.pel)]],
            [words.day, formatDay(values.workOn, language, 'weekday')],
            [words.site, values.siteName ?? words.siteNone],
            [words.task, values.tasks.map((task) => task[language]).join(', ')],
            ...(values.respirator === null ? [] : [[words.respirator, values.respirator[language]] as const]),
          ]}
        />
        <LongDay values={values} language={language} />
        <h4>{words.standsFor}</h4>
        <p>{values.workers.length > 1 ? words.standsForText : words.standsForOne}</p>
        <Particulars
          items={values.workers.map(({ workerId, shown, measured }) => [
            shown ?? words.writeHere,
            <span key={workerId}>{measured ? words.carriedPump : words.sameWork}</span>,
          ])}
        />
        <h4>{words.next}</h4>
        <p>{values.next === null ? words.nextOpen : words.nextText[values.next.due](values.next.dueOn)}</p>
        <h4>{words.rights}</h4>
        {words.rightsLines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p>{values.questionsTo === null ? words.askOpen : words.askText(values.questionsTo)}</p>
        <p className={styles.quiet}>{words.basis(values.document, values.paragraph)}</p>
      </article>
    </LanguageContext>
  );
}

const standingOf = ({ verdict }: NoticeStanding): NoticeStanding['verdict'] => verdict;

function GearInDoubt({ values: { gearDoubts }, language }: SheetProps) {
  if (gearDoubts.length === 0) return null;
  const words = noticeGear[language];
  return (
    <>
      <h4>{words.heading}</h4>
      {noticeGearLines(gearDoubts, language).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

function Statement({ values: { pelStatement, pel }, language }: SheetProps) {
  if (pelStatement === null) return null;
  return <p className={styles.statement}>{noticeWords[language].pelStatement[pelStatement](pel.limitUgPerM3)}</p>;
}

interface ActionProps {
  readonly action: NonNullable<NoticeValues['correctiveAction']>;
  readonly language: PaperLanguage;
  readonly also: boolean;
}

function Action({ action, language, also }: ActionProps) {
  const words = noticeWords[language];
  const foreign = language === 'es' && action.es === null;
  return (
    <>
      <p>{also ? words.correctiveAlso : words.corrective}</p>
      {foreign && <p>{words.correctiveIn}</p>}
      <p lang={foreign ? 'en' : undefined}>{(language === 'es' ? action.es : null) ?? action.en}</p>
    </>
  );
}

function LongDay({ values, language }: SheetProps) {
  const { hoursWorked, allowableUgPerM3, shiftAverageUgPerM3: average } = values;
  if (hoursWorked === null || allowableUgPerM3 === null) return null;
  const allowable = formatQuantity(allowableUgPerM3, 'µg/m³', { language });
  const was = average === null ? null : formatEstimate(average, 'µg/m³', { language, against: [allowableUgPerM3] });
  return <p>{noticeWords[language].longDay(formatMinutes(hoursWorked * 60), allowable, was)}</p>;
}
