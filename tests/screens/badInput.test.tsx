// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import {
  alerts,
  button,
  drafts,
  heading,
  journal,
  minute,
  put,
  putOnSample,
  type Stage,
  screen,
  setStage,
  strike,
  visit,
  waitFor,
} from './stage.tsx';

type User = ReturnType<typeof visit>;

/** Wrong input on a page of the shift: what is typed, the tap, and the sentence that tells what to do. */
interface Bad {
  readonly title: string;
  /** Sets up the book; answers the address of the page. */
  readonly page: (stage: Stage) => Promise<string> | string;
  readonly type: (user: User, stage: Stage) => Promise<void>;
  readonly tap: string;
  readonly says: RegExp;
}

const field = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no field ${id}`);
  return found;
};
const radio = async (user: User, name: string) => user.click(await screen.findByRole('radio', { name }));

/** A flow check with everything chosen but its readings. */
const reading =
  (low: string, high = '') =>
  async (user: User) => {
    for (const name of ['P-1', 'M-1', 'L-77']) await radio(user, name);
    if (low !== '') await user.type(field('reading-0-low'), low);
    if (high !== '') await user.type(field('reading-0-high'), high);
  };
const flow = (title: string, low: string, says: RegExp, high = ''): Bad => ({
  title: `flow check: ${title}`,
  page: ({ day }) => `/shift/${day.shiftId}/flow`,
  type: reading(low, high),
  tap: 'Save, next pump',
  says,
});

const tube = (title: string, label: RegExp, typed: string, says: RegExp): Bad => ({
  title: `flow check with a rotameter: ${title}`,
  page: ({ day }) => `/shift/${day.shiftId}/flow`,
  type: async (user) => {
    await reading('2.0')(user);
    await user.click(await button('Change flow meter or cassette'));
    await radio(user, 'Add a flow meter');
    await radio(user, 'Rotameter (float in a tube)');
    await user.type(screen.getByLabelText('Serial number'), 'R-4');
    await user.type(screen.getByLabelText(label), typed);
  },
  tap: 'Save, next pump',
  says,
});

const onTheWorker = async (stage: Stage, more: string): Promise<string> => {
  const one = await putOnSample(stage);
  stage.clock.forward(60 * minute);
  return `/sample/${one.sampleId}${more}`;
};
const typedTime = (title: string, deed: 'looked' | 'stop', time: string, says: RegExp, day?: string): Bad => ({
  title,
  page: (stage) => onTheWorker(stage, `?do=${deed}`),
  type: async (user) => {
    await user.type(await screen.findByLabelText('Time'), time);
    if (day === undefined) return;
    await user.clear(screen.getByLabelText('Day'));
    await user.type(screen.getByLabelText('Day'), day);
  },
  tap: deed === 'stop' ? 'Save: stopped' : 'Save the look',
  says,
});

const pumpMinutes = (title: string, typed: string, says: RegExp): Bad => ({
  title: `the pump's own minutes: ${title}`,
  page: async (stage) => {
    const one = await putOnSample(stage);
    stage.clock.forward(400 * minute);
    await put([one.stopped(entry())]);
    return `/sample/${one.sampleId}/after`;
  },
  type: async (user) => user.type(await screen.findByLabelText(/pump's own minutes/), typed),
  tap: "Save the pump's minutes",
  says,
});

/** A second sample, ready to go on, while the first one runs. */
const second =
  (shared: 'pump' | 'worker') =>
  async (stage: Stage): Promise<string> => {
    const { day } = stage;
    await putOnSample(stage);
    const [personId, pumpId] = [newId(), newId()];
    const person = { personId, name: 'Benicio Ruelle', identifier: null, language: 'es' as const };
    await put([
      newFact('personAdded.v1', { ...person, jobClassificationId: null, employer: null }, entry()),
      newFact('pumpAdded.v1', { pumpId, serial: 'P-2', model: null }, entry()),
    ]);
    const other = sampleOf(
      shared === 'worker' ? { ...day, pumpId } : day,
      newId(),
      shared === 'worker' ? day.personId : personId,
    );
    await put([other.prepared(entry())]);
    stage.clock.forward(minute);
    return `/sample/${other.sampleId}`;
  };

const nothing = async () => {};

/** A clock that went back is written down by the device itself, so that it shows beside what runs; nothing was typed for it. */
const noticedByItself = 'clockSetBackNoticed.v1';

const table: readonly Bad[] = [
  flow('letters in a number', 'two', /Reading 1: write a number in L\/min, without words/),
  flow('a comma that can be read in two ways', '1,234', /the comma can be read in two ways/),
  flow('two marks in a number', '2.0.1', /more than one comma or point/),
  flow('two numbers in one field', '2.0 2.1', /there are two numbers/),
  flow('a pasted unit that is another one', '2020 mL/min', /this was typed in mL\/min/),
  flow('zero', '0', /must be 0\.01 L\/min or more/),
  flow('below zero', '-2', /must not be below zero/),
  flow('millilitres without their unit', '2020', /must be 50 L\/min or less/),
  flow('lowest above highest', '2.4', /lowest is above the highest/, '2.1'),
  flow('no reading', '', /Write at least one reading/),
  tube('degrees Fahrenheit', /Air temperature/, '72 F', /this was typed in °F/),
  tube('inches of mercury', /Station pressure/, '29.9 inHg', /this was typed in inHg/),
  {
    title: 'flow after: no reading after is never filled in',
    page: async (stage) => {
      const one = await putOnSample(stage);
      stage.clock.forward(60 * minute);
      await put([one.stopped(entry())]);
      return `/shift/${stage.day.shiftId}/flow?pump=${stage.day.pumpId}&purpose=after&sample=${one.sampleId}`;
    },
    type: nothing,
    tap: 'Save this flow check',
    says: /Write at least one reading/,
  },
  {
    title: 'preparing: no worker, no task, no pump',
    page: ({ day }) => `/shift/${day.shiftId}/fit`,
    type: nothing,
    tap: 'Prepare the cassette',
    says: /Choose: Which worker.*Choose at least one task.*Choose: Which pump/s,
  },
  {
    title: 'preparing: a social security number is refused',
    page: ({ day }) => `/shift/${day.shiftId}/fit`,
    type: async (user) => {
      await radio(user, 'Add a worker');
      await user.type(screen.getByLabelText('Name'), 'Benicio Ruelle');
      await user.type(field('worker-identifier'), '078-05-1120');
      await user.click(screen.getByRole('checkbox', { name: 'Scraping paint by hand' }));
      for (const name of ['P-1', 'L-77']) await radio(user, name);
    },
    tap: 'Prepare the cassette',
    says: /looks like a social security number/,
  },
  {
    title: 'fitting: initials missing',
    page: async (stage) => {
      const one = sampleOf(stage.day);
      await put([one.prepared(entry())]);
      return `/worker/${one.sampleId}`;
    },
    type: (user) => radio(user, 'It was fitted on me, and I saw the check'),
    tap: 'Done: give the phone back',
    says: /Write your initials/,
  },
  {
    title: 'one pump on two workers',
    page: second('pump'),
    type: nothing,
    tap: 'Put on now',
    says: /runs on another worker/,
  },
  {
    title: 'one worker with two pumps',
    page: second('worker'),
    type: nothing,
    tap: 'Put on now',
    says: /wears another pump/,
  },
  typedTime('a time that no clock shows', 'looked', '25:99', /no such time on a clock/),
  typedTime('an hour without minutes', 'looked', '7', /add the minutes/),
  typedTime('a time that has not come yet', 'looked', '14:00', /has not come yet/),
  typedTime('a look before the pump was put on', 'looked', '06:10', /before the pump was put on/),
  typedTime('stop before start', 'stop', '06:10', /cannot stop before it was put on/),
  typedTime('zero minutes', 'stop', '06:30', /one and the same minute/),
  typedTime('a time that the clock change leaves out', 'looked', '02:30', /There is no 02:30 on that day/, '3/8/2026'),
  typedTime('a time that comes twice that night', 'looked', '01:30', /01:30 comes twice/, '11/1/2026'),
  typedTime('a day that does not exist', 'looked', '07:00', /no such day/, '11/31/2026'),
  {
    title: 'the clock set back while the pump runs',
    page: async (stage) => {
      const page = await onTheWorker(stage, '');
      stage.clock.atMs -= 120 * minute;
      return page;
    },
    type: nothing,
    tap: 'Looked at it',
    says: /clock was set back/,
  },
  pumpMinutes('letters', 'four hundred', /write a number in min, without words/),
  pumpMinutes('hours', '6.6 h', /this was typed in h/),
  pumpMinutes('more than a display shows', '9999', /must be 6000 min or less/),
  pumpMinutes('nothing', ' ', /Fill in: The pump's own minutes/),
  {
    title: 'off the worker: what happened meanwhile is not said',
    page: (stage) => onTheWorker(stage, '?do=off'),
    type: nothing,
    tap: 'Off the worker now',
    says: /Choose: The pump meanwhile/,
  },
  {
    title: 'void without a reason',
    page: (stage) => onTheWorker(stage, '?do=void'),
    type: nothing,
    tap: 'Void it',
    says: /Say why in a few words/,
  },
  {
    title: 'a decision on the flow without a reason',
    page: async (stage) => {
      const one = await putOnSample(stage);
      stage.clock.forward(60 * minute);
      await put([one.stopped(entry())]);
      return `/sample/${one.sampleId}?do=decide`;
    },
    type: (user) => radio(user, 'The lower of the two'),
    tap: 'Save the decision',
    says: /Say why in a few words/,
  },
  {
    title: 'field blank: where it was opened is missing',
    page: async ({ day }) => {
      await put([flowCheckOf(day, 'before')(entry())]);
      return `/shift/${day.shiftId}/blank`;
    },
    type: (user) => radio(user, 'L-77'),
    tap: 'Opened and closed now',
    says: /Fill in: Where it was opened/,
  },
];

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

describe('wrong input is told, and nothing is lost', () => {
  test('the table covers every page of the shift', () => {
    expect(table.length).toBeGreaterThan(30);
  });

  test.each(table)('$title', async ({ page, type, tap, says }) => {
    const user = visit(await page(stage));
    await heading(/./);
    await type(user, stage);
    const before = { journal: await journal(), drafts: await drafts() };
    await user.click(await button(tap));
    await waitFor(() => expect(alerts()).toMatch(says));
    expect((await journal()).filter(({ kind }) => kind !== noticedByItself)).toEqual(before.journal);
    expect(await drafts()).toEqual(before.drafts);
  });
});
