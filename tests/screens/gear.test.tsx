// @vitest-environment happy-dom
/** Pumps, flow meters and lots on a real store: what is due first, one tap for a charge, a newer certificate, whose it is; bad input. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { flushDrafts } from '#store/drafts.ts';
import { openSession } from '#store/session.ts';
import {
  address,
  alerts,
  button,
  facts,
  heading,
  idOf,
  journalTexts,
  leaveOffice,
  on,
  practiceSeason,
  screen,
  visit,
  waitFor,
} from './gearPages.tsx';

beforeAll(async () => {
  await practiceSeason();
}, 60_000);
beforeEach(async () => {
  await flushDrafts();
  await openSession()?.db.drafts.clear();
});
afterAll(leaveOffice);

type User = ReturnType<typeof visit>;
/** The first of them: a certificate has several lines with the same two names. */
const field = async (name: string | RegExp) => (await screen.findAllByLabelText(name))[0] as HTMLElement;
const write = async (user: User, name: string | RegExp, text: string) => {
  const found = await field(name);
  await user.clear(found);
  await user.click(found);
  await user.paste(text);
};
const pump = async () => `/gear/pump/${await idOf('pump', 'P-14')}`;
const meter = async () => `/gear/meter/${await idOf('meter', 'DP-2')}`;

describe('the list', () => {
  test('what is due comes first, then every pump, flow meter and lot in a sentence', async () => {
    visit('/gear');
    await heading('Pumps, flow meters and lots');
    await screen.findByRole('heading', { level: 2, name: 'To see to' });
    for (const name of ['Pumps', 'Flow meters', 'Cassette lots'])
      expect(screen.getByRole('heading', { level: 2, name })).toBeVisible();
    // two pumps were worn and never charged in the book; a third is on a worker now
    expect(
      screen.getAllByText(/no charge to the full is written down since it was worn on/).length,
    ).toBeGreaterThanOrEqual(2);
    // its certificate is from 250 days ago, due 115 days from now
    expect(screen.getByRole('link', { name: /^DP-2.*Dry piston, calibration due 20 March 2027/ })).toBeVisible();
  });

  test('a pump is added from there, and the way leads back', async () => {
    const user = visit('/gear');
    await user.click(await screen.findByRole('link', { name: 'Add a pump' }));
    await write(user, 'Number on the pump', 'P-77');
    await user.click(await button('Write it down'));
    await waitFor(() => expect(address()).toBe('/gear'));
    expect(await screen.findByRole('link', { name: /^P-77.*not worn yet/ })).toBeVisible();
  });
});

describe('a pump', () => {
  test('is charged with one tap, and is no longer due', async () => {
    const user = visit(await pump());
    await user.click(await button('Charged to the full now'));
    expect(await screen.findByText(/^Charged to the full, Wednesday 25 November 2026/)).toBeVisible();
    expect((await facts('pumpCharged.v1')).at(-1)?.body).toEqual({
      pumpId: await idOf('pump', 'P-14'),
      full: true,
      remark: null,
    });
    visit('/gear');
    expect(await screen.findByText(/^Pump P-15: no charge/)).toBeVisible();
    expect(screen.queryByText(/^Pump P-14: no charge/)).toBeNull();
  });

  test('shows the samples it wore and how its flow changed, as a picture and a table', async () => {
    visit(await pump());
    await heading('Pump P-14');
    expect(screen.getByRole('img', { name: /Flow change of Pump P-14/ })).toBeVisible();
    expect(screen.getAllByRole('link', { name: /Rex Rivet/ }).length).toBeGreaterThan(0);
  });

  test('is rented, goes back on a day, and is due on that day; out of use it is due for nothing', async () => {
    const path = await pump();
    let user = visit(`${path}?do=held`);
    await user.click(await field('Rented'));
    await write(user, 'From whom', 'Tool Loft');
    await write(user, 'Goes back on', '2026-11-25');
    await user.click(await button('Save whose it is'));
    expect(await screen.findByText('Rented from Tool Loft, goes back on 25 November 2026')).toBeVisible();
    visit('/gear');
    expect(await screen.findByText('Pump P-14 is to go back to Tool Loft: 25 November 2026')).toBeVisible();
    user = visit(`${path}?do=held`);
    await user.click(await field(/^Out of use/));
    await write(user, 'Why is it taken out of use?', 'Given back');
    await user.click(await button('Save whose it is'));
    expect(await screen.findByText('Out of use', { ignore: 'label' })).toBeVisible();
    expect((await facts('gearHeld.v1')).slice(-2).map(({ why }) => why)).toEqual([null, 'Given back']);
    visit('/gear');
    await screen.findByText(/^Pump P-15: no charge/);
    expect(screen.queryByText(/^Pump P-14/)).toBeNull();
  });
});

describe('a flow meter', () => {
  test('gets a newer certificate, due twelve months later unless another day is written; both stand, one in force', async () => {
    const user = visit(`${await meter()}?do=certificate`);
    await write(user, 'Date of the certificate', '2026-11-20');
    expect(await field('Next one due on')).toHaveValue('2027-11-20');
    await write(user, 'Who calibrated it', 'Level & Line');
    await write(user, 'read', '2.00');
    await write(user, 'true flow', '1.94');
    await user.click(await button('Save the certificate'));
    await heading('Flow meter DP-2');
    expect(await screen.findByText(/^in force today; next due 20 November 2027; by Level & Line/)).toBeVisible();
    expect(screen.getByText(/^not in force today/)).toBeVisible();
    expect((await facts('certificateEntered.v1')).at(-1)?.body).toMatchObject({
      certificateOn: '2026-11-20',
      dueOn: '2027-11-20',
      by: 'Level & Line',
      pairs: [{ readLPerMin: 2, trueLPerMin: 1.94 }],
    });
  });
});

test('a lot tells what was used of it, and the blanks that went into each box', async () => {
  const lot = (await facts('lotAdded.v1'))[0]?.body;
  visit(`/gear/lot/${lot?.lotId}`);
  await heading(`Lot ${lot?.lotNumber}`);
  const prepared = (await facts('samplePrepared.v1')).filter(({ body }) => body.lotId === lot?.lotId);
  expect(screen.getByText(new RegExp(`^${prepared.length} cassettes worn, \\d+ field blanks?$`))).toBeVisible();
  expect(screen.getAllByText(/so many samples ask for \d+ field blanks/).length).toBeGreaterThan(0);
});

test('an address of nothing says so and leads back', async () => {
  visit('/gear/pump/0123456789ab');
  await heading('This is not in the book');
  visit(`${await pump()}?doubt=0123456789ab`);
  expect(await screen.findByText(/This is not in the book/)).toBeVisible();
});

/** Wrong input: where, what is typed, the tap, the sentence that tells what to do. */
interface Bad {
  readonly title: string;
  readonly page: () => Promise<string>;
  readonly type: (user: User) => Promise<void>;
  readonly tap: string;
  readonly says: RegExp;
}
const doing = (of: () => Promise<string>, what: string) => async () => `${await of()}?do=${what}`;
const certificate = { page: doing(meter, 'certificate'), tap: 'Save the certificate' };
const bad = { page: doing(meter, 'found-bad'), tap: 'Save that it was found bad' };
const held = { page: doing(async () => `/gear/pump/${await idOf('pump', 'P-16')}`, 'held'), tap: 'Save whose it is' };
const charge = { page: doing(pump, 'charge'), tap: 'Save when it was charged' };
const found = (user: User) => write(user, 'What was found?', 'Reads high');

const wrong: readonly Bad[] = [
  { ...bad, title: 'nothing found', type: async () => undefined, says: /What was found/ },
  {
    ...bad,
    title: 'found tomorrow',
    type: async (user) => {
      await found(user);
      await write(user, 'Found on', on(-1));
    },
    says: /Found on/,
  },
  {
    ...bad,
    title: 'until before from',
    type: async (user) => {
      await found(user);
      await write(user, 'Doubtful from', on(10));
      await write(user, 'Doubtful until', on(20));
    },
    says: /The last day lies before the first/,
  },
  {
    ...bad,
    title: 'from after it was found',
    type: async (user) => {
      await found(user);
      await write(user, 'Found on', on(20));
      await write(user, 'Doubtful from', on(10));
    },
    says: /from a day after it was found/,
  },
  {
    ...bad,
    title: 'a day of no calendar',
    type: async (user) => {
      await found(user);
      await write(user, 'Doubtful from', '2026-02-30');
    },
    says: /Doubtful from/,
  },
  {
    ...certificate,
    title: 'dated after today',
    type: (user) => write(user, 'Date of the certificate', on(-3)),
    says: /dated after today/,
  },
  {
    ...certificate,
    title: 'due before its date',
    type: async (user) => {
      await write(user, 'Date of the certificate', on(3));
      await write(user, 'Next one due on', on(10));
    },
    says: /due before the date of the certificate/,
  },
  {
    ...certificate,
    title: 'half a line',
    type: async (user) => {
      await write(user, 'Date of the certificate', on(3));
      await write(user, 'read', '2.0');
    },
    says: /write both numbers, or neither/,
  },
  {
    ...certificate,
    title: 'a day that is written down already',
    type: (user) => write(user, 'Date of the certificate', on(250)),
    says: /of this day is written down already/,
  },
  { ...certificate, title: 'no date', type: async () => undefined, says: /Date of the certificate/ },
  { ...held, title: 'nothing chosen', type: async () => undefined, says: /Whose is it/ },
  {
    ...held,
    title: 'back on a day that has passed',
    type: async (user) => {
      await user.click(await field('Rented'));
      await write(user, 'Goes back on', on(3));
    },
    says: /goes back on a day that has passed/,
  },
  {
    ...held,
    title: 'out of use without a reason',
    type: async (user) => {
      await user.click(await field('Owned by the firm'));
      await user.click(await field(/^Out of use/));
    },
    says: /why it is taken out of use/,
  },
  {
    ...charge,
    title: 'charged later today',
    type: (user) => write(user, 'Time', '23:59'),
    says: /has not come yet/,
  },
  { ...charge, title: 'no time', type: async () => undefined, says: /Time/ },
];

test.each(wrong)('wrong input, $title: it is told, and nothing is lost', async ({ page, type, tap, says }) => {
  const user = visit(await page());
  await button(tap);
  await type(user);
  const [before, values] = [await journalTexts(), typed()];
  await user.click(await button(tap));
  await waitFor(() => expect(alerts()).toMatch(says));
  expect(await journalTexts()).toEqual(before);
  expect(typed()).toEqual(values);
});

/** What stands in every field of the page. */
const typed = (): readonly string[] =>
  [...document.querySelectorAll('main input[type=text], main textarea')].map(
    (each) => (each as HTMLInputElement).value,
  );
