/** A book of an invented firm on an in-memory database, a clock that the test moves, and the pages of the shift under their addresses. */
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect } from 'vitest';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import type { NewFact } from '#records/fact.ts';
import { Fit } from '#screens/fitting/Fit.tsx';
import { WorkerPage } from '#screens/fitting/WorkerPage.tsx';
import { FlowCheck } from '#screens/flow/FlowCheck.tsx';
import { Groups } from '#screens/groups/Groups.tsx';
import { JobStart } from '#screens/jobStart/JobStart.tsx';
import { Rely } from '#screens/jobStart/Rely.tsx';
import { KeyIn } from '#screens/paperForm/KeyIn.tsx';
import { Reported } from '#screens/reported/Reported.tsx';
import { Roster } from '#screens/roster/Roster.tsx';
import { After } from '#screens/sampling/After.tsx';
import { Sample } from '#screens/sampling/Sample.tsx';
import { Settle } from '#screens/settle/Settle.tsx';
import { SettleMatter } from '#screens/settle/SettleMatter.tsx';
import { Blank } from '#screens/shift/Blank.tsx';
import { Conditions } from '#screens/shift/Conditions.tsx';
import { Shift } from '#screens/shift/Shift.tsx';
import { Story } from '#screens/story/Story.tsx';
import { flushDrafts } from '#store/drafts.ts';
import { setHolder } from '#store/holder.ts';
import { closeBook, newBook } from '#store/opening.ts';
import { openSession } from '#store/session.ts';
import { write } from '#store/write.ts';
import { newDevice, pickUp, type TestClock, testClock } from '#tests/store/device.ts';
import { entry, flowCheckOf, type Library, library, openingFacts, sampleOf } from '#tests/store/scenario.ts';

export const minute = 60_000;

export interface Stage {
  readonly clock: TestClock;
  readonly day: Library;
}

/** 06:00 at the site; site, worker, pump, flow meter, lot and shift are in the book, and Ada holds the phone. */
export async function setStage(): Promise<Stage> {
  const clock = testClock('2026-11-25T11:00:00.000Z');
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  const day = library();
  await put(openingFacts(day));
  await setHolder(day.personId);
  return { clock, day };
}

export async function strike(): Promise<void> {
  cleanup();
  await closeBook();
}

export async function put(facts: readonly NewFact[]): Promise<void> {
  expect(await write(facts)).toMatchObject({ kind: 'written' });
}

/** A sample with its flow before, put on `afterMin` minutes later. */
export async function putOnSample({ clock, day }: Stage, afterMin = 30): Promise<ReturnType<typeof sampleOf>> {
  const one = sampleOf(day);
  await put([flowCheckOf(day, 'before')(entry(day.personId))]);
  await put([one.prepared(entry(day.personId))]);
  clock.forward(afterMin * minute);
  await put([one.putOn(entry(day.personId))]);
  return one;
}

/** Opens a page as a link would. */
export function visit(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/shift/:shiftId">{({ shiftId }) => <Shift shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/flow">{({ shiftId }) => <FlowCheck shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/fit">{({ shiftId }) => <Fit shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/blank">{({ shiftId }) => <Blank shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/conditions">{({ shiftId }) => <Conditions shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/roster">{({ shiftId }) => <Roster shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/job-start">{({ shiftId }) => <JobStart shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/rely">{({ shiftId }) => <Rely shiftId={shiftId} />}</Route>
        <Route path="/groups" component={Groups} />
        <Route path="/reported" component={Reported} />
        <Route path="/key-in" component={KeyIn} />
        <Route path="/worker/:sampleId">{({ sampleId }) => <WorkerPage sampleId={sampleId} />}</Route>
        <Route path="/sample/:sampleId">{({ sampleId }) => <Sample sampleId={sampleId} />}</Route>
        <Route path="/sample/:sampleId/after">{({ sampleId }) => <After sampleId={sampleId} />}</Route>
        <Route path="/settle" component={Settle} />
        <Route path="/settle/:key">{({ key }) => <SettleMatter matterKey={decodeURIComponent(key)} />}</Route>
        <Route path="/story/:key">{({ key }) => <Story recordKey={decodeURIComponent(key)} />}</Route>
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}

export const address = (): string => decodeURIComponent(window.location.hash.slice(1));

/** Facts in the journal, oldest first, as kind and body. */
export async function journal(): Promise<
  readonly { id: string; kind: string; body: Record<string, unknown>; happened: { at: string } }[]
> {
  const rows = (await openSession()?.db.journal.orderBy('id').toArray()) ?? [];
  return rows.map((row) => JSON.parse(row.text));
}

export async function lastFact(kind: string) {
  return (await journal()).filter((fact) => fact.kind === kind).at(-1);
}

/** What is being typed, as kept on the disk. */
export async function drafts(): Promise<readonly unknown[]> {
  await flushDrafts();
  return ((await openSession()?.db.drafts.toArray()) ?? []).map(({ key, value }) => ({ key, value }));
}

export const button = (name: string | RegExp) => screen.findByRole('button', { name });
export const heading = (name: string | RegExp) => screen.findByRole('heading', { level: 1, name });

/** The sentences that stand over the form. */
export const alerts = () =>
  screen
    .queryAllByRole('alert')
    .map((each) => each.textContent ?? '')
    .join('\n');

export { screen, waitFor };
