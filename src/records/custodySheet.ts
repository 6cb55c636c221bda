/**
 * The values a custody sheet is made with: what the courier and the laboratory read. Written when the box is packed; used to be the
 * laboratory's own paper form. The same JSON is attached to the PDF and stored in the fact custodySheetIssued.v1; the record behind it is
 * attached beside it (store/recordOfBox.ts), and from that a lost phone's shift is rebuilt. It holds no personal data beyond what the
 * sheet prints.
 */
import { z } from 'zod';
import { day, instant, note, recordId, text } from './common.ts';
import { mishap } from './facts/sample.ts';

/**
 * Why a value is absent. Each prints as a word, never as 0 and never as an empty cell.
 * notTaken: nobody read or noted it. notStated: left open when the box was packed. noAirDrawn: a field blank.
 * notAveraged: no average flow may be formed from the readings, so there is no volume either.
 */
export const absence = z.enum(['notTaken', 'notStated', 'noAirDrawn', 'notAveraged']);
export type Absence = z.infer<typeof absence>;

/** Stands where a value would: `"flowAfterLPerMin": { "kind": "absent", "why": "notTaken" }`. */
export const absentValue = z.looseObject({ kind: z.literal('absent'), why: absence });
export type AbsentValue = { readonly kind: 'absent'; readonly why: Absence };

/** A value that stands on the sheet, or the reason why none does. */
export type Stated<T extends string | number> = T | AbsentValue;
export const absent = (why: Absence): AbsentValue => ({ kind: 'absent', why });
export const isAbsent = (value: unknown): value is AbsentValue =>
  typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'absent';

const orAbsent = <T extends z.ZodType>(value: T) => z.union([value, absentValue]);

/** Local time at the site with its offset: 2026-11-25T07:12:00-05:00. Its digits print as they stand. */
export const localTime = z.iso.datetime({ offset: true });

const quantity = orAbsent(z.number().min(0));

export const custodyRow = z.looseObject({
  sampleId: recordId,
  sampleNumber: z.string().regex(/^\d{4,10}$/),
  sampleKind: z.enum(['air', 'blank']),
  workOn: day,
  worker: orAbsent(text).describe("Name or the firm's identifier, as the sheet shows it"),
  lotNumber: text,
  startedAt: orAbsent(localTime),
  stoppedAt: orAbsent(localTime),
  durationMin: quantity.describe('Minutes worn with the pump running'),
  flowBeforeLPerMin: quantity,
  flowAfterLPerMin: quantity,
  averageFlowLPerMin: quantity,
  volumeL: quantity,
  remarks: z.array(note),
  mishaps: z.array(mishap).describe('What happened to the cassette, by key; the paper says it in words'),
  void: z.boolean().describe('Marked void by the firm; it travels with its number all the same'),
});
export type CustodyRow = z.infer<typeof custodyRow>;

export const custodySheet = z.looseObject({
  sheetFormat: z.literal('custodySheet.v1'),
  boxId: recordId,
  revision: z.string().regex(/^[1-9]\d*$/),
  why: orAbsent(note).describe('Why this revision replaces the one before; the first has none'),
  issuedAt: localTime,
  practice: z.boolean().describe('EXAMPLE stands across every page'),
  firmName: text,
  site: z.looseObject({
    name: text,
    place: orAbsent(text).describe('Where the site is, in words'),
    stateCode: z.string().regex(/^[A-Z]{2}$/),
    setting: z.enum(['indoors', 'outdoors']),
    zone: text.describe('IANA time zone in which every time on the sheet is given'),
  }),
  samplerName: text,
  laboratory: z.looseObject({ name: text, address: orAbsent(note), accreditation: orAbsent(text) }),
  analysis: text,
  method: orAbsent(text),
  reportingLimitUg: quantity.describe('Reporting limit asked of the laboratory, per sample'),
  includeWallDeposit: z.boolean(),
  callBeforeReanalysis: z.boolean(),
  turnaround: text,
  remark: orAbsent(note),
  workersShownAs: z.enum(['name', 'identifier']),
  lots: z.array(z.looseObject({ lotNumber: text, media: text })).min(1),
  rows: z.array(custodyRow).min(1).max(200),
  counts: z.looseObject({ airCount: z.number().int().min(0), blankCount: z.number().int().min(0) }),
  heads: z
    .array(z.looseObject({ factId: text, link: text }))
    .describe('Head of each writer chain when the sheet was made: proves later change of what stood before'),
  editions: z.looseObject({ app: text, rules: text, formulas: text }),
  /** The same moment as issuedAt, in UTC: the creation date of the PDF, so that the same sheet gives the same bytes. */
  issuedInstant: instant,
});
export type CustodySheet = z.infer<typeof custodySheet>;

/** Reason keys for a sheet whose parts contradict each other; an empty list is a sound sheet. */
export type SheetContradiction =
  | 'countsDiffer'
  | 'sampleTwice'
  | 'numberTwice'
  | 'lotMissing'
  | 'revisionWithoutReason';

/** What the schema cannot see: counts against rows, one cassette twice, a lot nobody lists, a later revision with no reason. */
export function contradictionsOf(sheet: CustodySheet): SheetContradiction[] {
  const blankCount = sheet.rows.filter((row) => row.sampleKind === 'blank').length;
  const lots = new Set(sheet.lots.map((lot) => lot.lotNumber));
  const differ = sheet.counts.blankCount !== blankCount || sheet.counts.airCount !== sheet.rows.length - blankCount;
  const checks: readonly (readonly [SheetContradiction, boolean])[] = [
    ['countsDiffer', differ],
    ['sampleTwice', new Set(sheet.rows.map((row) => row.sampleId)).size !== sheet.rows.length],
    ['numberTwice', new Set(sheet.rows.map((row) => row.sampleNumber)).size !== sheet.rows.length],
    ['lotMissing', sheet.rows.some((row) => !lots.has(row.lotNumber))],
    ['revisionWithoutReason', sheet.revision !== '1' && isAbsent(sheet.why)],
  ];
  return checks.filter(([, found]) => found).map(([key]) => key);
}
