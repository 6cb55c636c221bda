/** What the sample would be, as far as anybody knows before it is taken. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuantityField, type QuantityFieldProps } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { methods } from '#reference/methods.ts';
import { en } from '#words/proveScreen.ts';
import { otherMethod, type ProveText } from './proveDraft.ts';

const words = en.fields;

export interface ProveFieldsProps {
  readonly text: ProveText;
  readonly onChange: (part: Partial<ProveText>) => void;
  readonly errors: readonly FieldError[];
}

type Numbered = Exclude<keyof ProveText, 'rule' | 'method'>;

export function ProveFields({ text, onChange, errors }: ProveFieldsProps) {
  const field = (
    name: Numbered,
    unit: QuantityFieldProps['unit'],
    hint?: string,
    kind?: QuantityFieldProps['kind'],
  ) => (
    <QuantityField
      name={name}
      label={words[name]}
      unit={unit}
      hint={hint}
      kind={kind}
      value={text[name]}
      onChange={(typed) => onChange({ [name]: typed })}
      error={errorOf(errors, name)}
    />
  );
  return (
    <>
      {field('limit', 'µg', words.limitHint)}
      <SelectField
        name="method"
        label={words.method}
        options={[
          ...methods().map(({ id, title }) => ({ value: id, label: title })),
          { value: otherMethod, label: words.methodOther },
        ]}
        value={text.method}
        onChange={(method) => onChange({ method })}
      />
      {field('flow', 'L/min')}
      {field('shift', 'min', words.shiftHint, 'whole')}
      {field('sampled', 'min', undefined, 'whole')}
      {field('cassettes', '', undefined, 'whole')}
      {field('share', '%', words.shareHint)}
      {field('dust', 'mg/m³', words.dustHint)}
      {field('charge', 'h', words.chargeHint)}
      <Choice
        name="rule"
        label={words.rule}
        options={(['federal', 'california'] as const).map((value) => ({ value, label: words.rules[value] }))}
        value={text.rule}
        onChange={(rule) => onChange({ rule })}
      />
    </>
  );
}
