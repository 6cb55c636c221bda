// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import { newId, setPorts } from '#store/device.ts';
import { planOf, visit } from './seasonStage.tsx';
import {
  address,
  alerts,
  button,
  drafts,
  heading,
  lastFact,
  put,
  type Stage,
  screen,
  setStage,
  strike,
  waitFor,
} from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

const day = '2026-12-03';

async function planned(slots: readonly { workerId: string; workOn: string | null }[]): Promise<string> {
  const planId = newId();
  await put([planOf({ planId, slots: [...slots] })]);
  return planId;
}

test('a book without work says what to enter first, and leads to planning it', async () => {
  visit('/season');
  await heading('What to measure next');
  expect(await screen.findByRole('heading', { name: 'Begin here' })).toBeVisible();
  expect(screen.getByRole('link', { name: 'Plan a measurement' })).toHaveAttribute('href', '#/plan');
});

test('a plan that says nothing yet is told where to begin, and what was typed stays', async () => {
  const user = visit('/plan');
  await button('Save the plan');
  await user.type(screen.getByLabelText(/^Season/), 'winter 2026');
  await user.click(await button('Save the plan'));
  expect(alerts()).toContain('Choose at least one task');
  expect(alerts()).toContain('Tick or write down at least one worker');
  expect(JSON.stringify(await drafts())).toContain('winter 2026');
  expect(await lastFact('measurementPlanned.v1')).toBeUndefined();
});

test('two workers, one written down here, are planned for a day, and the group stands in the list', async () => {
  const user = visit('/plan');
  await button('Save the plan');
  await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
  await user.click(screen.getByRole('radio', { name: 'Indoors' }));
  await user.click(screen.getByRole('checkbox', { name: 'Ada Quill' }));
  await user.click(await button('Write down a worker'));
  await user.type(screen.getByLabelText('Name'), 'Otto Oakum');
  await user.type(screen.getByLabelText(/^Day 1/), '12/3/2026');
  await user.type(screen.getByLabelText(/^Reporting limit/), '2,5');
  expect(screen.getByText(/To be measured: Ada Quill and Otto Oakum/)).toBeVisible();
  await user.click(await button('Save the plan'));
  await heading('Scraping paint by hand, indoors');
  expect(address()).toMatch(/^\/plan\/\w{12}$/);
  const { body } = (await lastFact('measurementPlanned.v1')) ?? {};
  expect(body).toMatchObject({ setting: 'indoors', taskIds: ['handScraping'], crewCount: 2, reportingLimitUg: 2.5 });
  expect(body?.slots).toHaveLength(2);
  expect(screen.getByText(/0 measurements are done, 0 under way, 2 still to do/)).toBeVisible();
  visit('/season');
  expect(await screen.findByRole('heading', { level: 2, name: 'Scraping paint by hand, indoors' })).toBeVisible();
  expect(screen.getByText(/^Not measured yet/)).toBeVisible();
  // 29 CFR 1926.62(d)(2)(i): scraping is presumed above the PEL of 50 and up to ten times of it
  expect(screen.getByText(/above 50.µg\/m³ and up to 500.µg\/m³/)).toBeVisible();
  expect(screen.getByText(/These figures prove nothing about your work/)).toBeInTheDocument();
  // Scholz et al. 2002: dry scraping by hand outside, mean 71, 4 to 230
  expect(screen.getByText(/mean 71.µg\/m³ and from 4 to 230.µg\/m³/)).toBeInTheDocument();
});

test('from a larger crew nobody is drawn before everyone is named; the most exposed one needs a reason', async () => {
  const user = visit('/plan');
  await button('Save the plan');
  await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
  await user.click(screen.getByRole('radio', { name: 'Indoors' }));
  await user.click(screen.getByRole('checkbox', { name: 'Ada Quill' }));
  await user.type(screen.getByLabelText(/^How many do this work/), '14');
  await user.click(screen.getByRole('radio', { name: 'Some, drawn at random' }));
  // phyper of R at 90 %: of 14 twelve (methods.md F3, smooth version)
  expect(screen.getByText(/Of 14 workers 12 are measured/)).toBeVisible();
  await user.click(await button('Save the plan'));
  expect(alerts()).toContain('13 workers have no name here yet');
  await user.click(screen.getByRole('radio', { name: 'The one who is expected to breathe most lead' }));
  await user.click(await button('Save the plan'));
  expect(alerts()).toContain('Fill in: Why this worker');
});

test('the lot is drawn by the device, kept as drawn, and of ten nine are measured', async () => {
  const people = Array.from({ length: 9 }, (_, at) => `Worker ${at + 1}`);
  const { newFact } = await import('#store/newFact.ts');
  const { entry } = await import('#tests/store/scenario.ts');
  const body = { identifier: null, language: 'en', jobClassificationId: null, employer: null } as const;
  await put(people.map((name) => newFact('personAdded.v1', { personId: newId(), name, ...body }, entry())));
  const user = visit('/plan');
  await button('Save the plan');
  await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
  await user.click(screen.getByRole('radio', { name: 'Indoors' }));
  for (const name of ['Ada Quill', ...people]) await user.click(screen.getByRole('checkbox', { name }));
  await user.click(screen.getByRole('radio', { name: 'Some, drawn at random' }));
  await user.click(await button('Save the plan'));
  expect(alerts()).toContain('Draw the names first');
  // every draw is the first of what is left: the last of the crew as ticked stays out
  setPorts({ wallMs: () => Date.parse('2026-11-25T11:00:00.000Z'), random: (bytes) => void bytes.fill(0) });
  await user.click(await button('Draw the names'));
  expect(screen.getByText(/To be measured:/).textContent).not.toContain('Worker 9');
  setPorts();
  await user.click(await button('Save the plan'));
  await heading('Scraping paint by hand, indoors');
  const { body: plan } = (await lastFact('measurementPlanned.v1')) ?? {};
  expect(plan?.slots).toHaveLength(9);
});

test('a planned day that was rained off stays to do; its place gets another day; the plan is given up only with a reason', async () => {
  const planId = await planned([{ workerId: stage.day.personId, workOn: day }]);
  let user = visit(`/plan/${planId}?place=${stage.day.personId}.${day}`);
  await heading('Planned for Ada Quill');
  await user.click(await button('Save'));
  expect(alerts()).toContain('Say which of the two');
  await user.click(screen.getByRole('radio', { name: 'It did not come about' }));
  await user.click(screen.getByRole('radio', { name: 'Rained off' }));
  await user.click(await button('Save'));
  expect(await screen.findByText('Still to do: rained off')).toBeVisible();
  user = visit(`/plan/${planId}?place=${stage.day.personId}.${day}`);
  await heading('Planned for Ada Quill');
  await user.click(screen.getByRole('radio', { name: 'Another day' }));
  await user.type(screen.getByLabelText(/^On which day instead/), '12/10/2026');
  await user.click(await button('Save'));
  expect(await screen.findByText(/Ada Quill, 10 December 2026/)).toBeVisible();
  await user.click(await button('Give up this plan'));
  await user.click(await button('Give it up'));
  expect(alerts()).toContain('Write why the plan is given up');
  await user.type(screen.getByLabelText(/^Why is it given up/), 'The job is off');
  await user.click(await button('Give it up'));
  await waitFor(() => expect(screen.getByText('This plan was given up: The job is off')).toBeVisible());
});
