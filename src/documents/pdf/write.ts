/** Page model to bytes, with what is attached: the same way for every paper. */
import { toBytes } from 'pdfkit/output';
import type { Measure, PageModel } from '../pageModel.ts';
import { type Size, sizeOf } from '../paper.ts';
import { drawPages } from './draw.ts';
import { type FontBytes, measureOf, openPdf } from './open.ts';

export interface Attachment {
  readonly name: string;
  readonly type: 'application/json' | 'text/plain';
  readonly description: string;
  readonly relationship: 'Data' | 'Source';
  readonly text: string;
}

export interface Written {
  readonly fonts: FontBytes;
  readonly lang: string;
  /** UTC instant that the file and what is attached give as their creation: the same paper gives the same bytes. */
  readonly issuedInstant: string;
  readonly app: string;
  readonly pagesOf: (measure: Measure) => PageModel;
  readonly attachments: readonly Attachment[];
}

/** Its pages set their own size when they are added. */
const anySize: Size = sizeOf('letter', 'upright');

/** Throws only if a typeface is not a font. */
export async function writePdf({
  fonts,
  lang,
  issuedInstant,
  app,
  pagesOf,
  attachments,
}: Written): Promise<Uint8Array> {
  const document = openPdf(fonts, { paper: anySize, lang, createdAt: issuedInstant, creator: `Fullshift ${app}` });
  const model = pagesOf(measureOf(document));
  document.info.Title = model.title;
  document.info.Author = model.author;
  const bytes = toBytes(document);
  const issued = new Date(issuedInstant);
  for (const { name, type, description, relationship, text } of attachments)
    document.file(new TextEncoder().encode(text), {
      name,
      type,
      description,
      relationship,
      creationDate: issued,
      modifiedDate: issued,
    });
  drawPages(document, model);
  document.end();
  return bytes;
}
