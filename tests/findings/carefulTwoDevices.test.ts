/**
 * A day that one device calls below, and what another device wrote of it without knowing. The expected doubt is named by hand for each:
 * what the other hand saw is reason enough not to say below, until a person settles it.
 */
import { expect, it } from 'vitest';
import type { NewFact } from '#records/fact.ts';
import { at, boxPacked, corrects, ids, journal, office, phone, wanted } from '../records/facts.ts';
import {
  dayFrom,
  explains,
  fitted,
  flow,
  hours,
  keysOf,
  piece,
  prepared,
  putOn,
  result,
  sampleKey,
  soundDay,
  standing,
  stopped,
  workdayId,
} from './carefulStory.ts';

const day = soundDay(24);
const own = journal(day, phone);
const after = (...more: readonly NewFact[]) => dayFrom([...own, ...journal(more, office)]);

const packed = (boxId: string, methodId: string | null) => boxPacked([ids.one], { boxId, methodId });

it('by itself it is below', () => {
  for (const which of ['actionLevel', 'pel'] as const) expect(standing(dayFrom(own), which).verdict).toBe('below');
});

it.each<[string, readonly NewFact[], string]>([
  ['stated longer hours', [hours(piece('12:00', '23:00'))], 'correctionsConflict'],
  ['stated shorter hours', [hours(piece('12:00', '16:00'))], 'correctionsConflict'],
  [
    'asked and heard of a call-out',
    [wanted('otherWorkAsked.v1', { workdayId, callOut: 'yes', secondSite: 'no', secondEmployer: 'no' })],
    'correctionsConflict',
  ],
  [
    'called the day not a regular one',
    [wanted('dayDescribed.v1', { workdayId, regular: 'no', reason: 'rained off' })],
    'correctionsConflict',
  ],
  ['saw the fitting missed', [fitted(ids.one, { breathingZone: false })], 'correctionsConflict'],
  ['put the pump on again', [putOn('13:00')], 'clockOutOfOrder'],
  ['stopped it at another time', [stopped('19:00', 420)], 'clockOutOfOrder'],
  [
    'had the pump on another worker',
    [prepared(ids.two, { workerId: ids.ben }), putOn('13:00', ids.two)],
    'pumpOnAnother',
  ],
  ['gave its number to another cassette', [prepared(ids.two, { sampleNumber: '120019' })], 'numberTwice'],
  ['keyed in the report lighter', [result(20)], 'correctionsConflict'],
  ['has another report without a date', [result(20, { reportNumber: 'R-2', reportedOn: null })], 'reportOrderNotKnown'],
  ['declared it void', [wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'found open' })], 'voided'],
  [
    'noted that it fell into water',
    [wanted('mishapNoted.v1', { sampleId: ids.one, mishap: 'wet', remark: null })],
    'mishap',
  ],
  [
    'found the pump standing',
    [
      wanted(
        'pumpLookedAt.v1',
        { sampleId: ids.one, running: false, inPlace: true, remark: null },
        { at: at('14:00') },
      ),
    ],
    'lookedNotRunning',
  ],
  ['corrected a fact that is not here', [corrects('yyyyyyyyyyy1.00000003', '/mass', 1, 2)], 'notUnderstood'],
  ['checked the flow anew, far off', [flow('f00000000009', 'after', '20:30', 1)], 'flowChecksDiffer'],
  ['checked the flow ahead of it, far off', [flow('f00000000009', 'before', '11:00', 1)], 'flowChecksDiffer'],
  ['packed it into a second box', [packed(ids.box, 'niosh-7082'), packed('x00000000002', 'niosh-7300')], 'inTwoBoxes'],
  [
    'knows a kind of fact that must be understood',
    [
      {
        ...explains('13:00', '14:00', 'unknown'),
        kind: 'sampleTakenBack.v9',
        mustUnderstand: true,
        about: [sampleKey],
      } as unknown as NewFact,
    ],
    'notUnderstood',
  ],
])('the other device %s', (_, more, key) => {
  const found = after(...more);
  expect(keysOf(found.blocksBelow)).toContain(key);
  for (const which of ['actionLevel', 'pel'] as const) expect(standing(found, which).verdict).not.toBe('below');
});

it('flows read apart by two devices are settled by a decision with its reason; alike they are no doubt', () => {
  const apart = flow('f00000000009', 'after', '20:30', 1);
  // The other device's first entry after what both share is that check.
  const knew = journal([apart], office).map(({ id }) => id);
  const decided = (why: string) => wanted('flowDecided.v1', { sampleId: ids.one, use: 'average', knew }, { why });
  expect(keysOf(after(apart, decided(' ')).blocksBelow)).toContain('flowChecksDiffer');
  expect(keysOf(after(apart, decided('the hose had come off at the second')).blocksBelow)).toEqual([]);
  expect(keysOf(after(flow('f00000000009', 'after', '20:30', 1.98)).blocksBelow)).toEqual([]);
});

it('a decision that did not know of the other reading settles nothing', () => {
  const apart = flow('f00000000009', 'after', '20:30', 1);
  const decided = wanted('flowDecided.v1', { sampleId: ids.one, use: 'average' }, { why: 'as read here' });
  expect(keysOf(after(apart, decided).blocksBelow)).toContain('flowChecksDiffer');
});
