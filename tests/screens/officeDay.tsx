/** A measured day of an invented firm above the PEL, told by nobody yet, and the office's pages of what follows under their addresses. */
import { readFileSync } from 'node:fs';
import { cleanup, render, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { vi } from 'vitest';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import { Determination } from '#screens/determination/Determination.tsx';
import { Inspector } from '#screens/inspector/Inspector.tsx';
import { InspectorSite } from '#screens/inspector/InspectorSite.tsx';
import { Notice } from '#screens/notice/Notice.tsx';
import { Papers } from '#screens/papers/Papers.tsx';
import { ExposureRecord } from '#screens/person/ExposureRecord.tsx';
import { People } from '#screens/person/People.tsx';
import { Person } from '#screens/person/Person.tsx';
import { Asked } from '#screens/todo/Asked.tsx';
import { DutyPage } from '#screens/todo/DutyPage.tsx';
import { Todo } from '#screens/todo/Todo.tsx';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { entry, flowCheckOf, sampleOf } from '#tests/store/scenario.ts';
import { minute, put, type Stage, screen } from './stage.tsx';

/** The device has no connection: only files of the app itself, which the service worker holds, are answered. */
const ownFiles = (input: unknown): Promise<Response> => {
  const name = String(input).split('/').at(-1)?.split('?')[0] ?? '';
  if (!name.endsWith('.ttf')) return Promise.reject(new TypeError('no connection'));
  return Promise.resolve(new Response(new Uint8Array(readFileSync(`src/documents/fonts/${name}`))));
};

export const withoutConnection = (): void => void vi.stubGlobal('fetch', vi.fn(ownFiles));

/** A file handed out as a download would leave the page of the test: its name is noted instead. */
export function watchDownloads(): string[] {
  const handed: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    handed.push(this.download);
  });
  return handed;
}

export interface Measured {
  readonly sampleId: string;
  readonly workdayId: string;
  /** Did the same work that day by the roster, without a pump; reads Spanish. */
  readonly besideId: string;
}

/**
 * Ada Quill, 480 min at 2.00 L/min before and after: 960 L, and 60 µg of lead make 62.5 µg/m³, also over 8 hours. Luz Lath did the
 * same by the roster. The result came on Wednesday 25 November 2026.
 */
export async function measuredDay({ clock, day }: Stage, massUg = 60): Promise<Measured> {
  const by = () => entry(day.personId);
  const one = sampleOf(day);
  const besideId = newId();
  const workdayId = `${day.personId}.2026-11-25`;
  const work = { shiftId: day.shiftId, taskIds: ['handScraping'], jobClassificationId: null, respirator: null };
  const beside = { name: 'Luz Lath', identifier: null, language: 'es' as const, jobClassificationId: null };
  await put([
    newFact('personAdded.v1', { personId: besideId, employer: 'Second Coat', ...beside }, by()),
    newFact('workNoted.v1', { workdayId, ...work }, by()),
    newFact('workNoted.v1', { workdayId: `${besideId}.2026-11-25`, ...work }, by()),
    flowCheckOf(day, 'before', 2)(by()),
    one.prepared(by()),
  ]);
  clock.forward(minute);
  await put([one.putOn(by())]);
  clock.forward(480 * minute);
  await put([one.stopped(by())]);
  clock.forward(minute);
  await put([flowCheckOf(day, 'after', 2)(by()), one.sealed(by())]);
  clock.forward(60 * minute);
  await put([newFact('resultReceived.v1', resultOf(one.sampleId, massUg, 'R-1'), by())]);
  return { sampleId: one.sampleId, workdayId, besideId };
}

export const resultOf = (sampleId: string, massUg: number, reportNumber: string, receivedOn = '2026-11-25') => ({
  sampleId,
  reportNumber,
  laboratoryId: null,
  accreditation: null,
  methodId: null,
  receivedOn,
  reportedOn: receivedOn,
  analysedOn: null,
  mass: { kind: 'measured' as const, massUg },
  reportingLimitUg: 2.5,
  blankCorrected: 'notStated' as const,
  wallDeposit: 'yes' as const,
  laboratoryVolumeL: null,
  laboratoryConcentrationUgPerM3: null,
  saeFraction: null,
  remark: null,
});

/** Opens a page as a link would. */
export function openPage(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/todo" component={Todo} />
        <Route path="/todo/:dutyId">{({ dutyId }) => <DutyPage dutyId={decodeURIComponent(dutyId)} />}</Route>
        <Route path="/asked" component={Asked} />
        <Route path="/notice/:id">{({ id }) => <Notice measurementId={decodeURIComponent(id)} />}</Route>
        <Route path="/determination/:siteId">{({ siteId }) => <Determination siteId={siteId} />}</Route>
        <Route path="/person" component={People} />
        <Route path="/person/:personId">{({ personId }) => <Person personId={personId} />}</Route>
        <Route path="/exposure-record/:id">{({ id }) => <ExposureRecord workdayId={decodeURIComponent(id)} />}</Route>
        <Route path="/inspector" component={Inspector} />
        <Route path="/inspector/:siteId">{({ siteId }) => <InspectorSite siteId={siteId} />}</Route>
        <Route path="/papers" component={Papers} />
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}

export const choose = (user: ReturnType<typeof openPage>, group: string | RegExp, option: string | RegExp) =>
  user.click(within(screen.getByRole('group', { name: group })).getByLabelText(option));
