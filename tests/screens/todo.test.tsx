// @vitest-environment happy-dom
/** The list of what is to do: filled from the book, filtered, noted as done and opened again; requests for records; the calendar file. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry, zone } from '#tests/store/scenario.ts';
import { choose, measuredDay, openPage, watchDownloads } from './officeDay.tsx';
import {
  address,
  alerts,
  button,
  drafts,
  heading,
  lastFact,
  minute,
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
afterEach(async () => {
  await strike();
  vi.restoreAllMocks();
});

const sentences = (): string =>
  screen
    .queryAllByRole('listitem')
    .map((each) => each.textContent ?? '')
    .join('\n');

/** The page of a duty by the words that its sentence begins with. */
async function openDuty(what: RegExp): Promise<ReturnType<typeof openPage>> {
  openPage('/todo');
  const link = await screen.findByRole('link', { name: new RegExp(`^(Note it done|See it): .*${what.source}`) });
  return openPage(decodeURIComponent(link.getAttribute('href')?.slice(1) ?? ''));
}

describe('the list', () => {
  test('of a book in which nothing happened is empty, and says from what it fills itself', async () => {
    openPage('/todo');
    expect(await screen.findByText(/^Nothing is to do\. The list fills itself/)).toBeVisible();
  });

  test('after a result above the PEL it names the notice with its last day, the paragraph, the finding and the way', async () => {
    const { workdayId } = await measuredDay(stage);
    openPage('/todo');
    // Received Wednesday 25 November 2026: five working days are the 26th, 27th, 30th, 1st and 2nd.
    const line = await screen.findByText(
      /result of 25 November 2026, as soon as possible, by Wednesday 2 December at the latest/,
    );
    expect(line).toHaveTextContent('Ada Quill');
    const item = line.closest('li') as HTMLElement;
    expect(item).toHaveTextContent('29 CFR 1926.62 Lead, (d)(8)(i).');
    expect(item.querySelector(`a[href="#/day/${workdayId}"]`)).not.toBeNull();
    expect(item.querySelector(`a[href="#/notice/${workdayId}"]`)).not.toBeNull();
    // (d)(6)(iii): three calendar months after the sampling day.
    expect(sentences()).toContain('by Thursday 25 February 2027');
    expect(document.querySelector('progress, meter, [role=progressbar]')).toBeNull();
  });

  test('one person and one site can be shown alone', async () => {
    const { besideId } = await measuredDay(stage);
    openPage(`/todo?person=${besideId}`);
    await screen.findByText(/result of 25 November 2026/);
    expect(sentences()).not.toMatch(/^Train Ada Quill/m);
    expect(sentences()).toMatch(/Luz Lath/);
    openPage('/todo?site=0123456789ab');
    await heading('To do');
    await waitFor(() => expect(sentences()).not.toMatch(/result of 25 November/));
  });

  test("where the state's own rule is not held there is no list, and the words say whose rule governs", async () => {
    const siteId = newId();
    const shiftId = `${siteId}.2026-11-25`;
    const site = { siteId, name: 'Footbridge', stateCode: 'CA', setting: 'outdoors' as const, altitudeM: null, zone };
    const by = entry(stage.day.personId);
    await put([
      newFact('siteAdded.v1', site, by),
      newFact('shiftOpened.v1', { shiftId, siteId, workOn: '2026-11-25' }, by),
      newFact(
        'workNoted.v1',
        {
          workdayId: `${stage.day.personId}.2026-11-25`,
          shiftId,
          taskIds: ['handScraping'],
          jobClassificationId: null,
          respirator: null,
        },
        by,
      ),
    ]);
    openPage('/todo');
    expect(await screen.findByText(/^Footbridge: California runs its own plan/)).toBeVisible();
    expect(sentences()).not.toContain('Footbridge');
  });
});

describe('noting it done', () => {
  test('keeps day, person and place, and folds it away under what is done', async () => {
    await measuredDay(stage);
    const user = await openDuty(/Train Ada Quill/);
    await user.type(await screen.findByLabelText(/where does it lie\?$/), 'Blue folder, page 3');
    await user.click(await button('Note it done'));
    if (alerts() !== '') {
      await user.type(screen.getByLabelText('Why it came late'), 'The trainer was ill');
      await user.click(await button('Note it done'));
    }
    await waitFor(() => expect(address()).toBe('/todo'));
    expect((await lastFact('dutyDone.v1'))?.body).toMatchObject({
      doneOn: '2026-11-25',
      doneById: stage.day.personId,
      whereItLies: 'Blue folder, page 3',
    });
    expect(
      await screen.findByText(/Done 25 November 2026 by Ada Quill\. Lies: Blue folder, page 3/),
    ).toBeInTheDocument();
  });

  test('a day that does not exist, or lies ahead, is told at its field; nothing is lost', async () => {
    await measuredDay(stage);
    const user = await openDuty(/Train Ada Quill/);
    const day = await screen.findByLabelText('Done on');
    await user.clear(day);
    await user.type(day, '2026-12-24');
    await user.type(screen.getByLabelText(/where does it lie\?$/), 'Blue folder');
    await user.click(await button('Note it done'));
    expect(alerts()).toContain('Done on');
    await user.clear(day);
    await user.type(day, '31 February 2026');
    await user.click(await button('Note it done'));
    expect(alerts()).toContain('Done on');
    expect(await lastFact('dutyDone.v1')).toBeUndefined();
    expect(JSON.stringify(await drafts())).toContain('Blue folder');
  });

  test.each(['BLL 22', 'blood lead: 14 µg/dL', '18 ug/100 ml', 'plomo en sangre 12'])(
    'of a medical duty no value is kept: %s is refused',
    async (typed) => {
      await measuredDay(stage);
      const user = await openDuty(/Offer Ada Quill a blood test/);
      expect(await screen.findByText(/Medical values belong to the physician/)).toBeVisible();
      await user.type(screen.getByLabelText(/where does it lie\?$/), typed);
      await user.click(await button('Note it done'));
      expect(alerts()).toContain('looks like a medical value');
      expect(await lastFact('dutyDone.v1')).toBeUndefined();
    },
  );

  test('opened again it needs a reason, and stands on the list as before', async () => {
    await measuredDay(stage);
    let user = await openDuty(/Offer Ada Quill a blood test/);
    await screen.findByLabelText('Done on');
    await user.click(await button('Note it done'));
    await waitFor(async () => expect(await lastFact('dutyDone.v1')).toBeDefined());
    user = await openDuty(/Offer Ada Quill a blood test/);
    await user.click(await button('It was not done after all'));
    await user.click(await button('Open it again'));
    expect(await lastFact('dutyReopened.v1')).toBeUndefined();
    await user.type(screen.getByLabelText('Why is it opened again?'), 'Another Ada');
    await user.click(await button('Open it again'));
    await waitFor(async () => expect(await lastFact('dutyReopened.v1')).toMatchObject({ why: 'Another Ada' }));
    expect(await screen.findByLabelText('Done on')).toBeVisible();
  });

  test('what is not on the list now says so', async () => {
    openPage('/todo/training.0123456789ab');
    expect(await screen.findByText(/This is not on the list now/)).toBeVisible();
  });
});

describe('29 CFR 1910.1020(e)(1)(i): somebody asks to see records', () => {
  test('is written down, and the list says until when: 15 working days, counted by hand', async () => {
    const user = openPage('/asked');
    await user.click(await button('Write it down'));
    expect(alerts()).toContain('Who asked');
    expect(alerts()).toContain('Whose records');
    await user.type(screen.getByLabelText('Who asked'), 'Luz Lath');
    await choose(user, 'Asked as', 'Somebody who worked here before');
    await user.selectOptions(screen.getByLabelText('Whose records'), 'Of no single person');
    await user.click(await button('Write it down'));
    expect(await screen.findByText('Luz Lath asked 25 November 2026')).toBeVisible();
    expect((await lastFact('recordsRequested.v1'))?.body).toMatchObject({ as: 'formerWorker', personId: null });
    openPage('/todo');
    // From Thursday 26 November, Monday to Friday: the 15th is Wednesday 16 December 2026.
    expect(await screen.findByText(/Luz Lath asked for on 25 November 2026, by Wednesday 16 December/)).toBeVisible();
  });
});

describe('the calendar file', () => {
  test('holds the days of the list and names nobody unless wished', async () => {
    await measuredDay(stage);
    const blobs: Blob[] = [];
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      blobs.push(blob as Blob);
      return 'blob:test';
    });
    const handed = watchDownloads();
    const user = openPage('/todo');
    await user.click(await button('Calendar file'));
    await waitFor(() => expect(handed).toEqual(['to-do-2026-11-25.ics']));
    const text = (await blobs[0]?.text()) ?? '';
    expect(text.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
    expect(text).toContain('DTSTART;VALUE=DATE:20261202');
    expect(text).not.toContain('Ada');
    await user.selectOptions(screen.getByLabelText('Workers in it'), 'By name');
    await user.click(await button('Calendar file'));
    await waitFor(() => expect(handed).toHaveLength(2));
    expect((await blobs[1]?.text())?.replaceAll('\r\n ', '')).toContain('Ada Quill');
  });
});

test('a day after its last day is on top, with how it is mended', async () => {
  await measuredDay(stage);
  stage.clock.forward(9 * 24 * 60 * minute);
  openPage('/todo');
  expect(await screen.findByRole('heading', { name: 'The day has passed' })).toBeVisible();
  expect(screen.getByText(/^Late, and it stays visible\. What mends it/)).toBeVisible();
  expect(screen.getByText(/result of 25 November 2026, was due Wednesday 2 December/)).toBeVisible();
});
