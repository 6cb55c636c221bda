/** Where each label stands on its sheet, and where number, text and code stand on a label. Lengths in points from the top left corner. */
import { quietModulesCount, sideModulesCount } from './code.ts';
import { sizeOf } from './paper.ts';

/** A label sheet as src/reference/labelSheets.ts holds it. */
export interface LabelSheetShape {
  readonly id: string;
  readonly paper: 'letter' | 'a4' | null;
  readonly columnsCount: number;
  readonly rowsCount: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly stepAcrossMm: number;
  readonly stepDownMm: number;
}

export interface Box {
  readonly xPt: number;
  readonly yPt: number;
  readonly widthPt: number;
  readonly heightPt: number;
}

/** An inch is 25.4 mm and 72 points. */
export const ptOf = (mm: number): number => (mm * 72) / 25.4;

/** Of a whole page: the sheet of paper, or the single label. */
export const pageSizeOf = ({ paper, widthMm, heightMm }: LabelSheetShape) =>
  paper === null ? { widthPt: ptOf(widthMm), heightPt: ptOf(heightMm) } : sizeOf(paper, 'upright');

export const placesCount = ({ columnsCount, rowsCount }: LabelSheetShape): number => columnsCount * rowsCount;

/** Label on its page, `place` counted from 0 along the rows. */
export function labelAt(sheet: LabelSheetShape, place: number): Box {
  const column = place % sheet.columnsCount;
  const row = Math.floor(place / sheet.columnsCount);
  return {
    xPt: ptOf(sheet.leftMm + column * sheet.stepAcrossMm),
    yPt: ptOf(sheet.topMm + row * sheet.stepDownMm),
    widthPt: ptOf(sheet.widthMm),
    heightPt: ptOf(sheet.heightMm),
  };
}

/** White along the edges: printers shift a sheet by about a millimetre. */
const edgePt = ptOf(1.5);
/** Sides of a module in mm: at 200 dots an inch 0.45 mm are three and a half dots, about the least that reads surely. */
const leastModuleMm = 0.45;
const mostModuleMm = 1;
/** Of a label's width. */
const mostCodeShare = 0.42;
/** Narrower labels have the number above the code, across the whole width. */
const besideFromPt = ptOf(45);

export interface LabelRoom {
  /** Square of the code, quiet zone included; that zone may reach to the edge, since nothing is printed there. */
  readonly code: Box;
  readonly number: Box;
  /** Who, day and site. */
  readonly text: Box;
}

function codeSidePt({ widthPt, heightPt }: Box, topPt: number): number {
  const mostPt = Math.min(
    widthPt * mostCodeShare,
    heightPt - topPt - edgePt / 2,
    ptOf(mostModuleMm) * sideModulesCount,
  );
  return Math.max(mostPt, ptOf(leastModuleMm) * sideModulesCount);
}

/** The rooms of one label, which never meet. `numberPt` is the height of a number that stands above. */
export function roomOf(label: Box, numberPt: number): LabelRoom {
  const { xPt, yPt, widthPt, heightPt } = label;
  const isBeside = widthPt >= besideFromPt;
  const topPt = isBeside ? edgePt / 2 : edgePt / 2 + numberPt;
  const sidePt = codeSidePt(label, topPt);
  const code = {
    xPt: xPt + widthPt - sidePt,
    yPt: yPt + heightPt - edgePt / 2 - sidePt,
    widthPt: sidePt,
    heightPt: sidePt,
  };
  const centred = isBeside ? { ...code, yPt: yPt + (heightPt - sidePt) / 2 } : code;
  const leftPt = xPt + edgePt;
  const besidePt = widthPt - sidePt - edgePt;
  const number = {
    xPt: leftPt,
    yPt: yPt + edgePt,
    widthPt: isBeside ? besidePt : widthPt - 2 * edgePt,
    heightPt: numberPt,
  };
  const textTopPt = number.yPt + numberPt;
  return {
    code: centred,
    number: isBeside ? number : { ...number, yPt: yPt + edgePt / 2 },
    text: { xPt: leftPt, yPt: textTopPt, widthPt: besidePt, heightPt: yPt + heightPt - edgePt - textTopPt },
  };
}

/** Side of one module on a sheet's labels, in mm: what a camera has to resolve. */
export const moduleMmOf = (code: Box): number => (code.widthPt / sideModulesCount / 72) * 25.4;
export const quietPtOf = (code: Box): number => (code.widthPt / sideModulesCount) * quietModulesCount;
