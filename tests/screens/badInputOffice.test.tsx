// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { flushDrafts } from '#store/drafts.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { openSession } from '#store/session.ts';
import { newDevice, pickUp } from '#tests/store/device.ts';
import { diskFull, withFault } from '#tests/store/faults.ts';
import { makeBackup } from '../store/handOvers.ts';
import {
  alerts,
  button,
  dayOfWorker,
  heading,
  journalTexts,
  leaveOffice,
  type Office,
  practiceOffice,
  samples,
  screen,
  visit,
  waitFor,
} from './office.tsx';

type User = ReturnType<typeof visit>;

/** Wrong input on a page of the office: what is typed, the tap, and the sentence that tells what to do. */
interface Bad {
  readonly title: string;
  readonly page: () => Promise<string> | string;
  readonly type: (user: User, office: Office) => Promise<void>;
  readonly tap: string | RegExp;
  readonly says: RegExp;
  /** The name of the field that the sentence belongs to, where there is one. */
  readonly field?: string;
}

let office: Office;
beforeEach(async () => {
  office = await practiceOffice();
});
afterEach(leaveOffice);

const first = (label: string | RegExp): HTMLElement => screen.getAllByLabelText(label)[0] as HTMLElement;
const write = async (user: User, label: string | RegExp, text: string) => {
  await user.clear(first(label));
  await user.type(first(label), text);
};
const doneNumber = async (): Promise<string> =>
  (await samples()).find(({ results, sampleKind }) => sampleKind === 'air' && results.length > 0)?.sampleNumber ?? '';

/** The head of a report, complete; then a line. */
const line =
  (typed: { number?: string; mass?: string; limit?: string; volume?: string; head?: (user: User) => Promise<void> }) =>
  async (user: User) => {
    await user.click(await button('Key in a report all the same'));
    await user.type(await screen.findByLabelText('Report number'), 'R-9');
    for (const group of screen.getAllByRole('group', { name: /subtracted|inner wall/ }))
      await user.click(group.querySelector('input[value=yes]') as HTMLElement);
    await typed.head?.(user);
    await user.type(first('Number'), typed.number ?? (await doneNumber()));
    if (typed.mass !== undefined) await user.type(first('Lead, µg'), typed.mass);
    if (typed.limit !== undefined) await user.type(first('Reporting limit, µg'), typed.limit);
    if (typed.volume !== undefined) await user.type(first('Reported volume, L'), typed.volume);
  };
const result = (title: string, typed: Parameters<typeof line>[0], says: RegExp, field?: string): Bad => ({
  title: `result: ${title}`,
  page: () => '/results',
  type: line(typed),
  tap: /^Write (the result|2 results) down$/,
  says,
  ...(field === undefined ? {} : { field }),
});

const dayForm = (title: string, open: string | RegExp, type: Bad['type'], tap: string, says: RegExp): Bad => ({
  title: `day: ${title}`,
  page: async () => `/day/${await dayOfWorker('Otto Oakum')}`,
  type: async (user, here) => {
    await user.click(await button(open));
    await type(user, here);
  },
  tap,
  says,
});

const wrongDigit = async (): Promise<string> => {
  const number = await doneNumber();
  return number.slice(0, -1) + ((Number(number.slice(-1)) + 1) % 10);
};

const table: readonly Bad[] = [
  result('milligrams', { mass: '0.0124 mg' }, /typed in mg; the field wants µg/, 'row-1-mass'),
  result('letters', { mass: 'twelve' }, /write a number in µg, without words/, 'row-1-mass'),
  result('not detected without a limit', { mass: 'ND' }, /"ND" carries no number/, 'row-1-mass'),
  result('nothing at all', { mass: '0' }, /never finds exactly nothing/, 'row-1-mass'),
  result('a comma that can be read in two ways', { mass: '1,240' }, /comma can be read in two ways/, 'row-1-mass'),
  result('a concentration where the mass goes', { mass: '15 µg/m³' }, /typed in µg\/m³/, 'row-1-mass'),
  result('no mass', {}, /Write the mass, such as 12\.4 or <2\.5/, 'row-1-mass'),
  result('two reporting limits', { mass: '<2.5', limit: '5' }, /differs from the one behind the </, 'row-1-limit'),
  result('a volume in cubic metres', { mass: '9', volume: '0.9 m3' }, /typed in m³; the field wants L/, 'row-1-volume'),
  result(
    'a number of no cassette',
    { number: '990019', mass: '9' },
    /No cassette of this book|do not fit together/,
    'row-1-number',
  ),
  result('letters in the number', { number: '12A456', mass: '9' }, /has digits only/, 'row-1-number'),
  result('too few digits', { number: '123', mass: '9' }, /Too few digits/, 'row-1-number'),
  {
    ...result('a wrong digit', {}, /do not fit together/, 'row-1-number'),
    type: async (user) => line({ number: await wrongDigit(), mass: '9' })(user),
  },
  result(
    'received tomorrow',
    { mass: '9', head: (user) => write(user, 'Received here on', '11/26/2026') },
    /has not come yet/,
    'receivedOn',
  ),
  result(
    'an error of 140 %',
    { mass: '9', head: (user) => write(user, /analytical error/, '140') },
    /100 % or less/,
    'sae',
  ),
  {
    title: 'result: the same cassette twice',
    page: () => '/results',
    type: async (user) => {
      await line({ mass: '9' })(user);
      await user.type(screen.getAllByLabelText('Number')[1] as HTMLElement, await doneNumber());
      await user.type(screen.getAllByLabelText('Lead, µg')[1] as HTMLElement, '8');
    },
    tap: 'Write 2 results down',
    says: /Two lines have the number/,
    field: 'row-2-number',
  },
  {
    title: 'result: the same report again',
    page: () => '/results',
    type: async (user) => {
      await line({ mass: '9', head: (typing) => write(typing, 'Report number', 'EX-1071') })(user);
    },
    tap: 'Write the result down',
    says: /This result is in the book already/,
    field: 'row-1-number',
  },
  dayForm(
    'minutes outside the stretch',
    'Say what these minutes were',
    async (user) => {
      await user.click(await screen.findByRole('radio', { name: 'Nobody knows' }));
      await write(user, 'To', '09:30');
    },
    'Write it down',
    /lie between 07:00 and 07:20/,
  ),
  dayForm(
    'minutes that end before they begin',
    'Say what these minutes were',
    async (user) => {
      await user.click(await screen.findByRole('radio', { name: 'Nobody knows' }));
      await write(user, 'From', '07:15');
      await write(user, 'To', '07:05');
    },
    'Write it down',
    /end comes before the start/,
  ),
  dayForm(
    'letters in the hours',
    /Worked/,
    async (user) => {
      await screen.findAllByLabelText('From');
      await write(user, 'From', 'seven');
      await user.type(screen.getByLabelText('Why is it changed?'), 'slip');
    },
    'Write the hours down',
    /write the time like 07:12/,
  ),
  dayForm(
    'pieces of work that overlap',
    /Worked/,
    async (user) => {
      await user.click(await button('Another piece of work'));
      await user.type(screen.getAllByLabelText('From')[2] as HTMLElement, '10:00');
      await user.type(screen.getAllByLabelText('To')[2] as HTMLElement, '13:00');
      await user.type(screen.getByLabelText('Why is it changed?'), 'call-out');
    },
    'Write the hours down',
    /overlap/,
  ),
  {
    title: 'a new site in a time zone that nobody knows',
    page: () => '/lists',
    type: async (user) => {
      await user.click(await button('Add a site'));
      await user.type(await screen.findByLabelText('Name of the site'), 'Footbridge');
      await user.selectOptions(screen.getByLabelText('State or territory'), 'OH');
      await user.click(screen.getByRole('radio', { name: 'Outdoors' }));
      await write(user, 'Time zone', 'Eastern');
    },
    tap: 'Write it down',
    says: /knows no such time zone/,
    field: 'site-zone',
  },
  {
    title: 'an altitude in feet',
    page: () => '/lists',
    type: async (user) => {
      await user.click(await button('Add a site'));
      await user.type(await screen.findByLabelText('Name of the site'), 'Footbridge');
      await user.type(screen.getByLabelText(/Altitude/), '750 ft');
    },
    tap: 'Write it down',
    says: /typed in ft; the field wants m/,
    field: 'site-altitude',
  },
  {
    title: 'a foreign file instead of a backup',
    page: () => '/take-in',
    type: async (user) =>
      user.upload(await screen.findByLabelText('File from the other device'), new File(['hello'], 'book.zip')),
    tap: 'Look into the file',
    says: /not a backup of Fullshift/,
    field: 'file',
  },
  {
    title: 'a backup that was cut short',
    page: () => '/take-in',
    type: async (user) => {
      const { blob, name } = await makeBackup();
      await user.upload(
        await screen.findByLabelText('File from the other device'),
        new File([blob.slice(0, blob.size / 2)], name),
      );
    },
    tap: 'Look into the file',
    says: /cut or damaged|not a backup/,
    field: 'file',
  },
  {
    title: 'a backup of a real book into the practice book',
    page: () => '/take-in',
    type: async (user, { device }) => {
      await pickUp(newDevice());
      await newBook({ firmName: 'Old Sash & Steel', practice: false });
      const { blob, name } = await makeBackup();
      await pickUp(device);
      await openBooks();
      await user.upload(await screen.findByLabelText('File from the other device'), new File([blob], name));
    },
    tap: 'Look into the file',
    says: /backup of a real book/,
    field: 'file',
  },
];

const kept = async () => {
  await flushDrafts();
  return ((await openSession()?.db.drafts.toArray()) ?? []).map(({ key, value }) => ({ key, value }));
};

describe('wrong input on the pages of the office', () => {
  test.each(table.map((bad) => [bad.title, bad] as const))('%s', async (_, bad) => {
    const user = visit(await bad.page());
    await bad.type(user, office);
    const before = { journal: await journalTexts(), drafts: await kept() };
    await user.click(await button(bad.tap));
    await waitFor(() => expect(alerts()).toMatch(bad.says));
    expect({ journal: await journalTexts(), drafts: await kept() }).toEqual(before);
    if (bad.field === undefined) return;
    const control = document.getElementById(bad.field);
    expect(control).toHaveAttribute('aria-invalid', 'true');
    expect(control?.getAttribute('aria-describedby') ?? '').toContain(`${bad.field}-error`);
  });

  test('a full disk is told, and the line that was typed is still there', async () => {
    const user = visit('/results');
    await line({ mass: '12.4' })(user);
    const before = { journal: await journalTexts(), drafts: await kept() };
    const full = { at: 1, forEver: true, error: diskFull, changesOnly: true };
    const { struck } = await withFault(full, async () => {
      await user.click(await button('Write the result down'));
      await waitFor(() => expect(alerts()).toMatch(/no room left, so nothing was written down/));
    });
    expect(struck).toBe(true);
    expect({ journal: await journalTexts(), drafts: await kept() }).toEqual(before);
    expect(first('Lead, µg')).toHaveValue('12.4');
    await user.click(await button('Write the result down'));
    await heading('One result is written down');
  });
});
