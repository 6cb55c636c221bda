// @vitest-environment happy-dom
/** After a shift: from the day's page to the share sheet in two taps, and then the page says that the file left. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { shiftEndedAt, unsentShifts } from '#findings/shiftEnded.ts';
import { shiftBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { entry } from '#tests/store/scenario.ts';
import { visit as visitOffice } from './office.tsx';
import { minute, put, putOnSample, type Stage, screen, setStage, strike, visit, waitFor } from './stage.tsx';

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(async () => {
  vi.restoreAllMocks();
  Object.assign(navigator, { share: undefined, canShare: undefined });
  await strike();
});

const shiftPage = () => `/shift/${stage.day.shiftId}`;

async function finishShift(): Promise<void> {
  const one = await putOnSample(stage);
  stage.clock.forward(400 * minute);
  await put([one.stopped(entry(stage.day.personId))]);
  stage.clock.forward(5 * minute);
  await put([one.sealed(entry(stage.day.personId))]);
  stage.clock.forward(5 * minute);
}

test('two taps from the finished shift to the share sheet', async () => {
  await finishShift();
  const shared: string[] = [];
  const share = async ({ files }: { files: File[] }): Promise<void> => {
    shared.push(files[0]?.name ?? '');
  };
  Object.assign(navigator, { share, canShare: () => true });
  vi.spyOn(window, 'matchMedia').mockReturnValue({ matches: true } as MediaQueryList);
  visit(shiftPage());
  const first = await screen.findByRole('link', { name: /^Send today's file.*not sent yet/ });
  expect(first).toHaveAttribute('href', '#/send?today=1');
  const user = visitOffice('/send?today=1');
  await screen.findByText(/^Ready: \d+ entries/);
  await user.click(screen.getByRole('button', { name: 'Share the file' }));
  await waitFor(() => expect(shared).toEqual([expect.stringMatching(/^fullshift-book-everything-.*\.zip$/)]));
  await screen.findByText(/^Handed over/);
  visit(shiftPage());
  expect(await screen.findByText('A file left since the shift was over')).toBeVisible();
});

test('while a pump runs nothing is said of files', async () => {
  await putOnSample(stage);
  visit(shiftPage());
  expect(await screen.findByText('When every cassette is sealed, send the day')).toBeVisible();
  expect(screen.queryByText(/not sent yet/)).toBeNull();
});

test('a shift ends with its last seal, and a file from before that is none of it', async () => {
  await finishShift();
  const book = await shiftBook(theSession().db, stage.day.shiftId);
  if (book === null) throw new Error('no shift');
  const [sample] = book.samples.values();
  expect(shiftEndedAt(book, stage.day.shiftId)).toBe(sample?.sealed?.at);
  const ids = [stage.day.shiftId];
  expect(unsentShifts(book, ids, null)).toEqual(ids);
  expect(unsentShifts(book, ids, sample?.stopped?.at ?? '')).toEqual(ids);
  expect(unsentShifts(book, ids, '2026-11-26T00:00:00.000Z')).toEqual([]);
});
