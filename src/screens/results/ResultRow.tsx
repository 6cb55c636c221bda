/** One line of the report: a cassette's number and what was found on it, with whose it is and what it amounts to said at once. */
import { useId } from 'react';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { checkSampleNumber } from '#records/sampleNumber.ts';
import { useSamplesNumbered } from '#store/hooks/useSamplesNumbered.ts';
import { en as words } from '#words/results.ts';
import { LineMeaning } from './LineMeaning.tsx';
import styles from './results.module.css';
import {
  chooserName,
  fieldName,
  isBlankRow,
  type ReportText,
  type RowField,
  type RowText,
  rowFields,
} from './resultsDraft.ts';
import { WhichCassette } from './WhichCassette.tsx';

export interface ResultRowProps {
  readonly row: RowText;
  /** Counted from 1, for those who listen. */
  readonly line: number;
  readonly report: ReportText;
  readonly errors: readonly FieldError[];
  readonly today: string;
  readonly onChange: (part: Partial<RowText>) => void;
  readonly onRemove: () => void;
}

const unitByField: Readonly<Record<RowField, string>> = {
  number: '',
  mass: 'µg',
  limit: 'µg',
  volume: 'L',
  concentration: 'µg/m³',
};

export function ResultRow({ row, line, report, errors, today, onChange, onRemove }: ResultRowProps) {
  const legendId = useId();
  const checked = checkSampleNumber(row.number);
  const samples = useSamplesNumbered(checked.kind === 'right' ? checked.sampleNumber : null);
  const shared = samples !== undefined && samples.length > 1;
  const sample = shared ? samples.find(({ id }) => id === row.sampleId) : samples?.[0];
  const rowErrors = rowFields.flatMap((field) => {
    const text = errorOf(errors, fieldName(row, field));
    return text === undefined ? [] : [{ field, text }];
  });
  return (
    <fieldset className={styles.row} aria-labelledby={legendId}>
      <legend className={styles.legend} id={legendId}>
        {words.rows.row(line)}
      </legend>
      {rowErrors.map(({ field, text }) => (
        <p key={field} className={styles.error} id={`${fieldName(row, field)}-error`}>
          {text}
        </p>
      ))}
      <div className={styles.cells}>
        {rowFields.map((field) => (
          <Cell
            key={field}
            name={fieldName(row, field)}
            field={field}
            value={row[field]}
            invalid={rowErrors.some((error) => error.field === field)}
            onChange={(typed) => onChange({ [field]: typed })}
          />
        ))}
      </div>
      {shared && (
        <WhichCassette
          row={row}
          samples={samples}
          error={errorOf(errors, chooserName(row))}
          onChoose={(sampleId) => onChange({ sampleId })}
        />
      )}
      {sample !== undefined && <LineMeaning sample={sample} row={row} report={report} today={today} />}
      {samples?.length === 0 && checked.kind === 'right' && (
        <p className={styles.meaning}>{words.numberUnknown(checked.sampleNumber)}</p>
      )}
      {!isBlankRow(row) && (
        <button type="button" className={styles.remove} onClick={onRemove}>
          {words.rows.remove}
        </button>
      )}
    </fieldset>
  );
}

interface CellProps {
  readonly name: string;
  readonly field: RowField;
  readonly value: string;
  readonly invalid: boolean;
  readonly onChange: (typed: string) => void;
}

function Cell({ name, field, value, invalid, onChange }: CellProps) {
  const unit = unitByField[field];
  return (
    <div className={`${styles.cell} ${styles[field] ?? ''}`}>
      <label className={styles.label} htmlFor={name}>
        {unit === '' ? words.rows[field] : `${words.rows[field]}, ${unit}`}
      </label>
      <input
        id={name}
        name={name}
        type="text"
        inputMode={field === 'number' ? 'numeric' : field === 'mass' ? 'text' : 'decimal'}
        autoComplete="off"
        spellCheck={false}
        className={styles.input}
        value={value}
        aria-invalid={invalid ? true : undefined}
        aria-describedby={invalid ? `${name}-error` : undefined}
        onChange={(event) => onChange(event.target.value)}
      />
    </div>
  );
}
