/** Label sheets by size and count, and single labels: where each label stands. From memory (MEMORY), so never shown as a citation. */
import { z } from 'zod';
import sheetsFile from '#shared/labels/sheets.json';
import { period } from './dated.ts';
import { readOnce, source } from './source.ts';

const lengthMm = z.number().min(0).max(300);
const labelSheet = z.strictObject({
  id: z.enum(['letter30', 'letter10', 'a4Of21', 'a4Of65', 'single62', 'single57']),
  paper: z.enum(['letter', 'a4']).nullable().describe('null = a roll: each label is a page'),
  columnsCount: z.number().int().min(1).max(8),
  rowsCount: z.number().int().min(1).max(20),
  widthMm: lengthMm.min(20),
  heightMm: lengthMm.min(15),
  leftMm: lengthMm.describe('Edge of the paper to the first label'),
  topMm: lengthMm,
  stepAcrossMm: lengthMm.describe('From the left edge of one label to that of the next'),
  stepDownMm: lengthMm,
  unit: z.literal('mm').describe('Of every length here'),
  source,
});
export const labelSheetsFile = z.strictObject({ effective: period, sheets: z.array(labelSheet).min(1) });
export type LabelSheet = z.infer<typeof labelSheet>;
export type LabelSheetId = LabelSheet['id'];

const read = readOnce(labelSheetsFile, sheetsFile);

export const labelSheets = (): readonly LabelSheet[] => read().sheets;

/** Undefined for an id that is none of the list. */
export const labelSheetById = (id: string): LabelSheet | undefined => read().sheets.find((sheet) => sheet.id === id);
