/**
 * What stands on which page, before any byte is written: the half of a document that tests read. Lengths in points from the top
 * left corner. Blocks stand in reading order.
 */
import type { Paper } from './paper.ts';
import type { StyleName } from './typography.ts';

export interface TextLine {
  readonly text: string;
  readonly style: StyleName;
  readonly xPt: number;
  readonly baselinePt: number;
  /** The line ends inside a word too long for it: no space belongs between it and the next. */
  readonly gluedToNext: boolean;
}

export interface TextBlock {
  readonly kind: 'text';
  readonly tag: 'H1' | 'H2' | 'P';
  readonly lines: readonly TextLine[];
}

/** A ruled line: decoration for the eye, no content. */
export interface RuleBlock {
  readonly kind: 'rule';
  readonly xPt: number;
  readonly yPt: number;
  readonly widthPt: number;
  readonly weightPt: number;
  readonly colour: string;
}

export interface Cell {
  readonly lines: readonly TextLine[];
  /** Columns that the cell stands across. */
  readonly spanCount: number;
}

/** A table's head. On later pages it is repeated for the eye; readers of the tags meet it once. */
export interface TableHeadBlock {
  readonly kind: 'tableHead';
  readonly table: string;
  readonly repeated: boolean;
  readonly cells: readonly Cell[];
}

export interface TableRowBlock {
  readonly kind: 'tableRow';
  readonly table: string;
  readonly cells: readonly Cell[];
}

/** A code that a camera reads, in a square that holds its quiet zone too. */
export interface CodeBlock {
  readonly kind: 'code';
  /** What it says when it is read. */
  readonly holds: string;
  /** The same in words. */
  readonly alt: string;
  readonly xPt: number;
  readonly yPt: number;
  readonly sidePt: number;
  /** Its dark parts. */
  readonly rectangles: readonly {
    readonly xPt: number;
    readonly yPt: number;
    readonly widthPt: number;
    readonly heightPt: number;
  }[];
}

export type Block = TextBlock | RuleBlock | TableHeadBlock | TableRowBlock | CodeBlock;

export interface Page {
  /** Where a part of the paper is in another language than the whole; its pages follow each other. */
  readonly lang?: string;
  readonly blocks: readonly Block[];
  /** Repeated on every page but the first, and at the foot of each: for the eye only. */
  readonly runningHead: readonly TextLine[];
  readonly footer: readonly TextLine[];
}

export interface PageModel {
  readonly paper: Paper;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly title: string;
  readonly author: string;
  readonly lang: string;
  /** Stands across every page when set. */
  readonly across: string | null;
  readonly pages: readonly Page[];
}

/** What laying out needs to know of the typefaces. */
export interface Measure {
  readonly widthPt: (text: string, style: StyleName) => number;
  /** Whether both faces hold this code point. */
  readonly holds: (codePoint: number) => boolean;
}
