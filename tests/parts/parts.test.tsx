// @vitest-environment happy-dom
/** The parts by what a person does with them, on the same named examples that the gallery shows. */
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, test } from 'vitest';
import { exactly } from '#core/estimate.ts';
import { recorded, type Source, type Working } from '#core/formula.ts';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { examples as choices } from '#parts/examples/choices.tsx';
import type { Example } from '#parts/examples/example.ts';
import { examples as fields } from '#parts/examples/fields.tsx';
import { exampleWorking, examples as figures } from '#parts/examples/figures.tsx';
import { examples as photos } from '#parts/examples/photos.tsx';
import { examples as plots } from '#parts/examples/plots.tsx';
import { examples as sayings } from '#parts/examples/sayings.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { withNumbers } from '#words/workingNumbers.ts';

afterEach(cleanup);
const all: readonly Example[] = [...fields, ...choices, ...figures, ...photos, ...plots, ...sayings];
const show = (part: string, name: string) => {
  const example = all.find((each) => each.part === part && each.name === name);
  if (!example) throw new Error(`no example ${part}, ${name}`);
  return render(<main>{example.render()}</main>);
};

describe('every example', () => {
  test('has a name of its own', () =>
    expect(new Set(all.map(({ part, name }) => `${part} ${name}`)).size).toBe(all.length));

  test.each(all.map((example) => [example.part, example.name, example] as const))(
    '%s, %s: what can be used has a name',
    (_, __, example) => {
      render(<main>{example.render()}</main>);
      const controls = [...document.querySelectorAll<HTMLElement>('input, select, textarea, button, a')];
      for (const control of controls) expect(control).toHaveAccessibleName();
      expect(document.querySelectorAll('input[type=number]')).toHaveLength(0);
      expect(document.querySelectorAll('[required]')).toHaveLength(0);
      const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
    },
  );

  test.each(all.filter(({ name }) => name === 'with error').map((example) => [example.part, example] as const))(
    '%s with an error ties its words to the control',
    (_, example) => {
      render(<main>{example.render()}</main>);
      const described = [...document.querySelectorAll<HTMLElement>('[aria-describedby]')];
      expect(described.some((each) => /Error: /.test(describingText(each)))).toBe(true);
    },
  );
});

const describingText = (element: HTMLElement): string =>
  (element.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join(' ');

describe('a quantity', () => {
  test('has its unit in the label, a decimal keyboard, and shows what was typed', async () => {
    show('QuantityField', 'default');
    const input = screen.getByLabelText('Flow, L/min');
    expect(input).toHaveAttribute('inputmode', 'decimal');
    expect(input).toHaveAttribute('type', 'text');
    await userEvent.clear(input);
    await userEvent.type(input, '2,05 x');
    expect(input).toHaveValue('2,05 x');
  });

  test('takes what is pasted', async () => {
    show('QuantityField', 'default');
    const input = screen.getByLabelText('Flow, L/min');
    await userEvent.clear(input);
    await userEvent.click(input);
    await userEvent.paste('2.05 L/min');
    expect(input).toHaveValue('2.05 L/min');
  });
});

test('a float has both ends under one name', () => {
  show('FloatField', 'default');
  const group = screen.getByRole('group', { name: 'Flow before, L/min' });
  expect(within(group).getByLabelText('lowest')).toHaveValue('2.5');
  expect(within(group).getByLabelText('highest')).toHaveValue('2.6');
});

test('a day and a time say what they understood', async () => {
  show('DateField', 'default');
  expect(screen.getByText('Tuesday 24 November 2026')).toBeInTheDocument();
  cleanup();
  show('TimeField', 'default');
  expect(screen.getByText('07:12 in the morning')).toBeInTheDocument();
});

describe('choosing', () => {
  test('one of a few, by its row and by the keyboard', async () => {
    show('Choice', 'default');
    expect(screen.getByRole('radio', { name: 'Yes, a day like most' })).toBeChecked();
    await userEvent.click(screen.getByText('No'));
    expect(screen.getByRole('radio', { name: 'No' })).toBeChecked();
  });

  test('any of a few, and off again', async () => {
    show('Checklist', 'default');
    await userEvent.click(screen.getByRole('checkbox', { name: 'Running' }));
    await userEvent.click(screen.getByRole('checkbox', { name: 'Pump and tubing secured' }));
    expect(screen.getAllByRole('checkbox', { checked: true }).map((each) => each.getAttribute('value'))).toEqual([
      'running',
    ]);
  });

  test('from a register, or a new entry in place', async () => {
    show('PickOrAdd', 'short register');
    expect(screen.queryByLabelText('Serial number')).toBeNull();
    await userEvent.click(screen.getByRole('radio', { name: 'Add a pump' }));
    expect(screen.getByRole('group', { name: 'Add a pump' })).toContainElement(screen.getByLabelText('Serial number'));
  });

  test('from a long register by the device’s own picker', async () => {
    show('PickOrAdd', 'long register');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Which pump?' }), 'Add a pump');
    expect(screen.getByLabelText('Serial number')).toBeInTheDocument();
  });

  test('from an empty register goes straight to the new entry', () => {
    show('PickOrAdd', 'empty register');
    expect(screen.getByLabelText('Serial number')).toBeInTheDocument();
  });
});

function Form() {
  const [errors, setErrors] = useState<readonly { field: string; text: string }[]>([]);
  return (
    <Page
      heading="Check the flow"
      action={
        <MainAction onClick={() => setErrors([{ field: 'flow', text: 'Flow: write a number' }])}>
          Write it down
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <QuantityField
        name="flow"
        label="Flow"
        unit="L/min"
        value="abc"
        onChange={() => undefined}
        error={errors[0]?.text}
      />
    </Page>
  );
}

describe('errors on top', () => {
  test('take the focus, rename the window, lead to the field, and leave what was typed', async () => {
    render(<Form />);
    expect(document.title).toBe('Check the flow · Fullshift');
    await userEvent.click(screen.getByRole('button', { name: 'Write it down' }));
    const summary = screen.getByRole('alert');
    expect(summary).toHaveFocus();
    expect(document.title).toBe('Error: Check the flow · Fullshift');
    const before = window.location.href;
    await userEvent.click(within(summary).getByRole('link', { name: 'Flow: write a number' }));
    expect(screen.getByLabelText('Flow, L/min')).toHaveFocus();
    expect(screen.getByLabelText('Flow, L/min')).toHaveValue('abc');
    expect(screen.getByLabelText('Flow, L/min')).toHaveAccessibleDescription(/Error: Flow: write a number/);
    expect(window.location.href).toBe(before);
  });
});

describe('a working', () => {
  test('shows the formula, the numbers in it and the value, and opens each input in turn', async () => {
    show('WorkingView', 'default');
    expect(screen.getByText('V = Q × t')).toBeInTheDocument();
    // by hand: (2.05 + 1.99) / 2 = 2.02; 2.02 × 447 = 902.94
    expect(screen.getByText('= 2.02 L/min × 447 min')).toBeInTheDocument();
    expect(screen.getByText('902.94 L')).toBeInTheDocument();
    await userEvent.click(screen.getByText('average flow', { selector: 'summary span' }));
    expect(screen.getByText('= (2.05 L/min + 1.99 L/min) / 2')).toBeVisible();
  });

  test('writes a sum out', () => {
    expect(withNumbers(exampleWorking)).toMatch(
      /^\(\(24\.8\d+\u00a0µg\/m³ × 447\u00a0min\) \+ \(0\u00a0µg\/m³ × 33\u00a0min\)\) \/ 480$/,
    );
  });

  test('with a bound puts no number where there is none', () => {
    show('WorkingView', 'less than');
    expect(screen.getByText('C = m / V × 1000')).toBeInTheDocument();
    expect(screen.queryByText(/^= .* × 1000/)).toBeNull();
  });

  const cited = (source: Source): Working => ({
    kind: 'working',
    formula: { name: 'doubled', symbol: 'D', unit: 'L', expression: 'D = 2 × V', inputs: {}, source },
    unit: 'L',
    estimate: exactly(4),
    inputs: { V: recorded('volume', 'L', exactly(2), []) },
  });

  test.each([
    ['READ', /^Source: A handbook, 4\.2/],
    ['READ-2', /^Source: A handbook, 4\.2/],
    ['DERIVED', /^our own derivation$/],
    ['MEMORY', /^common practice, no source read$/],
  ] as const)('cites a source marked %s only as what it is', (mark, shown) => {
    render(<WorkingView working={cited({ title: 'A handbook', section: '4.2', mark })} />);
    expect(screen.getByText(shown)).toBeInTheDocument();
    if (mark === 'DERIVED' || mark === 'MEMORY') expect(screen.queryByText(/A handbook/)).toBeNull();
  });
});

describe('before an act that cannot be taken back', () => {
  test('a reason is asked for, and going back does nothing', async () => {
    show('ConfirmBox', 'with a reason');
    await userEvent.click(screen.getByRole('button', { name: 'Void this sample' }));
    await userEvent.click(screen.getByRole('button', { name: 'Void it' }));
    expect(screen.getByLabelText('Why is it void?')).toHaveAccessibleDescription(/Say why in a few words/);
    await userEvent.type(screen.getByLabelText('Why is it void?'), 'Dropped in a puddle');
    await userEvent.click(screen.getByRole('button', { name: 'Void it' }));
    expect(screen.getByText('Dropped in a puddle')).toBeInTheDocument();
    expect(screen.queryByLabelText('Why is it void?')).toBeNull();
  });

  test('going back leaves everything as it was', async () => {
    show('ConfirmBox', 'with a reason');
    await userEvent.click(screen.getByRole('button', { name: 'Void this sample' }));
    await userEvent.click(screen.getByRole('button', { name: 'Go back without doing this' }));
    expect(screen.queryByLabelText('Why is it void?')).toBeNull();
  });
});

test('an action that is still being written down takes no second tap', async () => {
  let taps = 0;
  render(
    <MainAction
      busy
      onClick={() => {
        taps += 1;
      }}
    >
      Put on now
    </MainAction>,
  );
  await userEvent.click(screen.getByRole('button', { name: 'Put on now' }));
  expect(taps).toBe(0);
});

test('a worker’s page is whole in the worker’s language', () => {
  render(
    <Page heading="Antes de entrar" lang="es" back="/">
      <ErrorSummary errors={[{ field: null, text: 'Falta su inicial' }]} />
    </Page>,
  );
  expect(screen.getByRole('main')).toHaveAttribute('lang', 'es');
  expect(screen.getByText('Atrás')).toBeInTheDocument();
  expect(screen.getByRole('heading', { name: 'Revise esto antes de seguir' })).toBeInTheDocument();
});

test('every standing has a word, and its shape is not read out', () => {
  for (const example of figures.filter(({ part }) => part === 'StandingMark')) {
    const { container } = render(example.render());
    expect(container.textContent).not.toBe('');
    expect(container.querySelector('svg')).toHaveAttribute('aria-hidden', 'true');
    cleanup();
  }
});
