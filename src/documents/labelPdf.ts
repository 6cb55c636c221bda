/** Labels for filter cassettes as PDF: on a label sheet from a chosen place on, or one to a page. Numbers are taken as given. */
import type { Label } from '#records/book.ts';
import { en } from '#words/labels.ts';
import type { LabelText } from './labelFit.ts';
import { type LabelValues, labelPages } from './labelPages.ts';
import type { LabelSheetShape } from './labelPlaces.ts';
import { type MadePaper, type Occasion, occasionOf, type PeopleById } from './occasion.ts';
import type { FontBytes } from './pdf/open.ts';
import { writePdf } from './pdf/write.ts';

export const labelAttachment = 'labels.json';

export interface LabelInput extends Occasion {
  readonly fonts: FontBytes;
  /** One of src/reference/labelSheets.ts. */
  readonly sheet: LabelSheetShape;
  /** From 1; on single labels 1. */
  readonly startAt: number;
  readonly siteName: string;
  readonly workOn: string;
  readonly labels: readonly Pick<Label, 'sampleNumber' | 'workerId' | 'blank'>[];
  readonly people: PeopleById;
  readonly shownAs: 'name' | 'identifier';
}

function textOf({ people, shownAs }: LabelInput, label: LabelInput['labels'][number]): LabelText {
  const { sampleNumber, workerId, blank } = label;
  if (blank) return { sampleNumber, kind: 'blank', who: null };
  if (workerId === null) return { sampleNumber, kind: 'spare', who: null };
  return { sampleNumber, kind: 'worker', who: people.get(workerId)?.[shownAs] ?? null };
}

export const labelValues = (input: LabelInput): LabelValues => ({
  labelFormat: 'labels.v1',
  ...occasionOf(input),
  sheet: input.sheet,
  startAt: input.startAt,
  siteName: input.siteName,
  workOn: input.workOn,
  labels: input.labels.map((label) => textOf(input, label)),
});

/** Throws for a typeface that is no font, and for a place that the sheet does not have. */
export async function makeLabelPdf(input: LabelInput): Promise<MadePaper<LabelValues>> {
  const values = labelValues(input);
  const bytes = await writePdf({
    fonts: input.fonts,
    lang: en.lang,
    issuedInstant: values.issuedInstant,
    app: values.editions.app,
    pagesOf: (measure) => labelPages(values, measure),
    attachments: [
      {
        name: labelAttachment,
        type: 'application/json',
        description: en.attached,
        relationship: 'Data',
        text: JSON.stringify(values),
      },
    ],
  });
  return { bytes, values };
}
