/**
 * The code of a sample number: a QR code (ISO/IEC 18004) of its bare digits, as modules and as a block of a page. Ten digits fit version
 * 1 (21 modules a side) at the highest level of correction, so every label has a code of the same size whatever its number.
 */
import { encode } from 'uqr';
import type { CodeBlock } from './pageModel.ts';

/** Modules that stay white on each side: ISO/IEC 18004 asks for four. */
export const quietModulesCount = 4;
/** Modules of a side, quiet zone included. */
export const sideModulesCount = 21 + 2 * quietModulesCount;

/** Rows of modules, true = dark, quiet zone included. Throws for anything but 4 to 10 digits: a label holds nothing else. */
export function modulesOf(sampleNumber: string): readonly (readonly boolean[])[] {
  if (!/^\d{4,10}$/.test(sampleNumber)) throw new Error('a code holds 4 to 10 digits');
  return encode(sampleNumber, { ecc: 'H', minVersion: 1, maxVersion: 1, border: quietModulesCount }).data;
}

interface Run {
  readonly column: number;
  readonly row: number;
  readonly count: number;
}

/** Dark modules side by side as one run, so that no seam shows between them. */
function runsOf(row: readonly boolean[], at: number): Run[] {
  const runs: Run[] = [];
  let start = -1;
  for (const [column, dark] of [...row, false].entries()) {
    if (dark && start < 0) start = column;
    if (!dark && start >= 0) {
      runs.push({ column: start, row: at, count: column - start });
      start = -1;
    }
  }
  return runs;
}

/** The code with its quiet zone in the square from `xPt`, `yPt` with sides of `sidePt`. `alt` says in words what it is. */
export function codeBlock(sampleNumber: string, xPt: number, yPt: number, sidePt: number, alt: string): CodeBlock {
  const modulePt = sidePt / sideModulesCount;
  const rectangles = modulesOf(sampleNumber).flatMap((row, at) =>
    runsOf(row, at).map(({ column, count }) => ({
      xPt: xPt + column * modulePt,
      yPt: yPt + at * modulePt,
      widthPt: count * modulePt,
      heightPt: modulePt,
    })),
  );
  return { kind: 'code', holds: sampleNumber, alt, xPt, yPt, sidePt, rectangles };
}
