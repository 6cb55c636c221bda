/** The part of pdfkit 0.20 that the papers use. The public typings are of an older version and refuse scope, bytes and tags. */
declare module 'pdfkit' {
  export interface StructureElement {
    readonly dictionary: { data: Record<string, unknown> };
    add(child: StructureElement | (() => void)): StructureElement;
    end(): void;
  }

  export interface DocumentOptions {
    size: [number, number];
    margin: number;
    autoFirstPage: boolean;
    bufferPages: boolean;
    subset: 'PDF/A-3a' | 'PDF/A-1b';
    pdfVersion: '1.4' | '1.7';
    tagged: boolean;
    displayTitle: boolean;
    lang: string;
    font: Uint8Array;
    info: { Title: string; Author: string; Creator: string; Producer: string; CreationDate: Date };
  }

  interface FontkitFace {
    hasGlyphForCodePoint(codePoint: number): boolean;
  }

  class PDFDocument {
    constructor(options: DocumentOptions);
    info: Record<string, string | Date>;
    readonly page: { readonly width: number; readonly height: number };
    _font: { readonly font: FontkitFace };
    _addInfo(): void;
    registerFont(name: string, source: Uint8Array): this;
    font(name: string): this;
    fontSize(sizePt: number): this;
    fillColor(colour: string): this;
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, options: { lineBreak: false; baseline: 'alphabetic' }): this;
    rect(x: number, y: number, width: number, height: number): this;
    fill(colour: string): this;
    save(): this;
    restore(): this;
    rotate(degrees: number, options: { origin: [number, number] }): this;
    addPage(options: { size: [number, number]; margin: number }): this;
    struct(type: string, options?: { scope?: 'Column' | 'Row'; lang?: string; alt?: string }): StructureElement;
    addStructure(element: StructureElement): this;
    markContent(tag: 'Artifact', options: { type: 'Layout' | 'Pagination' | 'Background' }): this;
    endMarkedContent(): this;
    file(
      bytes: Uint8Array,
      options: {
        name: string;
        type: string;
        description: string;
        relationship: 'Data' | 'Source';
        creationDate: Date;
        modifiedDate: Date;
      },
    ): unknown;
    end(): void;
  }
  export default PDFDocument;
}

declare module 'pdfkit/output' {
  import type PDFDocument from 'pdfkit';
  export function toBytes(document: PDFDocument): Promise<Uint8Array>;
}
