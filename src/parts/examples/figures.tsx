/** Examples of figures, workings and standings. The working is made by the formulas themselves. */
import { concentration } from '#core/concentration.ts';
import { exactly } from '#core/estimate.ts';
import { averageFlow } from '#core/flow.ts';
import { recorded } from '#core/formula.ts';
import { sampledVolume } from '#core/sampledVolume.ts';
import { twa8 } from '#core/twa.ts';
import { formatEstimateNumber } from '#words/quantity.ts';
import { BigNumber } from '../BigNumber.tsx';
import { Figure } from '../Figure.tsx';
import { type Standing, StandingMark } from '../StandingMark.tsx';
import { WorkingView } from '../WorkingView.tsx';
import type { Example } from './example.ts';

/** The id of a fact, as in a journal. */
const wrote = ['0123456789ab.00000001'];

const flow = averageFlow.of({
  Qb: recorded('flowBefore', 'L/min', exactly(2.05), wrote),
  Qa: recorded('flowAfter', 'L/min', exactly(1.99), wrote),
});
const volume = sampledVolume.of({ Q: flow, t: recorded('wornTime', 'min', exactly(447), wrote) });
const air = concentration.of({ m: recorded('mass', 'µg', exactly(22.4), wrote), V: volume });
export const exampleWorking = twa8.of({
  C: [air, recorded('concentrationAwayFromLead', 'µg/m³', exactly(0), wrote)],
  t: [recorded('wornTime', 'min', exactly(447), wrote), recorded('minutesAway', 'min', exactly(33), wrote)],
});
const shown = formatEstimateNumber(exampleWorking.estimate, 'µg/m³', { against: [30, 50] });

const standings: readonly Standing[] = [
  'below',
  'exactlyAt',
  'above',
  'unresolved',
  'good',
  'doubtful',
  'void',
  'waiting',
  'due',
  'done',
];

export const examples: readonly Example[] = [
  {
    part: 'Figure',
    name: 'opens into its working',
    render: () => (
      <Figure
        label="8-hour average of the day"
        value={shown}
        unit="µg/m³"
        note={<StandingMark standing="below">below the action level of 30 µg/m³</StandingMark>}
      >
        <WorkingView working={exampleWorking} />
      </Figure>
    ),
  },
  {
    part: 'Figure',
    name: 'without a working',
    render: () => <Figure label="On the worker" value="3 h 12 min" note="About 394 L if the flow held" />,
  },
  {
    part: 'WorkingView',
    name: 'default',
    render: () => <WorkingView working={volume} />,
  },
  {
    part: 'WorkingView',
    name: 'a recorded value alone',
    render: () => <WorkingView working={recorded('flowBefore', 'L/min', exactly(2.05), wrote)} />,
  },
  {
    part: 'WorkingView',
    name: 'less than',
    render: () => (
      <WorkingView
        working={concentration.of({
          m: recorded('mass', 'µg', { kind: 'between', lower: 0, upper: 5 }, wrote),
          V: volume,
        })}
      />
    ),
  },
  { part: 'BigNumber', name: 'default', render: () => <BigNumber label="Write on the cassette" digits="10473" /> },
  ...standings.map((standing) => ({
    part: 'StandingMark',
    name: standing,
    render: () => <StandingMark standing={standing} />,
  })),
];
