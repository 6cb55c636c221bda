/** The notice to workers as pages, one section a language. */
import type { Estimate } from '#core/estimate.ts';
import { noticeWords } from '#words/notice.ts';
import { paperWords } from '#words/papers.ts';
import { formatDay, formatEstimate, formatList, formatMinutes, formatQuantity } from '#words/quantity.ts';
import { noticeGearPieces } from './gearOnPaper.ts';
import { frameOn, layOut, type Section } from './layOut.ts';
import type { NoticeStanding, NoticeValues } from './noticeValues.ts';
import type { PaperLanguage } from './occasion.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Piece } from './paginate.ts';
import type { Paper } from './paper.ts';
import { type Frame, rulePiece } from './pieces.ts';
import { closing, fieldRows, footOf, headed, opening, paragraph, plainTable, signatureLine } from './reading.ts';
import { ink } from './typography.ts';

export const noticeAttachment = 'notice.json';

/** One language of one notice. */
interface Telling {
  readonly frame: Frame;
  readonly values: NoticeValues;
  readonly language: PaperLanguage;
  readonly words: (typeof noticeWords)['en'];
}

function figureText({ values, language }: Telling, estimate: Estimate): string {
  const against = [values.actionLevel.limitUgPerM3, values.pel.limitUgPerM3];
  return formatEstimate(estimate, 'µg/m³', { language, against });
}

function figure(telling: Telling): Piece[] {
  const { frame, values, words } = telling;
  const { twa8UgPerM3: average } = values;
  const shown = average === null ? words.averageNone : figureText(telling, average);
  const bound =
    average?.kind === 'atLeast'
      ? [words.atLeast]
      : average?.kind === 'between'
        ? [average.lower === 0 ? words.lessThan : words.between]
        : [];
  return [
    ...headed(frame, words.average, 10),
    ...paragraph(frame, shown.charAt(0).toUpperCase() + shown.slice(1), 'big', 4),
    ...paragraph(frame, [...bound, ...(values.resultOwed ? [words.owed] : []), words.averageText].join(' '), 'read', 0),
  ];
}

function standing(telling: Telling): Piece[] {
  const { frame, values, words, language } = telling;
  const row = (which: 'actionLevel' | 'pel', { limitUgPerM3, verdict }: NoticeStanding) => [
    words.limit(which, limitUgPerM3),
    words.verdicts[verdict],
    words.limitText[which],
  ];
  const columns = [
    { head: words.limitHead, share: 0.36 },
    { head: words.verdictHead, share: 0.3, style: 'plainStrong' as const },
    { head: words.limitTextHead, share: 0.34 },
  ];
  const { hoursWorked, allowableUgPerM3, shiftAverageUgPerM3 } = values;
  const long =
    hoursWorked === null || allowableUgPerM3 === null
      ? []
      : paragraph(
          frame,
          words.longDay(
            formatMinutes(hoursWorked * 60),
            formatQuantity(allowableUgPerM3, 'µg/m³', { language }),
            shiftAverageUgPerM3 === null
              ? null
              : formatEstimate(shiftAverageUgPerM3, 'µg/m³', { language, against: [allowableUgPerM3] }),
          ),
        );
  return [
    ...headed(frame, words.standing),
    ...plainTable(frame, `standing-${language}`, columns, [
      row('actionLevel', values.actionLevel),
      row('pel', values.pel),
    ]),
    ...long,
  ];
}

/** Lines to write the corrective action on by hand, where none is given and the rule asks for it. */
const openLines = (frame: Frame): Piece[] => Array.from({ length: 3 }, () => rulePiece(frame, 20, 0.75, ink.rule));

function corrective(telling: Telling): Piece[] {
  const { frame, values, words, language } = telling;
  const { correctiveAction, pelStatement, pel } = values;
  if (pelStatement === null && correctiveAction === null) return [];
  const own = language === 'es' ? correctiveAction?.es : correctiveAction?.en;
  const text = own ?? correctiveAction?.en;
  const said =
    text === undefined ? openLines(frame) : paragraph(frame, own ? text : `${words.correctiveIn} ${text}`, 'read', 2);
  if (pelStatement === null) return [...headed(frame, words.correctiveAlso), ...said];
  return [
    ...headed(frame, words.pelHeadings[pelStatement]),
    ...paragraph(frame, words.pelStatement[pelStatement](pel.limitUgPerM3), 'statement', 4),
    ...paragraph(frame, words.corrective, 'readStrong', 5),
    ...said,
  ];
}

function measured({ frame, values, words, language }: Telling): Piece[] {
  const tasks = values.tasks.map((task) => task[language]).join('; ');
  const rows: [string, string][] = [
    [words.day, formatDay(values.workOn, language, 'weekday')],
    [words.site, values.siteName ?? words.siteNone],
    [words.task, tasks],
    ...(values.sampleNumbers.length > 0
      ? [[words.samples, formatList(values.sampleNumbers, language)] as [string, string]]
      : []),
    [words.by, values.measuredBy ?? values.firmName],
    [words.respirator, values.respirator?.[language] ?? paperWords[language].notNoted],
    [words.received, formatDay(values.receivedOn, language)],
  ];
  return [...headed(frame, words.measured), ...fieldRows(frame, rows)];
}

function standsFor({ frame, values, words, language }: Telling): Piece[] {
  const { workers, form, shownAs } = values;
  const signs = form === 'inWriting';
  const hasOthers = workers.some(({ employer }) => employer !== null);
  const columns = [
    { head: shownAs === 'name' ? words.columns.who : words.columns.number, share: 0.36, style: 'plainStrong' as const },
    { head: words.columns.what, share: 0.18 },
    ...(hasOthers ? [{ head: words.columns.employer, share: 0.2 }] : []),
    ...(signs ? [{ head: words.columns.given, share: 0.26 }] : []),
  ];
  const rows = workers.map(({ shown, employer, measured: carried }) => [
    shown ?? words.writeHere,
    carried ? words.carriedPump : words.sameWork,
    ...(hasOthers ? [employer ?? words.ownFirm] : []),
    ...(signs ? [''] : []),
  ]);
  const one = workers.length === 1 && workers[0]?.measured;
  return [
    ...headed(frame, words.standsFor),
    ...paragraph(frame, one ? words.standsForOne : words.standsForText, 'read', 2),
    ...plainTable(frame, `standsFor-${language}`, columns, rows, { rowPaddingPt: signs ? 5 : 2 }),
  ];
}

function closes({ frame, values, words, language }: Telling): Piece[] {
  const { next, questionsTo, places, form } = values;
  const nextText = next === null ? words.nextOpen : words.nextText[next.due](next.dueOn);
  const paper = paperWords[language];
  const posted = places.length > 0 ? words.posted(formatList(places, language)) : words.postedOpen;
  return [
    ...headed(frame, words.next),
    ...paragraph(frame, nextText, 'read', 2),
    ...headed(frame, words.rights),
    ...words.rightsLines.flatMap((line) => paragraph(frame, line, 'read', 2)),
    ...headed(frame, words.questions),
    ...paragraph(frame, questionsTo === null ? words.askOpen : words.askText(questionsTo), 'read', 2),
    ...(form === 'posted' ? paragraph(frame, posted, 'readStrong', 8) : []),
    signatureLine(frame, [words.signFor, paper.sign.signature, paper.sign.date]),
    ...paragraph(frame, words.basis(values.document, values.paragraph), 'body', 8),
    ...(values.ruleHeld ? [] : paragraph(frame, words.notHeld, 'bodyStrong', 3)),
    ...closing(frame, paper, values, noticeAttachment),
  ];
}

function sectionIn(language: PaperLanguage, frame: Frame, values: NoticeValues): Section {
  const words = noticeWords[language];
  const paper = paperWords[language];
  const telling: Telling = { frame, values, language, words };
  const { firmName, workOn, revision, why } = values;
  const lead = values.from === 'sampled' ? words.lead(firmName, workOn) : words.leadReported(firmName, workOn);
  return {
    lang: paper.lang,
    pieces: [
      ...opening(frame, paper, values, { title: words.title, lead, revision, why }),
      ...figure(telling),
      ...noticeGearPieces(frame, values.gearDoubts, language),
      ...corrective(telling),
      ...standing(telling),
      ...measured(telling),
      ...standsFor(telling),
      ...closes(telling),
    ],
    goesOn: [paper.goesOn(words.title), firmName, formatDay(workOn, language)].join(' · '),
    foot: footOf(paper, values, words.short, revision),
  };
}

export function noticePages(values: NoticeValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'upright');
  const words = noticeWords[values.languages[0] ?? 'en'];
  return layOut(measure, {
    paper,
    stance: 'upright',
    title: words.documentTitle(values.siteName ?? values.firmName, values.workOn, values.revision),
    author: values.firmName,
    across: values.practice ? paperWords.en.example : null,
    sections: values.languages.map((language) => sectionIn(language, frame, values)),
  });
}
