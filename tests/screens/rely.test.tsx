// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry } from '#tests/store/scenario.ts';
import {
  alerts,
  button,
  drafts,
  heading,
  journal,
  lastFact,
  put,
  putOnSample,
  type Stage,
  screen,
  setStage,
  strike,
  visit,
  waitFor,
} from './stage.tsx';

let stage: Stage;
const reportedId = newId();
const page = () => `/shift/${stage.day.shiftId}/rely`;

/** Ada scrapes today; of her scraping a consultant reported a day, 3.1 µg/m³, at the same site. */
async function scrapingToday({ workOn = '2026-02-10', ownFirm = 'yes' as 'yes' | 'no' } = {}): Promise<void> {
  const { personId, siteId, shiftId } = stage.day;
  const work = { taskIds: ['handScraping'], jobClassificationId: null };
  const no = { personnel: 'no', equipment: 'no', process: 'no', control: 'no', newTask: 'no' } as const;
  await put([
    newFact('workNoted.v1', { workdayId: `${personId}.2026-11-25`, shiftId, ...work, respirator: null }, entry()),
    newFact('changesAsked.v1', { shiftId, ...no }, entry()),
    newFact(
      'measurementReported.v1',
      {
        reportedId,
        from: 'consultant',
        fromName: 'Level Air Consulting',
        reportNumber: null,
        workerId: personId,
        siteId,
        setting: 'indoors',
        workOn,
        receivedOn: workOn,
        ...work,
        average: { kind: 'measured', twa8UgPerM3: 3.1 },
        workedHours: 8,
        fullShift: 'yes',
        ownFirm,
        accuracy: 'yes',
        remark: null,
      },
      entry(),
    ),
  ]);
}

const terms = ['processes', 'material', 'controls', 'practices', 'environment'] as const;
type User = ReturnType<typeof visit>;
const tapped = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no field ${id}`);
  return found;
};
async function answerAll(user: User, answer = 'alike', ownFirm = 'yes'): Promise<void> {
  await user.click(await screen.findByRole('radio', { name: /^Ada Quill/ }));
  for (const term of terms) await user.click(tapped(`${term}-${answer}`));
  await user.click(tapped(`ownFirm-${ownFirm}`));
}

beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

describe('relying on an earlier measurement, 29 CFR 1926.62(d)(3)(iii)', () => {
  test('without anybody on the roster it first asks who works here', async () => {
    visit(page());
    await heading('Rely on an earlier measurement');
    expect(await screen.findByRole('link', { name: 'Who works here today' })).toHaveAttribute(
      'href',
      `#/shift/${stage.day.shiftId}/roster`,
    );
  });

  test('says its day, its age on the day of the job, and until when', async () => {
    await scrapingToday();
    visit(page());
    const radio = await screen.findByRole('radio', { name: 'Ada Quill, 10 February 2026' });
    const hint = document.getElementById(`${radio.id}-hint`);
    // 10 February to 25 November 2026: 288 days by the calendar.
    expect(hint).toHaveTextContent('288 days old on the day of this job');
    expect(hint).toHaveTextContent(/until 10 February 2027/);
    expect(hint).toHaveTextContent('without flow readings of our own');
  });

  test('five times alike and our own: it may be relied on, and that is written down', async () => {
    await scrapingToday();
    const user = visit(page());
    await answerAll(user);
    expect(await screen.findByText(/it may be relied on for this job/)).toBeVisible();
    await user.click(await button('Save: this job rests on it'));
    await waitFor(async () => expect(await lastFact('measurementReliedOn.v1')).toBeDefined());
    expect((await lastFact('measurementReliedOn.v1'))?.body).toMatchObject({
      measurementId: reportedId,
      shiftId: stage.day.shiftId,
      taskIds: ['handScraping'],
      processes: 'alike',
      material: 'alike',
      controls: 'alike',
      practices: 'alike',
      environment: 'alike',
      ownFirm: 'yes',
    });
    expect(await screen.findByText('Ada Quill, 10 February 2026: may be relied on')).toBeVisible();
  });

  test.each([
    ['not alike', 'unlike', 'yes', /^Not alike: The paint/],
    ['not known', 'notKnown', 'yes', /^Not known whether alike: The paint/],
    ['not our own', 'alike', 'no', /not this firm’s own measuring/],
  ] as const)('%s: it may not, and each reason is said', async (_, answer, ownFirm, says) => {
    await scrapingToday();
    const user = visit(page());
    await answerAll(user, answer, ownFirm);
    expect(await screen.findByText(says)).toBeVisible();
    expect(await button('Save the comparison as it stands')).toBeVisible();
  });

  test('more than twelve months old on the day of the job: it may not', async () => {
    await scrapingToday({ workOn: '2025-11-24' });
    const user = visit(page());
    await answerAll(user);
    expect(await screen.findByText(/older than twelve months/)).toBeVisible();
  });

  test('an answer that is missing is named: nothing is taken over from the conditions by itself', async () => {
    await scrapingToday();
    const user = visit(page());
    await user.click(await screen.findByRole('radio', { name: /^Ada Quill/ }));
    await user.click(tapped('processes-alike'));
    const before = { journal: await journal(), drafts: await drafts() };
    await user.click(await button(/^Save/));
    await waitFor(() => expect(alerts()).toMatch(/Choose: The paint/));
    expect(alerts()).toMatch(/Choose: Was it this firm’s own measuring/);
    expect(await journal()).toEqual(before.journal);
    expect(await drafts()).toEqual(before.drafts);
  });
});

describe('task groups', () => {
  test('what was never measured stands first', async () => {
    await scrapingToday();
    const otto = newId();
    const person = { name: 'Otto Oakum', identifier: null, language: 'es', jobClassificationId: null } as const;
    const { shiftId } = stage.day;
    const work = { taskIds: ['wetSanding'], jobClassificationId: null, respirator: null };
    await put([newFact('personAdded.v1', { personId: otto, ...person, employer: 'Shore Scaffolds' }, entry())]);
    await put([newFact('workNoted.v1', { workdayId: `${otto}.2026-11-25`, shiftId, ...work }, entry())]);
    const user = visit('/groups');
    await heading('Task groups');
    const lines = await screen.findAllByRole('link', { name: /indoors/ });
    expect(lines.map((line) => line.textContent)).toMatchObject([
      expect.stringMatching(/^Sanding by hand, wet, indoors.*Never measured/),
      expect.stringMatching(/^Scraping paint by hand, indoors.*Measured on 10 February 2026: 3\.10.µg\/m³/),
    ]);
    await user.click(lines[0] as HTMLElement);
    await heading('Sanding by hand, wet, indoors');
    expect(screen.getByText('Otto Oakum (Shore Scaffolds)')).toBeVisible();
    expect(screen.getByText(/^Presumed until measured/)).toBeVisible();
  });

  test('in writing, a measurement stands for a worker of another firm too; nobody ticked is told', async () => {
    await putOnSample(stage);
    const sid = newId();
    const person = { name: 'Sid Shore', identifier: null, language: 'en', jobClassificationId: null } as const;
    await put([newFact('personAdded.v1', { personId: sid, ...person, employer: 'Shore Scaffolds' }, entry())]);
    const workdayId = `${stage.day.personId}.2026-11-25`;
    const user = visit(`/groups?stands=${workdayId}`);
    await heading('This measurement stands for these workers too');
    await user.click(await button('Save it in writing'));
    await waitFor(() => expect(alerts()).toMatch(/Tick at least one worker/));
    expect(await lastFact('representsStated.v1')).toBeUndefined();
    await user.click(screen.getByRole('checkbox', { name: 'Sid Shore' }));
    await user.click(await button('Save it in writing'));
    expect(await screen.findByText('Stands for Sid Shore')).toBeVisible();
    expect((await lastFact('representsStated.v1'))?.body).toEqual({ workdayId, workerIds: [sid] });
  });

  test('an empty book says where the work is written down', async () => {
    visit('/groups');
    expect(await screen.findByText(/^No work is written down yet/)).toBeVisible();
  });
});
