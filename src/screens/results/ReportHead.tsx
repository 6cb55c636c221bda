/** The head of the report: keyed in once, for every line below it. */
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { LaboratoryRecord } from '#records/book.ts';
import { methods } from '#reference/methods.ts';
import { en as words } from '#words/results.ts';
import styles from './results.module.css';
import type { Answer, ReportText } from './resultsDraft.ts';

export interface ReportHeadProps {
  readonly value: ReportText;
  readonly onChange: (report: ReportText) => void;
  readonly errors: readonly FieldError[];
  readonly laboratories: readonly LaboratoryRecord[];
  readonly today: string;
}

const text = words.report;
const answers: readonly { readonly value: Answer; readonly label: string }[] = [
  { value: 'yes', label: text.answers.yes },
  { value: 'no', label: text.answers.no },
  { value: 'notStated', label: text.answers.notStated },
];
/** Stands for "not in the lists" in the picker, where nothing chosen yet would be empty. */
const none = '-';

export function ReportHead({ value, onChange, errors, laboratories, today }: ReportHeadProps) {
  const change = (part: Partial<ReportText>) => onChange({ ...value, ...part });
  const day = (name: 'receivedOn' | 'reportedOn' | 'analysedOn', hint?: string) => (
    <DateField
      name={name}
      label={text[name]}
      hint={hint}
      value={value[name]}
      today={today}
      onChange={(typed) => change({ [name]: typed })}
      error={errorOf(errors, name)}
    />
  );
  const chooseLaboratory = (id: string) => {
    const chosen = laboratories.find((laboratory) => laboratory.id === id);
    change({
      laboratoryId: chosen?.id ?? '',
      accreditation: value.accreditation.trim() === '' ? (chosen?.accreditation ?? '') : value.accreditation,
    });
  };
  return (
    <section className={styles.head}>
      <h2>{text.heading}</h2>
      <div className={styles.pairs}>
        <TextField
          name="reportNumber"
          label={text.reportNumber}
          kind="code"
          value={value.reportNumber}
          onChange={(reportNumber) => change({ reportNumber })}
          error={errorOf(errors, 'reportNumber')}
        />
        <SelectField
          name="laboratory"
          label={text.laboratory}
          options={[
            ...laboratories.map(({ id, name }) => ({ value: id, label: name })),
            { value: none, label: text.noLaboratory },
          ]}
          value={value.laboratoryId || none}
          onChange={chooseLaboratory}
        />
        {day('receivedOn', text.receivedHint)}
        <TextField
          name="accreditation"
          label={text.accreditation}
          value={value.accreditation}
          onChange={(accreditation) => change({ accreditation })}
          error={errorOf(errors, 'accreditation')}
        />
        {day('reportedOn')}
        {day('analysedOn')}
        <SelectField
          name="method"
          label={text.method}
          options={[
            ...methods().map(({ id, title }) => ({ value: id, label: title })),
            { value: none, label: text.noMethod },
          ]}
          value={value.methodId || none}
          onChange={(id) => change({ methodId: id === none ? '' : id })}
        />
        <QuantityField
          name="sae"
          label={text.sae}
          unit="%"
          hint={text.saeHint}
          value={value.sae}
          onChange={(sae) => change({ sae })}
          error={errorOf(errors, 'sae')}
        />
        <Choice
          name="blankCorrected"
          label={text.blankCorrected}
          options={answers}
          value={value.blankCorrected}
          onChange={(blankCorrected) => change({ blankCorrected })}
          error={errorOf(errors, 'blankCorrected')}
        />
        <Choice
          name="wallDeposit"
          label={text.wallDeposit}
          options={answers}
          value={value.wallDeposit}
          onChange={(wallDeposit) => change({ wallDeposit })}
          error={errorOf(errors, 'wallDeposit')}
        />
      </div>
    </section>
  );
}
