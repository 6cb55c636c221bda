/** From pieces to pages: every paper has the same margins, the same foot on each page and the same line at the head of the next ones. */
import { oneLine, placeLines } from './lines.ts';
import type { Measure, Page, PageModel, TextLine } from './pageModel.ts';
import { type Piece, paginate } from './paginate.ts';
import { footerHeightPt, marginPt, type Paper, runningHeadHeightPt, type Size, type Stance, sizeOf } from './paper.ts';
import type { Frame } from './pieces.ts';
import { printable } from './printable.ts';
import type { StyleName } from './typography.ts';

/** What each page says of the whole: what it is, which page, and in small type what it was made with. */
export interface Foot {
  readonly left: string;
  readonly page: (number: number, count: number) => string;
  readonly basis: string;
}

/** Pages that belong together: counted from 1, in one language, beginning on a page of their own. */
export interface Section {
  readonly lang: string;
  readonly pieces: readonly Piece[];
  /** At the head of every page but the first. */
  readonly goesOn: string;
  readonly foot: Foot;
}

export interface LayOut {
  readonly paper: Paper;
  readonly stance: Stance;
  readonly title: string;
  readonly author: string;
  /** Stands across every page when set. */
  readonly across: string | null;
  readonly sections: readonly Section[];
}

/** The room between the margins. */
export const frameOn = (measure: Measure, paper: Paper, stance: Stance): Frame => ({
  measure,
  xPt: marginPt,
  widthPt: sizeOf(paper, stance).widthPt - 2 * marginPt,
});

function footer(frame: Frame, { left, page, basis }: Foot, { heightPt }: Size, at: number, count: number): TextLine[] {
  const { measure, xPt, widthPt } = frame;
  const line = (text: string, style: StyleName, baselinePt: number, align: 'left' | 'right') =>
    placeLines(measure, [{ text, style, gluedToNext: false }], { xPt, widthPt, firstBaselinePt: baselinePt, align });
  const firstPt = heightPt - marginPt - footerHeightPt + 16;
  const counted = page(at, count);
  const leftPt = widthPt - measure.widthPt(counted, 'bodyStrong') - 12;
  return [
    ...line(oneLine(measure, left, 'bodyStrong', leftPt), 'bodyStrong', firstPt, 'left'),
    ...line(counted, 'bodyStrong', firstPt, 'right'),
    ...line(oneLine(measure, basis, 'small', widthPt), 'small', firstPt + 11, 'left'),
  ];
}

function runningHead({ measure, xPt, widthPt }: Frame, goesOn: string): TextLine[] {
  const text = oneLine(measure, goesOn, 'body', widthPt);
  const place = { xPt, widthPt, firstBaselinePt: marginPt + 9, align: 'left' } as const;
  return placeLines(measure, [{ text, style: 'body', gluedToNext: false }], place);
}

function pagesOf(frame: Frame, size: Size, section: Section): Page[] {
  const bodies = paginate(section.pieces, {
    firstTopPt: marginPt - 6,
    nextTopPt: marginPt + runningHeadHeightPt,
    bottomPt: size.heightPt - marginPt - footerHeightPt,
  });
  return bodies.map((blocks, index) => ({
    lang: section.lang,
    blocks,
    runningHead: index === 0 ? [] : runningHead(frame, section.goesOn),
    footer: footer(frame, section.foot, size, index + 1, bodies.length),
  }));
}

/** The language of the whole is that of the first section. */
export function layOut(measure: Measure, { paper, stance, title, author, across, sections }: LayOut): PageModel {
  const frame = frameOn(measure, paper, stance);
  const size = sizeOf(paper, stance);
  const plain = (text: string) => printable(text, measure.holds).replaceAll('\n', ' ');
  return {
    paper,
    ...size,
    title: plain(title),
    author: plain(author),
    lang: sections[0]?.lang ?? 'en-US',
    across,
    pages: sections.flatMap((section) => pagesOf(frame, size, section)),
  };
}
