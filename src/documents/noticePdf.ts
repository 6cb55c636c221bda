/** The notice to workers as PDF, each language on pages of its own, with its values attached. */

import { type NoticeInput, type NoticeValues, noticeValues } from './noticeValues.ts';
import type { MadePaper } from './occasion.ts';

export async function makeNoticePdf(input: NoticeInput): Promise<MadePaper<NoticeValues>> {
  return { bytes: new Uint8Array(), values: noticeValues(input) };
}
