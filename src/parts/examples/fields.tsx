/** Examples of the fields, each in the states that a person can meet it in. */
import { useState } from 'react';
import { DateField } from '../DateField.tsx';
import { FloatField } from '../FloatField.tsx';
import { PassphraseField } from '../PassphraseField.tsx';
import { QuantityField } from '../QuantityField.tsx';
import { TextField } from '../TextField.tsx';
import { TimeField } from '../TimeField.tsx';
import type { Example } from './example.ts';

function Typed({
  start = '',
  children,
}: {
  readonly start?: string;
  readonly children: (value: string, set: (text: string) => void) => React.ReactNode;
}) {
  const [value, setValue] = useState(start);
  return children(value, setValue);
}

function TwoTyped() {
  const [value, setValue] = useState({ low: '2.5', high: '2.6' });
  return <FloatField name="float" label="Flow before" unit="L/min" value={value} onChange={setValue} />;
}

const today = '2026-11-25';

export const examples: readonly Example[] = [
  {
    part: 'PassphraseField',
    name: 'default',
    render: () => (
      <Typed>
        {(value, set) => <PassphraseField name="pass" label="Passphrase" value={value} onChange={set} use="current" />}
      </Typed>
    ),
  },
  {
    part: 'TextField',
    name: 'default',
    render: () => (
      <Typed>{(value, set) => <TextField name="work-area" label="Work area" value={value} onChange={set} />}</Typed>
    ),
  },
  {
    part: 'TextField',
    name: 'with hint',
    render: () => (
      <Typed start="North reading room">
        {(value, set) => (
          <TextField name="room" label="Work area" hint="As the crew calls it" value={value} onChange={set} />
        )}
      </Typed>
    ),
  },
  {
    part: 'TextField',
    name: 'with error',
    render: () => (
      <Typed>
        {(value, set) => (
          <TextField
            name="room-missing"
            label="Work area"
            error="Say where the work was"
            value={value}
            onChange={set}
          />
        )}
      </Typed>
    ),
  },
  {
    part: 'TextField',
    name: 'a number to compare by eye',
    render: () => (
      <Typed start="10473">
        {(value, set) => (
          <TextField name="cassette" label="Number on the cassette" kind="digits" value={value} onChange={set} />
        )}
      </Typed>
    ),
  },
  {
    part: 'TextField',
    name: 'several lines',
    render: () => (
      <Typed start="Rain from two o'clock on; the sheeting held.">
        {(value, set) => <TextField name="remarks" label="Remarks" rows={3} value={value} onChange={set} />}
      </Typed>
    ),
  },
  {
    part: 'QuantityField',
    name: 'default',
    render: () => (
      <Typed start="2.05">
        {(value, set) => <QuantityField name="flow" label="Flow" unit="L/min" value={value} onChange={set} />}
      </Typed>
    ),
  },
  {
    part: 'QuantityField',
    name: 'with error',
    render: () => (
      <Typed start="0.012 mg">
        {(value, set) => (
          <QuantityField
            name="mass"
            label="Lead on the filter"
            unit="µg"
            hint="As the report gives it"
            error="Lead on the filter: this was typed in mg; the field wants µg"
            value={value}
            onChange={set}
          />
        )}
      </Typed>
    ),
  },
  { part: 'FloatField', name: 'default', render: () => <TwoTyped /> },
  {
    part: 'DateField',
    name: 'default',
    render: () => (
      <Typed start="yesterday">
        {(value, set) => <DateField name="day" label="Day of the work" today={today} value={value} onChange={set} />}
      </Typed>
    ),
  },
  {
    part: 'DateField',
    name: 'with error',
    render: () => (
      <Typed start="25/11/2026">
        {(value, set) => (
          <DateField
            name="day-first"
            label="Day of the report"
            today={today}
            error="Day of the report: the month comes first: 11/25/2026"
            value={value}
            onChange={set}
          />
        )}
      </Typed>
    ),
  },
  {
    part: 'TimeField',
    name: 'default',
    render: () => (
      <Typed start="712">
        {(value, set) => <TimeField name="time" label="Put on at" value={value} onChange={set} />}
      </Typed>
    ),
  },
];
