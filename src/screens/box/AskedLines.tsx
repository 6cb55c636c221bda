/** What is asked of the laboratory. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { LaboratoryLines } from '#parts/LaboratoryLines.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { methods } from '#reference/methods.ts';
import type { Registers } from '#store/hooks.ts';
import { en } from '#words/box.ts';
import type { Answer, BoxText } from './boxText.ts';

export interface AskedLinesProps {
  readonly value: BoxText;
  readonly onChange: (part: Partial<BoxText>) => void;
  readonly registers: Registers;
  readonly errors: readonly FieldError[];
}

const words = en.pack;
/** Stands for "left to the laboratory" in the picker, where nothing chosen yet would be empty. */
const none = '-';
const answers: readonly { readonly value: Answer; readonly label: string }[] = [
  { value: 'yes', label: words.answers.yes },
  { value: 'no', label: words.answers.no },
];

export function AskedLines({ value, onChange, registers, errors }: AskedLinesProps) {
  const { laboratories, people } = registers;
  const text = (name: 'analysis' | 'turnaround' | 'remark', hint?: string, rows?: number) => (
    <TextField
      name={name}
      label={words[name]}
      hint={hint}
      rows={rows}
      value={value[name]}
      onChange={(typed) => onChange({ [name]: typed })}
      error={errorOf(errors, name)}
    />
  );
  const yesNo = (name: 'wallDeposit' | 'reanalysis') => (
    <Choice
      name={name}
      label={words[name]}
      options={answers}
      value={value[name]}
      onChange={(answer) => onChange({ [name]: answer })}
      error={errorOf(errors, name)}
    />
  );
  return (
    <>
      <PickOrAdd
        name="laboratory"
        label={words.laboratory}
        options={laboratories.list.map(({ id, name, accreditation }) => ({
          id,
          label: name,
          detail: accreditation ?? undefined,
        }))}
        value={value.laboratoryId}
        onChange={(laboratoryId) => onChange({ laboratoryId })}
        addText={words.addLaboratory}
        error={errorOf(errors, 'laboratory')}
      >
        <LaboratoryLines
          value={value.laboratory}
          onChange={(laboratory) => onChange({ laboratory, laboratoryId: addingNew })}
          errors={errors}
        />
      </PickOrAdd>
      {text('analysis')}
      <SelectField
        name="method"
        label={words.method}
        options={[
          ...methods().map(({ id, title }) => ({ value: id, label: title })),
          { value: none, label: words.noMethod },
        ]}
        value={value.methodId || none}
        onChange={(id) => onChange({ methodId: id === none ? '' : id })}
      />
      <QuantityField
        name="reportingLimit"
        label={words.reportingLimit}
        unit="µg"
        hint={words.reportingLimitHint}
        value={value.reportingLimit}
        onChange={(reportingLimit) => onChange({ reportingLimit })}
        error={errorOf(errors, 'reportingLimit')}
      />
      {yesNo('wallDeposit')}
      {yesNo('reanalysis')}
      {text('turnaround', words.turnaroundHint)}
      <Choice
        name="shownAs"
        label={words.shownAs}
        options={[
          { value: 'name', label: words.shownAsChoices.name },
          { value: 'identifier', label: words.shownAsChoices.identifier },
        ]}
        value={value.shownAs}
        onChange={(shownAs) => onChange({ shownAs })}
        error={errorOf(errors, 'shownAs')}
      />
      <SelectField
        name="sampler"
        label={words.sampler}
        options={people.list.map(({ id, name }) => ({ value: id, label: name }))}
        value={value.samplerId}
        onChange={(samplerId) => onChange({ samplerId })}
        error={errorOf(errors, 'sampler')}
      />
      {text('remark', undefined, 2)}
    </>
  );
}
