/** Generated days as facts: what a phone and an office might have written, sound or not. Shrinks to a plain description. */
import * as fc from 'fast-check';
import { addMinutes } from '#core/calendar.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { at, ids, wanted } from '../records/facts.ts';
import {
  asked,
  blankOpened,
  explains,
  fitted,
  flow,
  hours,
  meter,
  piece,
  prepared,
  putOn,
  registers,
  regular,
  result,
  site,
  stopped,
} from './carefulStory.ts';

type Event = 'none' | 'look' | 'notRunning' | 'tubingOff' | 'flowDropped' | 'away' | 'clock';
type Second = 'none' | 'after' | 'overlapping';

export interface Description {
  readonly flow: number;
  readonly afterPct: number;
  readonly aimed: number;
  readonly lessThan: boolean;
  readonly blankCorrected: 'yes' | 'no' | 'notStated';
  readonly wallDeposit: 'yes' | 'no' | 'notStated';
  readonly blanksUg: readonly number[];
  readonly sae: number | null;
  readonly displayMin: number;
  readonly event: Event;
  readonly second: Second;
  readonly tail: 'none' | 'away' | 'sameAs' | 'unknown' | 'unexplained';
  readonly rotameter: boolean;
  readonly pressureKPa: number | null;
  readonly reports: 'one' | 'later' | 'sameDay';
  readonly hotWork: boolean;
  readonly secondEmployer: boolean;
  readonly decided: boolean;
  readonly stateCode: 'PA' | 'CA' | 'WA';
}

const often = <T>(usual: T, ...others: readonly T[]): fc.Arbitrary<T> =>
  fc.oneof({ weight: 5, arbitrary: fc.constant(usual) }, { weight: 2, arbitrary: fc.constantFrom(usual, ...others) });

export const description: fc.Arbitrary<Description> = fc.record({
  flow: fc.integer({ min: 150, max: 260 }).map((hundredths) => hundredths / 100),
  afterPct: fc.oneof(fc.integer({ min: 97, max: 104 }), fc.constantFrom(90, 92, 95, 100, 110, 80)),
  aimed: fc.constantFrom(2, 12, 20, 26, 28, 29, 30, 31, 40, 49, 50, 51, 70),
  lessThan: often(false, true),
  blankCorrected: fc.constantFrom('yes', 'no', 'notStated'),
  wallDeposit: often<Description['wallDeposit']>('yes', 'no', 'notStated'),
  blanksUg: fc.array(fc.constantFrom(0.4, 0.6, 1.5), { maxLength: 2 }),
  sae: often<number | null>(null, 0.15),
  displayMin: often(0, 1, -40, 30, 700),
  event: often<Event>('none', 'look', 'notRunning', 'tubingOff', 'flowDropped', 'away', 'clock'),
  second: often<Second>('none', 'after', 'overlapping'),
  tail: fc.constantFrom('none', 'none', 'none', 'away', 'sameAs', 'unknown', 'unexplained'),
  rotameter: fc.boolean(),
  pressureKPa: fc.constantFrom(null, 99, 101.325),
  reports: often<Description['reports']>('one', 'later', 'sameDay'),
  hotWork: often(false, true),
  secondEmployer: often(false, true),
  decided: often(false, true),
  stateCode: often<Description['stateCode']>('PA', 'CA', 'WA'),
});

const one = { sampleId: ids.one };
const typed = (facts: readonly NewFact[]): NewFact[] =>
  facts.map((fact) => ({ ...fact, happened: { ...fact.happened, entry: 'typed', from: 'paper' } }) as NewFact);

function eventFacts(event: Event): NewFact[] {
  const looked = (running: boolean, time: string) =>
    wanted('pumpLookedAt.v1', { ...one, running, inPlace: true, remark: null }, { at: at(time) });
  const fault = (kind: 'tubingOff' | 'flowDropped') =>
    wanted('pumpFaulted.v1', { ...one, fault: kind, pumpMin: null, remark: null }, { at: at('14:00') });
  const backOn = (time: string) => wanted('pumpPutBackOn.v1', one, { at: at(time) });
  const off: FactBody<'pumpTakenOff.v1'> = { ...one, stillRunning: true, awayFromLead: true, reason: 'lunch' };
  switch (event) {
    case 'none':
      return [];
    case 'look':
      return [looked(true, '14:00')];
    case 'notRunning':
      return [looked(true, '13:30'), looked(false, '14:00'), looked(true, '14:05')];
    case 'tubingOff':
      return [looked(true, '13:30'), fault('tubingOff'), backOn('14:10')];
    case 'flowDropped':
      return [fault('flowDropped')];
    case 'away':
      return [wanted('pumpTakenOff.v1', off, { at: at('15:00') }), backOn('15:30')];
    default:
      return [wanted('clockSetBackNoticed.v1', { ...one, setBackMin: 30 }, { at: at('14:00') })];
  }
}

function secondFacts(second: Second, aimed: number, flowLPerMin: number): NewFact[] {
  if (second === 'none') return [];
  const [from, to] = second === 'after' ? ['18:00', '20:00'] : ['14:00', '16:00'];
  const own = { pumpId: ids.pumpB };
  return [
    flow('f00000000011', 'before', '11:45', flowLPerMin, own),
    prepared(ids.two, own),
    fitted(ids.two),
    putOn(from, ids.two),
    stopped(to, 120, ids.two),
    flow('f00000000012', 'after', '20:20', flowLPerMin, own),
    result((aimed * flowLPerMin * 120) / 1000, { sampleId: ids.two }),
  ];
}

function resultFacts(given: Description, massUg: number): NewFact[] {
  const { blankCorrected, wallDeposit, sae, reports, lessThan } = given;
  const mass = lessThan ? { lessThanUg: massUg } : massUg;
  const own = { blankCorrected, wallDeposit, saeFraction: sae, ...(lessThan ? {} : { reportingLimitUg: 0.3 }) };
  const again = { ...own, reportNumber: 'R-2', reportedOn: reports === 'later' ? '2026-12-09' : '2026-12-01' };
  return [result(mass, own), ...(reports === 'one' ? [] : [result(massUg * 0.9, again)])];
}

const tailOf = (tail: Description['tail']): NewFact[] =>
  tail === 'none' || tail === 'unexplained' ? [] : [explains('20:00', '21:00', tail)];

/** Worn from 12:00 to 18:00 (20:00 where no second cassette follows), all of it worked. */
export function factsOf(given: Description): NewFact[] {
  const toEnd = given.second !== 'after';
  const min = toEnd ? 480 : 360;
  const ranMin = given.event === 'away' ? min - 30 : min;
  const air = { temperatureC: 20, pressureKPa: given.pressureKPa };
  const massUg = (given.aimed * given.flow * ranMin) / 1000;
  const pairs = [
    { readLPerMin: 0.5, trueLPerMin: 0.51 },
    { readLPerMin: 4, trueLPerMin: 3.96 },
  ];
  const employer = piece('21:30', '22:00', { employer: 'Sash Hire' });
  const blanks = given.blanksUg.flatMap((blankUg, i) => {
    const id = `c0000000009${i}`;
    return [blankOpened(id), result(blankUg, { sampleId: id, reportingLimitUg: 0.3 })];
  });
  const decision = wanted(
    'flowDecided.v1',
    { ...one, use: 'average' },
    { why: 'kinked at the very end', at: at('20:15') },
  );
  const known = registers().filter(({ kind }) => kind !== 'siteAdded.v1' && kind !== 'meterAdded.v1');
  return typed([
    site({ stateCode: given.stateCode, altitudeM: 250 }),
    meter(given.rotameter ? { meterKind: 'rotameter', pairs } : {}),
    ...known,
    flow('f00000000001', 'before', '11:40', given.flow, air),
    prepared(ids.one, { taskIds: [given.hotWork ? 'torchCutting' : 'handScraping'] }),
    fitted(ids.one, given.hotWork ? { insideHelmet: true } : {}),
    putOn('12:00'),
    ...eventFacts(given.event),
    stopped(addMinutes(at('12:00'), min), min + given.displayMin),
    flow('f00000000002', 'after', '20:10', (given.flow * given.afterPct) / 100, air),
    ...(given.decided ? [decision] : []),
    ...resultFacts(given, massUg),
    ...blanks,
    ...secondFacts(given.second, given.aimed, given.flow),
    hours(piece('12:00', given.tail === 'none' ? '20:00' : '21:00'), ...(given.secondEmployer ? [employer] : [])),
    ...tailOf(given.tail),
    ...(given.secondEmployer ? [explains('21:30', '22:00', 'away')] : []),
    asked(given.secondEmployer ? { secondEmployer: 'yes' } : {}),
    regular(),
  ]);
}
