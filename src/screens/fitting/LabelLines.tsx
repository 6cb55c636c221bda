/** Which number the cassette gets, where labels were made for the day: the worker's own, a spare one, or the next free number. */
import { freeLabels } from '#findings/season/readyWearers.ts';
import { SelectField } from '#parts/SelectField.tsx';
import type { Book } from '#records/book.ts';
import { nextFreeNumber } from '#store/write.ts';
import { spacedDigits } from '#words/digits.ts';
import { en } from '#words/fitting.ts';
import type { FitDraft } from './fitDraft.ts';

const words = en.label;

export interface LabelLinesProps {
  readonly draft: FitDraft;
  readonly onChange: (part: Partial<FitDraft>) => void;
  readonly book: Book;
  readonly shiftId: string;
}

/** Stands for the next free number, in the phone's own picker. */
const free = '-';

export function LabelLines({ draft, onChange, book, shiftId }: LabelLinesProps) {
  const own = freeLabels(book, shiftId, { workerId: draft.workerId, blank: false });
  const spare = freeLabels(book, shiftId, { workerId: null, blank: false });
  const mine = draft.workerId === null ? [] : own;
  if (mine.length === 0 && spare.length === 0) return null;
  const number = draft.number ?? mine[0] ?? nextFreeNumber;
  return (
    <SelectField
      name="number"
      label={words.field}
      options={[
        ...mine.map((each) => ({ value: each, label: words.own(spacedDigits(each)) })),
        ...spare.map((each) => ({ value: each, label: words.spare(spacedDigits(each)) })),
        { value: free, label: words.next },
      ]}
      value={number === nextFreeNumber ? free : number}
      onChange={(value) => onChange({ number: value === free ? nextFreeNumber : value })}
    />
  );
}
