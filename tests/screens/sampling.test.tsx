// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { entry, flowCheckOf } from '#tests/store/scenario.ts';
import {
  address,
  button,
  heading,
  journal,
  lastFact,
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

let stage: Stage;
beforeEach(async () => {
  stage = await setStage();
});
afterEach(strike);

const at = (time: string): string => `2026-11-25T${time}:00.000Z`;
const line = (name: string | RegExp) => screen.findByRole('button', { name });

describe('the pump of one worker', () => {
  test('is put on with one tap, at that moment', async () => {
    const one = await putOnSample(stage, 30).then(async (sample) => sample);
    const fact = await lastFact('pumpPutOn.v1');
    expect(fact?.happened.at).toBe(at('11:30'));
    visit(`/sample/${one.sampleId}`);
    await heading('The pump is on Ada Quill');
  });

  test('a tap on put on is a fact at once and turns the page to what runs', async () => {
    const { day } = stage;
    const { sampleOf } = await import('#tests/store/scenario.ts');
    const one = sampleOf(day);
    await put([flowCheckOf(day, 'before')(entry()), one.prepared(entry())]);
    stage.clock.forward(12 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await heading('Put the pump on Ada Quill');
    await user.click(await button('Put on now'));
    await heading('The pump is on Ada Quill');
    expect((await lastFact('pumpPutOn.v1'))?.happened).toMatchObject({ at: at('11:12'), entry: 'tapped' });
  });

  test('shows minutes and litres: 226 min at 2.00 L/min are 452 L (hand working)', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(226 * minute);
    visit(`/sample/${one.sampleId}`);
    await heading('The pump is on Ada Quill');
    expect(await screen.findByText(/^3.h 46.min$/)).toBeVisible();
    expect(screen.getByText('452.0')).toBeVisible();
    expect(screen.getByText(/A look was due at 08:30/)).toBeVisible();
  });

  test('a look is one tap', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(100 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await button('Looked at it'));
    expect(await screen.findByText(/Last looked at 08:10/)).toBeVisible();
    expect((await lastFact('pumpLookedAt.v1'))?.body).toMatchObject({ running: true, inPlace: true });
  });

  test('away from the lead area and back, with the moment of the first tap', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(60 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Away from the lead area/));
    await heading('Away from the lead area');
    stage.clock.forward(2 * minute);
    await user.click(screen.getByRole('radio', { name: /Lunch or a break/ }));
    await user.click(await button('Away now'));
    await heading('Ada Quill is away from the lead area');
    expect((await lastFact('leadAreaLeft.v1'))?.happened.at).toBe(at('12:30'));
    await user.click(await button('Back in the lead area now'));
    await heading('The pump is on Ada Quill');
    expect(await screen.findByText(/^Away from the lead area: Lunch/)).toBeVisible();
  });

  test('off the worker: whether it ran and where the worker was are asked, and back on is one tap', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(60 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Pump off the worker/));
    await user.click(await screen.findByRole('radio', { name: 'runs on' }));
    await user.click(screen.getByRole('radio', { name: 'is away from the lead area' }));
    await user.click(screen.getByRole('radio', { name: 'Lunch or a break' }));
    await user.click(await button('Off the worker now'));
    await heading('The pump is off Ada Quill');
    expect((await lastFact('pumpTakenOff.v1'))?.body).toMatchObject({ stillRunning: true, awayFromLead: true });
    stage.clock.forward(30 * minute);
    await user.click(await button('Back on the worker now'));
    await heading('The pump is on Ada Quill');
  });

  test('a pump that stands still is written down, and runs again after a look', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(90 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Pump fault/));
    await user.click(await screen.findByRole('radio', { name: 'The pump stands still' }));
    await user.type(screen.getByLabelText(/own minutes when found/), '61');
    await user.click(await button('Save the fault'));
    await heading('The pump of Ada Quill stands still');
    stage.clock.forward(minute);
    await user.click(await button('Looked at it: it runs'));
    await heading('The pump is on Ada Quill');
    expect((await lastFact('pumpFaulted.v1'))?.body).toMatchObject({ fault: 'stopped', pumpMin: 61 });
  });

  test('wet or dropped is kept, and says what it means', async () => {
    const one = await putOnSample(stage);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Wet, dropped, overloaded/));
    expect(await screen.findByText(/a low one proves nothing/)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'It got wet' }));
    await user.click(await button('Save what happened'));
    await waitFor(async () => expect(await lastFact('mishapNoted.v1')).toBeDefined());
  });

  test('a cassette change stops the old one and prepares the next for the same worker', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(120 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Change the cassette/));
    await user.click(await button('Old one off, prepare the new one'));
    await heading('The cassette for Ada Quill is prepared.');
    expect((await lastFact('pumpStopped.v1'))?.body.sampleId).toBe(one.sampleId);
    expect((await lastFact('samplePrepared.v1'))?.body).toMatchObject({
      follows: one.sampleId,
      workerId: stage.day.personId,
    });
  });

  test('after a cassette change one flow check between the two is asked for, and it speaks for both', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(120 * minute);
    const user = visit(`/sample/${one.sampleId}?do=change`);
    await user.click(await button('Old one off, prepare the new one'));
    await heading('The cassette for Ada Quill is prepared.');
    await user.click(await screen.findByRole('link', { name: /^Check the flow between the two cassettes/ }));
    await heading('Check the flow between two cassettes');
    await user.type(document.getElementById('reading-0-low') as HTMLElement, '1.96');
    stage.clock.forward(5 * minute);
    await user.click(await button('Save this flow check'));
    await heading('Put the pump on Ada Quill');
    expect(screen.queryByText('Check the flow between the two cassettes')).toBeNull();
    expect((await lastFact('flowChecked.v1'))?.body).toMatchObject({ purpose: 'between' });
  });

  test('times typed afterwards are normal entries, marked as such', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(60 * minute);
    const user = visit(`/sample/${one.sampleId}?do=looked`);
    await user.type(await screen.findByLabelText('Time'), '6:50 am');
    await user.click(await button('Save the look'));
    await heading('The pump is on Ada Quill');
    expect((await lastFact('pumpLookedAt.v1'))?.happened).toMatchObject({
      at: at('11:50'),
      entry: 'typed',
      from: 'From a watch, Ada Quill',
    });
    expect(await screen.findByText(/typed afterwards/)).toBeVisible();
  });

  test('a wrong time is struck through with its reason, and the right one stands beside it', async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(60 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await button('Correct a value'));
    await user.click(await screen.findByRole('link', { name: 'Correct: Time of “Put on the worker”' }));
    await user.type(await screen.findByLabelText('Right value'), '06:21');
    await user.type(screen.getByLabelText('Why'), 'The watch says so');
    await user.click(await button('Save the correction'));
    await heading('The pump is on Ada Quill');
    expect((await screen.findByText('06:30', { selector: 'del' })).nextElementSibling).toHaveTextContent('06:21');
    expect(screen.getByText(/because The watch says so \(Ada Quill\)/)).toBeVisible();
  });

  test('void asks for a reason and hides nothing', async () => {
    const one = await putOnSample(stage);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Void this sample/));
    await user.click(await button('Void it'));
    expect(await screen.findAllByText('Say why in a few words')).not.toHaveLength(0);
    await user.type(screen.getByLabelText('Why it is void'), 'Dropped into the bucket');
    await user.click(await button('Void it'));
    await heading('The sample of Ada Quill is void');
    expect((await screen.findAllByText('Void: Dropped into the bucket'))[0]).toBeVisible();
  });

  test('a sample that this device does not hold says so', async () => {
    visit('/sample/0123456789ab');
    expect(await screen.findByText(/not in the book on this device/)).toBeVisible();
  });
});

describe('after leaving', () => {
  const stopped = async () => {
    const one = await putOnSample(stage);
    stage.clock.forward(400 * minute);
    const user = visit(`/sample/${one.sampleId}`);
    await user.click(await line(/^Stop: the pump is off for good/));
    await heading('After leaving: Ada Quill');
    return { one, user };
  };

  test('a stop is one tap, and the pump shows its own minutes beside it', async () => {
    const { user } = await stopped();
    expect((await lastFact('pumpStopped.v1'))?.happened.at).toBe(at('18:10'));
    await user.type(screen.getByLabelText(/pump's own minutes/), '399');
    await user.click(await button("Save the pump's minutes"));
    expect(await screen.findByText(/^The pump shows 6.h 39.min\.$/)).toBeVisible();
  });

  test('a flow that fell from 2.00 to 1.88 L/min changed by 6.0 %: the average 1.94 stands, flagged (hand working)', async () => {
    const { one } = await stopped();
    await put([flowCheckOf(stage.day, 'after', 1.88)(entry())]);
    visit(`/sample/${one.sampleId}/after`);
    expect(await screen.findByText('1.94')).toBeVisible();
    expect(screen.getByText('6.0')).toBeVisible();
    expect(screen.getByText(/the lower flow judges/)).toBeVisible();
    expect(screen.getByText('776.0')).toBeVisible();
  });

  test('without a flow after no average is formed, and nothing is filled in', async () => {
    await stopped();
    expect(screen.getByText(/A missing reading is never filled in/)).toBeVisible();
    expect(screen.queryByText('Average flow')).toBeNull();
    expect(screen.getByRole('link', { name: 'Check the flow after' })).toBeVisible();
  });

  test('each part saves by itself: sealed, then locked in, then a regular day or not', async () => {
    const { user } = await stopped();
    await user.click(await button('Sealed now'));
    expect(await screen.findByText(/^Sealed 13:10, labelled\.$/)).toBeVisible();
    await user.type(screen.getByLabelText('Locked in where'), 'Box in the van');
    await user.click(await button('Locked in now'));
    expect(await screen.findByText('Locked in: Box in the van, by Ada Quill.')).toBeVisible();
    await user.click(screen.getByRole('radio', { name: /No: rained off/ }));
    await user.click(await button('Save the day'));
    expect(await screen.findAllByText('Say what was different about the day')).not.toHaveLength(0);
    await user.type(screen.getByLabelText('What was different'), 'Rained off at two');
    await user.click(await button('Save the day'));
    expect(await screen.findByText('Not a regular day: Rained off at two')).toBeVisible();
  });

  test('stopped by mistake takes the stop back, with a reason', async () => {
    const { one, user } = await stopped();
    await user.click(await screen.findByRole('link', { name: 'Stopped by mistake' }));
    await user.type(await screen.findByLabelText('How it came about'), 'Wrong line tapped');
    await user.click(await button('It was not stopped'));
    await heading('The pump is on Ada Quill');
    expect((await journal()).at(-1)).toMatchObject({ kind: 'stoppedByMistake.v1' });
    expect(address()).toBe(`/sample/${one.sampleId}`);
  });
});
