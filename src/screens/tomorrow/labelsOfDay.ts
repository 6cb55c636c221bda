/** Labels that were made for a day, and those that are lacking for what is chosen. */
import type { Tomorrow } from '#findings/season/tomorrow.ts';
import type { Book, Label } from '#records/book.ts';
import { type LabelSheetId, labelSheetById } from '#reference/labelSheets.ts';

export interface LabelChoice {
  readonly sheet: LabelSheetId;
  readonly startAt: string;
  /** In all, those made before among them. */
  readonly spares: string;
  readonly blanks: string;
}

export type LabelHere = Pick<Label, 'sampleNumber' | 'workerId' | 'blank'>;

export const placesOn = (sheet: LabelSheetId): number => {
  const shape = labelSheetById(sheet);
  return shape === undefined || shape.paper === null ? 1 : shape.columnsCount * shape.rowsCount;
};

/** In the order in which they were made; one whose cassette is prepared already too, so that the sheet can be printed again. */
export const labelsOfDay = (book: Book, shiftId: string): readonly LabelHere[] =>
  (book.dayPlans.get(shiftId)?.labels ?? []).map(({ sampleNumber, workerId, blank }) => ({
    sampleNumber,
    workerId,
    blank,
  }));

/** The book puts the numbers in, inside the transaction. */
const unnumbered = (workerId: string | null, blank: boolean): LabelHere => ({ sampleNumber: '', workerId, blank });

const many = (text: string, have: number): number => Math.max(0, (Number(text) || 0) - have);

/** A wearer has as many labels as the plan has cassettes, one without a plan. */
export function lacking(tomorrow: Tomorrow, book: Book, choice: LabelChoice): readonly LabelHere[] {
  const made = labelsOfDay(book, tomorrow.shiftId);
  const ofWearers = tomorrow.wearers.flatMap(({ workerId, planId, sampleId }) => {
    const wanted = planId === null ? 1 : (book.plans.get(planId)?.cassettesCount ?? 1);
    const have = made.filter((label) => label.workerId === workerId).length;
    // A cassette that was numbered without a label needs none any more.
    const numbered = sampleId !== null && have === 0 ? 1 : have;
    return Array.from({ length: Math.max(0, wanted - numbered) }, () => unnumbered(workerId, false));
  });
  const { blankNumbers, spareNumbers } = tomorrow;
  return [
    ...ofWearers,
    ...Array.from({ length: many(choice.spares, spareNumbers.length) }, () => unnumbered(null, false)),
    ...Array.from({ length: many(choice.blanks, blankNumbers.length) }, () => unnumbered(null, true)),
  ];
}
