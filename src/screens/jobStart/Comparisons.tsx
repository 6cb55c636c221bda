/** Five comparisons, each with both days beside each other and what was written down; a person answers every one. */

import { compareTerms, termsOn } from '#findings/duties/groups/resemblance.ts';
import { resemblanceTerms } from '#findings/duties/groups/taskGroup.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import type { Book, ShiftRecord } from '#records/book.ts';
import { formatList } from '#words/quantity.ts';
import { type Alike, en as words } from '#words/reliance.ts';
import { taskNames } from './earlier.ts';
import type { RelyDraft, Work } from './relyDraft.ts';

export interface ComparisonsProps {
  readonly draft: RelyDraft;
  readonly onChange: (part: Partial<RelyDraft>) => void;
  readonly errors: readonly FieldError[];
  readonly measurement: Measurement;
  readonly shift: ShiftRecord;
  readonly work: Work;
  readonly book: Book;
}

const answers: readonly Alike[] = ['alike', 'unlike', 'notKnown'];
const ownFirms = ['yes', 'no', 'notStated'] as const;

/** What was noted of one term: 'tool: hand tools, tasks: scraping'. */
function said(values: Readonly<Record<string, string | null>>): string {
  const parts = Object.entries(values).map(([name, value]) => {
    if (value === null) return `${words.label(name)} ${words.notWrittenDown}`;
    return name === 'tasks' ? formatList(taskNames(value.split('+'))) : words.value(name, value);
  });
  return parts.join(', ');
}

export function Comparisons({ draft, onChange, errors, measurement, shift, work, book }: ComparisonsProps) {
  const conditions = book.shifts.get(measurement.shiftIds[0] ?? '')?.conditions ?? null;
  const then = termsOn(conditions, measurement.taskIds);
  const now = termsOn(shift.conditions, work.taskIds);
  const suggested = compareTerms(then, now);
  return (
    <>
      {resemblanceTerms.map((term) => (
        <Choice
          key={term}
          name={term}
          label={words.terms[term]}
          hint={
            <>
              {words.thenNow(said(then[term]), said(now[term]))} <strong>{words.suggests[suggested[term]]}</strong>
            </>
          }
          options={answers.map((value) => ({ value, label: words.answers[value] }))}
          value={draft.answers[term] ?? null}
          onChange={(answer) => onChange({ answers: { ...draft.answers, [term]: answer } })}
          error={errorOf(errors, term)}
        />
      ))}
      <Choice
        name="ownFirm"
        label={words.ownFirm}
        options={ownFirms.map((value) => ({ value, label: words.ownFirmAnswers[value] }))}
        value={draft.ownFirm}
        onChange={(ownFirm) => onChange({ ownFirm })}
        error={errorOf(errors, 'ownFirm')}
      />
    </>
  );
}
