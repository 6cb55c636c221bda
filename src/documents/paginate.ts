/** Puts pieces of known height on pages: no piece is broken, a table that goes on starts each page with its head. */
import type { Block } from './pageModel.ts';

export interface Piece {
  readonly heightPt: number;
  readonly gapBeforePt: number;
  /** Stays on one page with the piece after it. */
  readonly keepWithNext: boolean;
  readonly place: (topPt: number) => readonly Block[];
  /** Comes first when this piece opens a page: the head of the table it goes on with. */
  readonly repeats: Piece | null;
}

export interface Column {
  readonly firstTopPt: number;
  readonly nextTopPt: number;
  readonly bottomPt: number;
}

/** Pieces that must stand together, in order. */
function groupsOf(pieces: readonly Piece[]): Piece[][] {
  const groups: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open) groups.at(-1)?.push(piece);
    else groups.push([piece]);
    open = piece.keepWithNext;
  }
  return groups;
}

const heightOf = (group: readonly Piece[], isTop: boolean): number =>
  group.reduce((sum, piece, index) => sum + piece.heightPt + (isTop && index === 0 ? 0 : piece.gapBeforePt), 0);

/** Blocks by page. A group taller than a page is broken between its pieces; a single piece never is. */
export function paginate(pieces: readonly Piece[], column: Column): Block[][] {
  const pages: Block[][] = [[]];
  let atPt = column.firstTopPt;
  let isTop = true;
  const put = (piece: Piece) => {
    const topPt = atPt + (isTop ? 0 : piece.gapBeforePt);
    pages.at(-1)?.push(...piece.place(topPt));
    atPt = topPt + piece.heightPt;
    isTop = false;
  };
  const turn = (next: Piece) => {
    pages.push([]);
    atPt = column.nextTopPt;
    isTop = true;
    if (next.repeats) put(next.repeats);
  };
  const fits = (group: readonly Piece[]) => atPt + heightOf(group, isTop) <= column.bottomPt;
  const roomPt = column.bottomPt - column.nextTopPt;
  for (const group of groupsOf(pieces)) {
    const units = heightOf(group, true) > roomPt ? group.map((piece) => [piece]) : [group];
    for (const unit of units) {
      const [first] = unit;
      if (first && !isTop && !fits(unit)) turn(first);
      for (const piece of unit) put(piece);
    }
  }
  return pages;
}
