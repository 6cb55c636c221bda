/** Opens a PDF that can be archived: tagged, typeface embedded, the same bytes for the same input. */
import PDFDocument from 'pdfkit';
import type { Measure } from '../pageModel.ts';
import { type StyleName, styles } from '../typography.ts';

export interface FontBytes {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

export interface Opened {
  readonly paper: { readonly widthPt: number; readonly heightPt: number };
  readonly lang: string;
  /** UTC instant that the file gives as its creation. */
  readonly createdAt: string;
  readonly creator: string;
}

const escapeXml = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/**
 * pdfkit 0.20.2 writes Title and Author into the XMP packet as they are, so that an ampersand breaks the packet. The packet gets them
 * escaped, the information dictionary plain.
 */
function escapeMetadata(document: PDFDocument): void {
  const addInfo = document._addInfo.bind(document);
  document._addInfo = () => {
    const plain = { ...document.info };
    for (const [key, value] of Object.entries(plain))
      if (typeof value === 'string') document.info[key] = escapeXml(value);
    addInfo();
    Object.assign(document.info, plain);
  };
}

export function openPdf(fonts: FontBytes, opened: Opened): PDFDocument {
  const document = new PDFDocument({
    size: [opened.paper.widthPt, opened.paper.heightPt],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    subset: 'PDF/A-3a',
    pdfVersion: '1.7',
    tagged: true,
    displayTitle: true,
    lang: opened.lang,
    font: fonts.regular,
    info: {
      Title: '',
      Author: '',
      Creator: opened.creator,
      Producer: 'PDFKit',
      CreationDate: new Date(opened.createdAt),
    },
  });
  escapeMetadata(document);
  return document.registerFont('regular', fonts.regular).registerFont('bold', fonts.bold);
}

/** Widths and coverage of the two faces, read from the document that will be written. */
export function measureOf(document: PDFDocument): Measure {
  const faces = ['regular', 'bold'].map((name) => document.font(name)._font.font);
  const widths = new Map<string, number>();
  const holds = new Map<number, boolean>();
  const measured = (text: string, style: StyleName): number =>
    document.font(styles[style].face).fontSize(styles[style].sizePt).widthOfString(text);
  return {
    widthPt: (text, style) => {
      const key = `${style} ${text}`;
      const widthPt = widths.get(key) ?? measured(text, style);
      widths.set(key, widthPt);
      return widthPt;
    },
    holds: (codePoint) => {
      const held = holds.get(codePoint) ?? faces.every((face) => face.hasGlyphForCodePoint(codePoint));
      holds.set(codePoint, held);
      return held;
    },
  };
}
