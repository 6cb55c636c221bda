// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { FactBody } from '#records/fact.ts';
import { newFact } from '#store/newFact.ts';
import { theSession } from '#store/session.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import { Writer } from '../records/facts.ts';
import { arrive } from './foreign.ts';
import { button, heading, lastFact, minute, put, type Stage, screen, setStage, strike, visit } from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

const storyOf = (key: string) => visit(`/story/${encodeURIComponent(key)}`);

/** Lines of the story: all but what is struck stands in one line for each fact. */
const sentences = (): string[] => screen.getAllByRole('listitem').map((line) => line.textContent ?? '');

const aboutCount = async (...keys: readonly string[]): Promise<number> =>
  theSession()
    .db.journal.where('about')
    .anyOf([...keys])
    .distinct()
    .count();

test('as many sentences as facts, with the struck value beside what replaced it, and who wrote it where', async () => {
  const { day, clock } = stage;
  const one = sampleOf(day);
  const other = new Writer('77777777aaaa', '2026-11-25');
  await put([flowCheckOf(day, 'before')(entry(day.personId))]);
  const check = await lastFact('flowChecked.v1');
  await put([one.prepared(entry(day.personId))]);
  clock.forward(30 * minute);
  await put([one.putOn(entry(day.personId))]);
  const putOn = await lastFact('pumpPutOn.v1');
  const key = `sample:${one.sampleId}`;
  const body = {
    replaces: String(putOn?.id),
    path: '/happened/at',
    old: putOn?.happened.at,
    new: '2026-11-25T11:21:00.000Z',
    supersedes: null,
  };
  clock.forward(30 * minute);
  await put([
    newFact('valueCorrected.v1', body as FactBody<'valueCorrected.v1'>, {
      ...entry(day.personId),
      why: 'Another watch',
      about: [key],
    }),
  ]);
  const remark = one.remark('Looked fine')(entry(day.personId));
  await arrive(other, [{ fact: remark, extra: { kind: 'moodNoted.v9', mustUnderstand: true } }]);
  storyOf(key);
  await heading(/^Story: Cassette \d+, Ada Quill, 25 November 2026$/);
  const count = await aboutCount(key, `flowCheck:${check?.body.flowCheckId}`);
  expect(count).toBe(5);
  expect(
    await screen.findByText(`All ${count} entries about it on this device, in the order in which things happened.`),
  ).toBeVisible();
  expect(sentences()).toHaveLength(count);
  expect(screen.getByText('06:30, 25 November 2026', { selector: 'del' }).nextElementSibling).toHaveTextContent(
    '06:21, 25 November 2026',
  );
  expect(sentences().join('\n')).toMatch(/Corrected: Time, from 06:30.* to 06:21.*because Another watch; by Ada Quill/);
  expect(screen.getByText(/^An entry that this version of Fullshift does not understand/)).toBeVisible();
  expect(sentences().join('\n')).toMatch(/must be understood.*on another device \(7777\)/);
});

test('the story of a record whose beginning is not here is told all the same, and of nothing it is said', async () => {
  const { day } = stage;
  const lost = sampleOf(day);
  await arrive(new Writer('77777777aaaa', '2026-11-25'), [lost.putOn(entry(day.personId))]);
  storyOf(`sample:${lost.sampleId}`);
  expect(await screen.findByText(/The entry that began this record is not on this device/)).toBeVisible();
  expect(sentences()).toHaveLength(1);
  storyOf('sample:000000000000');
  expect(await screen.findByText(/^No entry about this is in the book/)).toBeVisible();
});

test('an entry that cannot be read keeps its line', async () => {
  const { day } = stage;
  const one = sampleOf(day);
  await put([one.prepared(entry(day.personId))]);
  const key = `sample:${one.sampleId}`;
  await theSession().db.journal.add({ id: '77777777aaaa.00000001', about: [key], text: '{"cut', link: '0' });
  storyOf(key);
  expect(await screen.findByText('An entry that cannot be read. It is kept as it came.')).toBeVisible();
  expect(sentences()).toHaveLength(2);
});

test('a wrong fitting point, the tasks and where it was locked in are corrected with a reason', async () => {
  const { day, clock } = stage;
  const one = sampleOf(day);
  await put([one.prepared(entry(day.personId))]);
  const points = {
    pumpSecured: true,
    tubingSecured: true,
    breathingZone: false,
    outsideRespirator: true,
    insideHelmet: null,
    inletDown: true,
    plugsOff: true,
    running: true,
  };
  await put([
    newFact(
      'fittingChecked.v1',
      { sampleId: one.sampleId, mode: 'fitted', points, observationOffered: true, initials: 'AQ', language: 'en' },
      entry(day.personId),
    ),
  ]);
  clock.forward(minute);
  await put([one.putOn(entry(day.personId))]);
  clock.forward(60 * minute);
  await put([one.stopped(entry(day.personId))]);
  await put([one.sealed(entry(day.personId))]);
  const page = `/sample/${one.sampleId}`;
  let user = visit(page);
  await user.click(await button('Correct a value'));
  await user.click(await screen.findByRole('link', { name: /^Correct: Filter in the breathing zone/ }));
  await user.click(await screen.findByRole('radio', { name: 'yes' }));
  await user.click(await button('Save the correction'));
  expect(screen.getAllByText('Say why in a few words')).not.toHaveLength(0);
  await user.type(screen.getByLabelText('Why'), 'Tapped past it');
  await user.click(await button('Save the correction'));
  await screen.findByText(/because Tapped past it/);
  expect(await lastFact('valueCorrected.v1')).toMatchObject({
    body: { path: '/points/breathingZone', old: false, new: true },
  });

  user = visit(page);
  await user.click(await button('Correct a value'));
  await user.click(await screen.findByRole('link', { name: /^Correct: Tasks/ }));
  const standing = await screen.findAllByRole('checkbox');
  expect(standing[0]).toBeChecked();
  await user.click(standing[0] as HTMLElement);
  await user.type(screen.getByLabelText('Why'), 'Another task');
  await user.click(await button('Save the correction'));
  expect(screen.getAllByText('Choose at least one task')).not.toHaveLength(0);
  await user.click(standing[1] as HTMLElement);
  await user.click(await button('Save the correction'));
  await screen.findByText(/because Another task/);
  expect((await lastFact('valueCorrected.v1'))?.body.new).toHaveLength(1);

  user = visit(page);
  await user.click(await button('Correct a value'));
  await user.click(await screen.findByRole('link', { name: /^Correct: Locked in where/ }));
  await user.type(await screen.findByLabelText('Right value'), 'Site safe');
  await user.type(screen.getByLabelText('Why'), 'The van was full');
  await user.click(await button('Save the correction'));
  await screen.findByText(/because The van was full/);
  expect(screen.getByText(/locked in: Site safe/)).toBeVisible();
});
