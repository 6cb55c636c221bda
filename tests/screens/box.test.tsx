// @vitest-environment happy-dom
/** The box for the laboratory on a real store: packed, sheet made without a connection, changed after issue, handed over. */
import { readFileSync } from 'node:fs';
import { cleanup, render, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import { Box } from '#screens/box/Box.tsx';
import { Boxes } from '#screens/box/Boxes.tsx';
import { ChangeBox } from '#screens/box/ChangeBox.tsx';
import { PackBox } from '#screens/box/PackBox.tsx';
import { newId } from '#store/device.ts';
import { getFile, hashOf } from '#store/files.ts';
import { newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import {
  address,
  alerts,
  button,
  drafts,
  heading,
  journal,
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
/** The device has no connection: only files of the app itself, which the service worker holds, are answered. */
const ownFiles = (input: unknown): Promise<Response> => {
  const name = String(input).split('/').at(-1)?.split('?')[0] ?? '';
  if (!name.endsWith('.ttf')) return Promise.reject(new TypeError('no connection'));
  return Promise.resolve(new Response(new Uint8Array(readFileSync(`src/documents/fonts/${name}`))));
};

beforeEach(async () => {
  vi.stubGlobal('fetch', vi.fn(ownFiles));
  stage = await setStage();
});
afterEach(async () => {
  await strike();
  vi.unstubAllGlobals();
});

function visit(path: string) {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/boxes" component={Boxes} />
        <Route path="/pack" component={PackBox} />
        <Route path="/box/:boxId">{({ boxId }) => <Box boxId={boxId} />}</Route>
        <Route path="/box/:boxId/change">{({ boxId }) => <ChangeBox boxId={boxId} />}</Route>
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}

/** 400 minutes at 2.00 L/min before and 1.96 after: 1.98 L/min, 792.0 L by hand. One blank beside it. */
async function sampledDay(): Promise<{ sampleNumber: string; blankNumber: string; afterFactId: string }> {
  const { clock, day } = stage;
  const by = () => entry(day.personId);
  const one = sampleOf(day);
  await put([flowCheckOf(day, 'before', 2)(by()), one.prepared(by())]);
  clock.forward(minute);
  await put([one.putOn(by())]);
  clock.forward(400 * minute);
  await put([one.stopped(by())]);
  clock.forward(minute);
  await put([flowCheckOf(day, 'after', 1.96)(by()), one.sealed(by())]);
  const { shiftId, lotId } = day;
  const blank = { sampleId: newId(), sampleNumber: nextFreeNumber, shiftId, lotId, openedWhere: 'Van' };
  await put([newFact('blankOpened.v1', blank, by())]);
  const facts = await journal();
  const numberOf = (kind: string) => String(facts.findLast((fact) => fact.kind === kind)?.body.sampleNumber);
  return {
    sampleNumber: numberOf('samplePrepared.v1'),
    blankNumber: numberOf('blankOpened.v1'),
    afterFactId: String(facts.findLast((fact) => fact.body.purpose === 'after')?.id),
  };
}

const choose = (user: ReturnType<typeof visit>, group: string | RegExp, option: string) =>
  user.click(within(screen.getByRole('group', { name: group })).getByLabelText(option));

async function packed(): Promise<ReturnType<typeof visit>> {
  const user = visit('/pack');
  await user.type(await screen.findByLabelText('Name of the laboratory'), 'Stillwater Laboratory');
  await user.type(screen.getByLabelText('Reporting limit asked, on each filter, µg'), '0,75');
  await choose(user, /inner wall/, 'Yes');
  await choose(user, /Call before/, 'No');
  await user.type(screen.getByLabelText('Results wanted within'), '5 working days');
  await choose(user, 'Workers on the sheet', 'By name');
  await user.click(await button('The box is packed'));
  await heading('Box for Stillwater Laboratory');
  return user;
}

const sheetMade = async (user: ReturnType<typeof visit>, name: string | RegExp = 'Make the custody sheet') => {
  const before = (await journal()).filter(({ kind }) => kind === 'custodySheetIssued.v1').length;
  await user.click(await button(name));
  await waitFor(
    async () =>
      expect((await journal()).filter(({ kind }) => kind === 'custodySheetIssued.v1')).toHaveLength(before + 1),
    { timeout: 20_000 },
  );
};

describe('packing a box', () => {
  test('with nothing stopped, the page says so', async () => {
    visit('/pack');
    expect(await screen.findByText(/No stopped cassette waits to be sent/)).toBeVisible();
    visit('/boxes');
    expect(await screen.findByText('No box has been packed yet.')).toBeVisible();
  });

  test('an empty form says what is missing, and keeps what was typed', async () => {
    await sampledDay();
    const user = visit('/pack');
    await user.type(await screen.findByLabelText('Results wanted within'), '5 working days');
    await user.click(await button('The box is packed'));
    expect(alerts()).toContain('Name of the laboratory');
    expect(alerts()).toContain('inner wall');
    expect(await lastFact('boxPacked.v1')).toBeUndefined();
    expect(JSON.stringify(await drafts())).toContain('5 working days');
  });

  test('the cassettes of the site stand there by number, one blank is too few, and the box takes what is ticked', async () => {
    const { sampleNumber, blankNumber } = await sampledDay();
    const user = await packed();
    const fact = await lastFact('boxPacked.v1');
    expect(fact?.body).toMatchObject({
      analysis: 'Lead, total, in µg on each filter',
      reportingLimitUg: 0.75,
      includeWallDeposit: true,
      callBeforeReanalysis: false,
      turnaround: '5 working days',
      workersShownAs: 'name',
      samplerId: stage.day.personId,
    });
    expect(fact?.body.sampleIds).toHaveLength(2);
    expect(screen.getByRole('link', { name: `${sampleNumber}, Ada Quill` })).toBeVisible();
    expect(screen.getByRole('link', { name: `${blankNumber}, field blank` })).toBeVisible();
    expect(screen.getByText('one field blank in this box; 2 should go with it.')).toBeVisible();
    expect(screen.getByText(/No method is asked for/)).toBeVisible();
    expect(user).toBeDefined();
  });
});

describe('the custody sheet', () => {
  test('is made without a connection; bytes and fact are written together, and the volume is right', async () => {
    const { sampleNumber } = await sampledDay();
    const user = await packed();
    await sheetMade(user);
    const issued = (await lastFact('custodySheetIssued.v1'))?.body as {
      pdfHash: string;
      sheet: Record<string, unknown>;
    };
    const file = await getFile(issued.pdfHash);
    expect(file?.type).toBe('application/pdf');
    expect(hashOf(file?.bytes ?? new Uint8Array())).toBe(issued.pdfHash);
    expect(new TextDecoder('latin1').decode(file?.bytes.slice(0, 8))).toBe('%PDF-1.7');
    const { heads, site, reportingLimitUg } = issued.sheet;
    const rows = issued.sheet.rows as { volumeL: number }[];
    expect(rows[0]).toMatchObject({ sampleNumber, durationMin: 400, flowBeforeLPerMin: 2, flowAfterLPerMin: 1.96 });
    expect(rows[0]?.volumeL).toBeCloseTo(792, 9);
    expect(rows[1]).toMatchObject({ sampleKind: 'blank', volumeL: { kind: 'absent', why: 'noAirDrawn' } });
    expect(site).toMatchObject({ stateCode: 'OH', zone: 'America/New_York' });
    expect(reportingLimitUg).toBe(0.75);
    expect(heads).toHaveLength(1);
    expect(await screen.findByText(/Revision 1 on Letter, made 25 November 2026/)).toBeVisible();
    // The browser's part of a download: here it would leave the page of the test.
    const handed: string[] = [];
    const click = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      handed.push(this.download);
    });
    await user.click(await button('Hand out revision 1'));
    expect(await screen.findByText(/Handed to the browser as a download/)).toBeVisible();
    expect(handed).toEqual(['custody-sheet-2026-11-25-revision-1.pdf']);
    click.mockRestore();
  });

  test('after a correction it differs from the record: the difference is told and a reason is asked for', async () => {
    const { sampleNumber, afterFactId } = await sampledDay();
    const user = await packed();
    await sheetMade(user);
    expect(screen.queryByText(/differs from the record/)).toBeNull();
    const check = (await journal()).find(({ id }) => id === afterFactId)?.body;
    const body = { replaces: afterFactId, path: '/readings/0/highLPerMin', old: 1.96, new: 2, supersedes: null };
    await put([
      newFact('valueCorrected.v1', body, { ...entry(), why: 'Misread', about: [`flowCheck:${check?.flowCheckId}`] }),
    ]);
    expect(await screen.findByText('The sheet differs from the record: raise its revision')).toBeVisible();
    expect(screen.getByText(`${sampleNumber}, flow after, L/min: sheet 1.96, record 1.98`)).toBeVisible();
    await user.click(await button('Make revision 2'));
    expect(alerts()).toContain('Say what changed and why');
    await user.type(screen.getByLabelText('What changed, and why?'), 'Flow after was misread');
    await sheetMade(user, 'Make revision 2');
    const issued = await lastFact('custodySheetIssued.v1');
    expect(issued).toMatchObject({ why: 'Flow after was misread', body: { revision: '2' } });
    expect(issued?.body.sheet).toMatchObject({ why: 'Flow after was misread', revision: '2' });
    await waitFor(() => expect(screen.queryByText(/differs from the record/)).toBeNull());
    expect(await button('Hand out revision 1')).toBeVisible();
    expect(await button('Hand out revision 2')).toBeVisible();
  });

  test('what is asked can be changed with a reason, and the sheet then differs', async () => {
    await sampledDay();
    const user = await packed();
    await sheetMade(user);
    const boxPath = address();
    await user.click(screen.getByRole('link', { name: 'Change what is in the box or asked' }));
    const turnaround = await screen.findByLabelText('Results wanted within');
    await user.clear(turnaround);
    await user.type(turnaround, '2 working days');
    await user.click(await button('Write the change down'));
    expect(alerts()).toContain('Why is it changed?');
    await user.type(screen.getByLabelText('Why is it changed?'), 'Client waits');
    await user.click(await button('Write the change down'));
    await waitFor(() => expect(address()).toBe(boxPath));
    expect(await screen.findByText('Turnaround: sheet 5 working days, record 2 working days')).toBeVisible();
    expect((await journal()).filter(({ kind }) => kind === 'valueCorrected.v1')).toHaveLength(1);
  });

  test('a cassette that still runs is named and stays out of the list', async () => {
    await sampledDay();
    const running = sampleOf(stage.day);
    await put([running.prepared(entry()), running.putOn(entry())]);
    const number = String((await lastFact('samplePrepared.v1'))?.body.sampleNumber);
    visit('/pack');
    expect(await screen.findByText(`Not stopped yet, so not in the list: ${number}.`)).toBeVisible();
    expect(screen.getAllByRole('checkbox')).toHaveLength(2);
  });
});

test('no sheet is made over a cassette that was never put on: the page says which', async () => {
  await sampledDay();
  const user = await packed();
  const one = sampleOf(stage.day);
  await put([one.prepared(entry())]);
  const { id, body } = (await lastFact('boxPacked.v1')) ?? { id: '', body: {} as Record<string, unknown> };
  const sampleIds = body.sampleIds as string[];
  const more = { path: '/sampleIds', old: sampleIds, new: [...sampleIds, one.sampleId], supersedes: null };
  const about = [`box:${body.boxId}`];
  await put([newFact('valueCorrected.v1', { replaces: id, ...more }, { ...entry(), why: 'Left out', about })]);
  expect(await screen.findByText(/was never put on/)).toBeVisible();
  await user.click(await button('Make the custody sheet'));
  await waitFor(() => expect(alerts()).toContain('was never put on'));
  expect(await lastFact('custodySheetIssued.v1')).toBeUndefined();
});

describe('the hand-over', () => {
  test('keeps to whom, under which number, sealed or not, and the arrival', async () => {
    await sampledDay();
    const user = await packed();
    await sheetMade(user);
    await user.type(await screen.findByLabelText('Handed over to'), 'Parcel van');
    await user.type(screen.getByLabelText('Tracking number, if there is one'), 'ZX 0042');
    await user.click(await button('Handed over now'));
    expect(alerts()).toContain('Is the box sealed?');
    await choose(user, 'Is the box sealed?', 'Yes');
    await user.click(await button('Handed over now'));
    expect(await screen.findByText(/Handed over to Parcel van, 25 November 2026/)).toBeVisible();
    expect(screen.getByText('Tracking number ZX 0042')).toBeVisible();
    expect((await lastFact('boxHandedOver.v1'))?.body).toMatchObject({ trackingNumber: 'ZX 0042', sealed: true });
    await user.click(await button('It has arrived'));
    expect(await screen.findByText(/Arrived at the laboratory/)).toBeVisible();
    visit('/boxes');
    expect(await screen.findByText(/2 cassettes for Stillwater Laboratory/)).toBeVisible();
    expect(screen.getByText(/arrived 25 November 2026/)).toBeVisible();
  });

  test('a box that this device does not hold is told', async () => {
    visit('/box/0123456789ab');
    expect(await screen.findByText('This box is not in the book on this device.')).toBeVisible();
  });
});
