/** Of which time and job the sums are; and what no plan says. An error stands at its field while it is typed. */
import { DateField } from '#parts/DateField.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/money.ts';
import { en as screen } from '#words/moneyScreen.ts';
import styles from './money.module.css';
import { noOne } from './moneyHere.ts';
import type { TimeText } from './timeDraft.ts';

export interface TimeFieldsProps {
  readonly book: Book;
  readonly today: string;
  readonly text: TimeText;
  readonly onChange: (part: Partial<TimeText>) => void;
  readonly errors: readonly FieldError[];
}

export function TimeFields({ book, today, text, onChange, errors }: TimeFieldsProps) {
  const day = (name: 'from' | 'to', label: string) => (
    <DateField
      name={name}
      label={label}
      today={today}
      value={text[name]}
      onChange={(typed) => onChange({ [name]: typed })}
      error={errorOf(errors, name)}
    />
  );
  const count = (name: 'rush' | 'consultant', label: string) => (
    <QuantityField
      name={name}
      label={label}
      unit=""
      kind="whole"
      value={text[name]}
      onChange={(typed) => onChange({ [name]: typed })}
      error={errorOf(errors, name)}
    />
  );
  return (
    <details open={errors.length > 0 || undefined}>
      <summary className={styles.summary}>{screen.time.heading}</summary>
      <div className={styles.time}>
        {day('from', words.fromOn)}
        {day('to', words.toOn)}
        <SelectField
          name="job"
          label={words.job}
          options={[
            { value: noOne, label: words.allJobs },
            ...[...book.sites.values()].map(({ id, name }) => ({ value: id, label: name })),
          ]}
          value={text.siteId}
          onChange={(siteId) => onChange({ siteId })}
        />
        <p>{screen.time.foreseen}</p>
        {count('rush', screen.rushCount)}
        {count('consultant', screen.consultantDays)}
      </div>
    </details>
  );
}
