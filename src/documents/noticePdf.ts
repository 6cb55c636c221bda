/** The notice to workers as PDF, each language on pages of its own, with its values attached. */
import { paperWords } from '#words/papers.ts';
import { madePaper } from './madePaper.ts';
import { noticeAttachment, noticePages } from './noticePages.ts';
import { type NoticeInput, type NoticeValues, noticeValues } from './noticeValues.ts';
import type { MadePaper } from './occasion.ts';

/** Throws only if a typeface is not a font. */
export function makeNoticePdf(input: NoticeInput): Promise<MadePaper<NoticeValues>> {
  const { lang, attached } = paperWords[input.languages[0] ?? 'en'];
  return madePaper(input, {
    values: noticeValues(input),
    lang,
    attachment: noticeAttachment,
    attached: attached(noticeAttachment),
    pages: noticePages,
  });
}
