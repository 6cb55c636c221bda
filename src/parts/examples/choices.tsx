/** Examples of the ways to choose. */
import { useState } from 'react';
import { Checklist } from '../Checklist.tsx';
import { Choice } from '../Choice.tsx';
import { PickOrAdd } from '../PickOrAdd.tsx';
import { SelectField } from '../SelectField.tsx';
import { TextField } from '../TextField.tsx';
import type { Example } from './example.ts';

const regular = [
  { value: 'yes', label: 'Yes, a day like most' },
  { value: 'no', label: 'No', hint: 'Rained off, half the crew, other work' },
];

function OneOf({
  start,
  error,
  name,
}: {
  readonly start: string | null;
  readonly error?: string;
  readonly name: string;
}) {
  const [value, setValue] = useState(start);
  return (
    <Choice
      name={name}
      label="Was this a regular day?"
      options={regular}
      value={value}
      onChange={setValue}
      {...(error === undefined ? {} : { error })}
    />
  );
}

const points = [
  { value: 'secured', label: 'Pump and tubing secured' },
  {
    value: 'zone',
    label: 'Filter in the breathing zone',
    hint: 'Within a hand and a half of the nose, outside the respirator',
  },
  { value: 'inlet', label: 'Inlet down, plugs off' },
  { value: 'running', label: 'Running' },
];

function AnyOf() {
  const [value, setValue] = useState<readonly string[]>(['secured']);
  return <Checklist name="points" label="Before entering" options={points} value={value} onChange={setValue} />;
}

function Pick({ name, count }: { readonly name: string; readonly count: number }) {
  const options = Array.from({ length: count }, (_, i) => ({
    id: `p${i}`,
    label: `Pump ${i + 1}`,
    detail: `Serial 40${i}7`,
  }));
  const [value, setValue] = useState<string | null>(count === 0 ? null : 'p0');
  const [serial, setSerial] = useState('');
  return (
    <PickOrAdd name={name} label="Which pump?" options={options} value={value} onChange={setValue} addText="Add a pump">
      <TextField name={`${name}-serial`} label="Serial number" kind="code" value={serial} onChange={setSerial} />
    </PickOrAdd>
  );
}

function Select() {
  const [value, setValue] = useState('');
  const options = ['Alabama', 'Alaska', 'Arizona'].map((label) => ({ value: label, label }));
  return <SelectField name="state" label="State of the site" options={options} value={value} onChange={setValue} />;
}

export const examples: readonly Example[] = [
  { part: 'Choice', name: 'default', render: () => <OneOf name="regular" start="yes" /> },
  {
    part: 'Choice',
    name: 'with error',
    render: () => <OneOf name="regular-missing" start={null} error="Choose one of the two" />,
  },
  { part: 'Checklist', name: 'default', render: () => <AnyOf /> },
  { part: 'PickOrAdd', name: 'short register', render: () => <Pick name="pump" count={3} /> },
  { part: 'PickOrAdd', name: 'long register', render: () => <Pick name="pump-long" count={9} /> },
  { part: 'PickOrAdd', name: 'empty register', render: () => <Pick name="pump-first" count={0} /> },
  { part: 'SelectField', name: 'default', render: () => <Select /> },
];
