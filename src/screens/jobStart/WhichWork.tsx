/** For which work of today, where there is more than one. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/reliance.ts';
import { taskNames } from './earlier.ts';
import type { RelyDraft, Work } from './relyDraft.ts';

interface WhichWorkProps {
  readonly works: readonly Work[];
  readonly work: Work | undefined;
  readonly onChange: (part: Partial<RelyDraft>) => void;
  readonly errors: readonly FieldError[];
  readonly book: Book;
}

export function WhichWork({ works, work, onChange, errors, book }: WhichWorkProps) {
  if (works.length < 2) return null;
  const jobOf = ({ jobClassificationId }: Work): string | null =>
    book.jobClassifications.get(jobClassificationId ?? '')?.name ?? null;
  return (
    <Choice
      name="group"
      label={words.group}
      options={works.map((each) => ({
        value: each.groupKey,
        label: words.groupLabel(taskNames(each.taskIds), jobOf(each)),
      }))}
      value={work?.groupKey ?? null}
      onChange={(groupKey) => onChange({ groupKey, measurementId: null, answers: {}, ownFirm: null })}
      error={errorOf(errors, 'group')}
    />
  );
}
