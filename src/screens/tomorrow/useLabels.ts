/** One tap: numbers that are lacking are taken and kept, then the labels of the day are made and handed out. */
import { peopleOnPaper } from '#findings/peopleOnPaper.ts';
import { dayIn } from '#findings/season/tomorrow.ts';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { labelSheetById } from '#reference/labelSheets.ts';
import { happenedNow } from '#store/device.ts';
import { type MadeFile, useMadeFile } from '#store/hooks/useMadeFile.ts';
import { newFact } from '#store/newFact.ts';
import { write } from '#store/write.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/tomorrowScreen.ts';
import { type LabelChoice, type LabelHere, labelsOfDay, lacking } from './labelsOfDay.ts';
import { occasionAt } from './occasionAt.ts';
import type { LabelsProps } from './paperChoice.ts';

const words = en.labels;

export function useLabels(
  { shiftId, site, book, meta, tomorrow, shownAs }: LabelsProps,
  choice: LabelChoice,
  onRefused: (errors: readonly FieldError[]) => void,
): MadeFile {
  const made = labelsOfDay(book, shiftId);
  const open = lacking(tomorrow, book, choice);
  const reserve = async (): Promise<readonly LabelHere[]> => {
    if (open.length === 0) return [];
    const entry = { happened: happenedNow(site.zone), by: meta.holderPersonId };
    const body = { shiftId, labels: open.map((label) => ({ ...label })) };
    const written = await write([newFact('labelsMade.v1', body, entry)]);
    if (written.kind !== 'written') {
      onRefused(notWritten(written));
      throw new Error('no numbers were kept for the labels');
    }
    return open.map((label, at) => ({ ...label, sampleNumber: written.sampleNumbers[at] ?? '' }));
  };
  return useMadeFile({
    name: words.name(site.name, dayIn(shiftId)),
    type: 'application/pdf',
    of: JSON.stringify([made, open, choice, shownAs]),
    make: async () => {
      const labels = [...made, ...(await reserve())];
      const { makeLabelPdf } = await import('#documents/labelPdf.ts');
      const sheet = labelSheetById(choice.sheet);
      if (sheet === undefined) throw new Error(`${choice.sheet}: no such label sheet`);
      const startAt = sheet.paper === null ? 1 : Number(choice.startAt);
      const given = {
        sheet,
        startAt,
        siteName: site.name,
        workOn: dayIn(shiftId),
        labels,
        people: peopleOnPaper(book, book.people.keys()),
        shownAs,
      };
      return (await makeLabelPdf({ ...(await occasionAt(site, meta)), ...given })).bytes;
    },
  });
}
