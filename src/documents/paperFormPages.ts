/** The blank form as pages: one sheet for two workers, in the order in which the phone asks; each language on pages of its own. */
import { paperFormWords } from '#words/paperForm.ts';
import { paperWords } from '#words/papers.ts';
import { formatDay } from '#words/quantity.ts';
import { writeRow } from './form.ts';
import { frameOn, layOut, type Section } from './layOut.ts';
import type { Occasion, PaperLanguage } from './occasion.ts';
import type { Measure, PageModel } from './pageModel.ts';
import type { Paper } from './paper.ts';
import { after, before, day, flowRows, on, type Sheet } from './paperFormParts.ts';
import type { Frame } from './pieces.ts';
import { footOf, headed, opening, paragraph } from './reading.ts';

export const paperFormAttachment = 'paper-form.json';

export interface PaperFormValues extends Occasion {
  readonly formFormat: 'paperForm.v1';
  readonly languages: readonly PaperLanguage[];
  /** Known before the shift, printed where known; null leaves the line to write on. */
  readonly siteName: string | null;
  readonly workOn: string | null;
  /** Two workers a sheet. */
  readonly sheetsCount: number;
}

function sheetSection(values: PaperFormValues, language: PaperLanguage, number: number, frame: Frame): Section {
  const words = paperFormWords[language];
  const paper = paperWords[language];
  const sheet: Sheet = { frame, words, id: `${language}-${number}` };
  const { siteName, workOn, sheetsCount } = values;
  const title = { title: words.title, lead: words.lead, revision: null, why: null };
  return {
    lang: paper.lang,
    pieces: [
      ...opening(frame, paper, values, title),
      ...paragraph(frame, words.strike, 'body', 5),
      writeRow(
        frame,
        [
          { label: words.head.site, share: 36, value: siteName },
          { label: words.head.workOn, share: 24, value: workOn === null ? null : formatDay(workOn, language) },
          { label: words.head.by, share: 28 },
          { label: words.head.sheet, share: 12, value: words.sheetOf(number, sheetsCount) },
        ],
        6,
      ),
      ...headed(frame, words.flowBefore, 9),
      ...paragraph(frame, words.flowHint, 'body', 1),
      ...flowRows(sheet, 'flowBefore', words.beforeRows),
      ...before(sheet),
      ...on(sheet),
      ...after(sheet),
      ...day(sheet),
    ],
    goesOn: [paper.goesOn(words.title), words.sheetOf(number, sheetsCount)].join(' · '),
    foot: footOf(paper, values, words.short, null),
  };
}

export function paperFormPages(values: PaperFormValues, paper: Paper, measure: Measure): PageModel {
  const frame = frameOn(measure, paper, 'upright');
  const numbers = Array.from({ length: values.sheetsCount }, (_, at) => at + 1);
  const words = paperFormWords[values.languages[0] ?? 'en'];
  return layOut(measure, {
    paper,
    stance: 'upright',
    title: [words.title, ...(values.siteName === null ? [] : [values.siteName])].join(', '),
    author: values.firmName,
    across: values.practice ? paperWords.en.example : null,
    sections: values.languages.flatMap((language) =>
      numbers.map((number) => sheetSection(values, language, number, frame)),
    ),
  });
}
