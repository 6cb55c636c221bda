/** The practice season under the pages of gear and those of whatever rests on it; ids found by the names that a person reads. */
import { cleanup, render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect } from 'vitest';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import { addDays } from '#core/calendar.ts';
import type { NewFact } from '#records/fact.ts';
import { Box } from '#screens/box/Box.tsx';
import { Determination } from '#screens/determination/Determination.tsx';
import { Day } from '#screens/exposure/Day.tsx';
import { Gear } from '#screens/gear/Gear.tsx';
import { OneGear } from '#screens/gear/OneGear.tsx';
import { Lists } from '#screens/lists/Lists.tsx';
import { Notice } from '#screens/notice/Notice.tsx';
import { ExposureRecord } from '#screens/person/ExposureRecord.tsx';
import { Person } from '#screens/person/Person.tsx';
import { Sample } from '#screens/sampling/Sample.tsx';
import { Settle } from '#screens/settle/Settle.tsx';
import { openPractice } from '#screens/start/begin.ts';
import { DutyPage } from '#screens/todo/DutyPage.tsx';
import { openSession } from '#store/session.ts';
import { type WriteOptions, write } from '#store/write.ts';
import { emptyOffice, type Office } from './office.tsx';

export { address, alerts, button, facts, heading, journalTexts, leaveOffice, screen, waitFor } from './office.tsx';

export const today = '2026-11-25';
/** The day so many days before today. */
export const on = (daysAgo: number): string => addDays(today, -daysAgo);

/** The practice book with its season, seven in the evening in Greenwich on 25 November 2026. */
export async function practiceSeason(): Promise<Office> {
  const office = await emptyOffice();
  expect(await openPractice()).toMatchObject({ kind: 'open' });
  return office;
}

export async function put(all: readonly NewFact[], options?: WriteOptions): Promise<readonly string[]> {
  const written = await write(all, options);
  if (written.kind === 'refused') throw new Error(JSON.stringify(written.refusals));
  expect(written).toMatchObject({ kind: 'written' });
  return written.kind === 'written' ? written.factIds : [];
}

type Row = Record<string, unknown> & { readonly id: string };

export async function rows(kind: string): Promise<readonly Row[]> {
  const all = (await openSession()?.db.records.toArray()) ?? [];
  return all.filter((row) => row.kind === kind).map((row) => row.record as unknown as Row);
}

/** The id of the record of a kind that bears this name, serial or lot number. */
export async function idOf(kind: string, name: string): Promise<string> {
  const found = (await rows(kind)).find((row) => [row.name, row.serial, row.lotNumber].includes(name));
  if (found === undefined) throw new Error(`no ${kind} ${name}`);
  return found.id;
}

export function visit(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  const dec = decodeURIComponent;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/gear" component={Gear} />
        <Route path="/gear/:kind/:id">{({ kind, id }) => <OneGear kind={kind} id={id} />}</Route>
        <Route path="/lists" component={Lists} />
        <Route path="/settle" component={Settle} />
        <Route path="/sample/:id">{({ id }) => <Sample sampleId={id} />}</Route>
        <Route path="/day/:id">{({ id }) => <Day workdayId={dec(id)} />}</Route>
        <Route path="/notice/:id">{({ id }) => <Notice measurementId={dec(id)} />}</Route>
        <Route path="/determination/:id">{({ id }) => <Determination siteId={id} />}</Route>
        <Route path="/person/:id">{({ id }) => <Person personId={id} />}</Route>
        <Route path="/exposure-record/:id">{({ id }) => <ExposureRecord workdayId={dec(id)} />}</Route>
        <Route path="/box/:id">{({ id }) => <Box boxId={id} />}</Route>
        <Route path="/todo/:id">{({ id }) => <DutyPage dutyId={dec(id)} />}</Route>
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}
