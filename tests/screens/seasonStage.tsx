/** Pages of the season ahead under their addresses, on a real store in memory, six in the morning at the site. */
import '@testing-library/jest-dom/vitest';
import { cleanup, render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { Route, Router, Switch } from 'wouter';
import { useHashPath } from '#app/hashAddress.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { Fit } from '#screens/fitting/Fit.tsx';
import { FlowCheck } from '#screens/flow/FlowCheck.tsx';
import { NewPlan } from '#screens/plan/NewPlan.tsx';
import { Plan } from '#screens/plan/Plan.tsx';
import { Season } from '#screens/season/Season.tsx';
import { Blank } from '#screens/shift/Blank.tsx';
import { Shift } from '#screens/shift/Shift.tsx';
import { Tomorrow } from '#screens/tomorrow/Tomorrow.tsx';
import { TomorrowWhere } from '#screens/tomorrow/TomorrowWhere.tsx';
import { newFact } from '#store/newFact.ts';
import { entry } from '#tests/store/scenario.ts';

/** Opens a page as a link would. */
export function visit(path: string): ReturnType<typeof userEvent.setup> {
  cleanup();
  window.location.hash = path;
  render(
    <Router hook={useHashPath}>
      <Switch>
        <Route path="/season" component={Season} />
        <Route path="/plan" component={NewPlan} />
        <Route path="/plan/:planId">{({ planId }) => <Plan planId={planId} />}</Route>
        <Route path="/tomorrow" component={TomorrowWhere} />
        <Route path="/tomorrow/:shiftId">{({ shiftId }) => <Tomorrow shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId">{({ shiftId }) => <Shift shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/flow">{({ shiftId }) => <FlowCheck shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/fit">{({ shiftId }) => <Fit shiftId={shiftId} />}</Route>
        <Route path="/shift/:shiftId/blank">{({ shiftId }) => <Blank shiftId={shiftId} />}</Route>
      </Switch>
    </Router>,
  );
  return userEvent.setup();
}

export function planOf(body: Partial<FactBody<'measurementPlanned.v1'>>): NewFact {
  return newFact(
    'measurementPlanned.v1',
    {
      planId: '',
      jobClassificationId: null,
      setting: 'indoors',
      taskIds: ['handScraping'],
      siteId: null,
      season: null,
      crewCount: 2,
      choice: 'all',
      reason: null,
      slots: [],
      methodId: null,
      reportingLimitUg: 2.5,
      flowLPerMin: 2,
      cassettesCount: 1,
      remark: null,
      ...body,
    },
    entry(),
  );
}
