// @vitest-environment happy-dom
import { afterEach, expect, test } from 'vitest';
import { commonPractice, publishedExamples } from '#reference/examples.ts';
import { heading, leaveOffice, screen, visit } from './office.tsx';

afterEach(leaveOffice);

test('each published example stands there with what was printed, and all agree on this device', async () => {
  visit('/checked');
  await heading('How we checked the arithmetic');
  const count = publishedExamples().length + commonPractice().length;
  expect(screen.getByText(`All ${count} agree with what was printed, as closely as it was printed.`)).toBeVisible();
  expect(screen.getAllByText('agrees')).toHaveLength(count);
  // 29 CFR 1910.1000(d)(1)(ii) prints this example
  expect(screen.getAllByText('81.25 ppm')[0]).toBeVisible();
});

test('common practice without a source is cited nowhere', async () => {
  visit('/checked');
  const section = (await screen.findByRole('heading', { name: 'Common practice, no source read' })).closest('section');
  expect(section?.textContent).not.toContain('Source:');
});

test('about says what is not promised, and on which editions it stands', async () => {
  visit('/about');
  await heading('About and cautions');
  expect(screen.getByText(/The current text of the rule decides/)).toBeVisible();
  expect(screen.getByText('29 CFR 1926.62')).toBeVisible();
  expect(screen.getByRole('link', { name: 'Third-party notices' })).toHaveAttribute('href', './third-party.txt');
});
