/** The office's pages under their addresses, on a real store in memory, with the practice book or an invented firm's own. */
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import type { SampleRecord, WorkdayRecord } from '#records/book.ts';
import { About } from '#screens/checked/About.tsx';
import { Checked } from '#screens/checked/Checked.tsx';
import { Day } from '#screens/exposure/Day.tsx';
import { Keep } from '#screens/keep/Keep.tsx';
import { Send } from '#screens/keep/Send.tsx';
import { Storage } from '#screens/keep/Storage.tsx';
import { TakeIn } from '#screens/keep/TakeIn.tsx';
import { Wipe } from '#screens/keep/Wipe.tsx';
import { Lists } from '#screens/lists/Lists.tsx';
import { Results } from '#screens/results/Results.tsx';
import { Samples } from '#screens/samples/Samples.tsx';
import { writePracticeBook } from '#screens/start/practiceBook.ts';
import { Start } from '#screens/start/Start.tsx';
import { Who } from '#screens/start/Who.tsx';
import { Today } from '#screens/today/Today.tsx';
import { closeBook } from '#store/opening.ts';
import { openSession } from '#store/session.ts';
import { newDevice, pickUp, type TestClock, type TestDevice, testClock } from '#tests/store/device.ts';

/** The device's zone: the times of the practice book are told in it. */
process.env.TZ = 'UTC';

export interface Office {
  readonly clock: TestClock;
  readonly device: TestDevice;
}

/** A device that never held a book, seven in the evening in Greenwich. */
export async function emptyOffice(): Promise<Office> {
  const clock = testClock('2026-11-25T19:00:00.000Z');
  const device = newDevice();
  await pickUp(device);
  return { clock, device };
}

/** The same with the practice book open. */
export async function practiceOffice(): Promise<Office> {
  const office = await emptyOffice();
  const failed = await writePracticeBook();
  if (failed !== null) throw new Error(failed);
  return office;
}

export async function leaveOffice(): Promise<void> {
  cleanup();
  await closeBook();
}

export function visit(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/" component={Today} />
        <Route path="/start" component={Start} />
        <Route path="/who" component={Who} />
        <Route path="/samples" component={Samples} />
        <Route path="/results" component={Results} />
        <Route path="/day/:workdayId">{({ workdayId }) => <Day workdayId={workdayId} />}</Route>
        <Route path="/keep" component={Keep} />
        <Route path="/send" component={Send} />
        <Route path="/take-in" component={TakeIn} />
        <Route path="/storage" component={Storage} />
        <Route path="/wipe" component={Wipe} />
        <Route path="/lists" component={Lists} />
        <Route path="/checked" component={Checked} />
        <Route path="/about" component={About} />
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}

const records = async <T,>(kind: string): Promise<readonly T[]> => {
  const rows = (await openSession()?.db.records.toArray()) ?? [];
  return rows.filter((row) => row.kind === kind).map((row) => row.record as T);
};
export const samples = () => records<SampleRecord>('sample');
export const workdays = () => records<WorkdayRecord>('workday');

/** The day of whoever's sample bears this worker's name in the practice book. */
export async function dayOfWorker(name: string): Promise<string> {
  const people = await records<{ id: string; name: string }>('person');
  const worker = people.find((person) => person.name === name);
  const day = (await workdays()).find(({ workerId }) => workerId === worker?.id);
  if (day === undefined) throw new Error(`no day of ${name}`);
  return day.id;
}

/** Everything in the journal, to show that nothing was added or changed. */
export const journalTexts = async (): Promise<readonly string[]> =>
  ((await openSession()?.db.journal.orderBy('id').toArray()) ?? []).map(({ text }) => text);

export async function facts(kind: string): Promise<readonly { body: Record<string, unknown>; why: string | null }[]> {
  return (await journalTexts()).map((text) => JSON.parse(text)).filter((fact) => fact.kind === kind);
}

export const address = (): string => decodeURIComponent(window.location.hash.slice(1));
export const button = (name: string | RegExp) => screen.findByRole('button', { name });
export const heading = (name: string | RegExp) => screen.findByRole('heading', { level: 1, name });
export const alerts = (): string =>
  screen
    .queryAllByRole('alert')
    .map((each) => each.textContent ?? '')
    .join('\n');

export { screen, waitFor };
