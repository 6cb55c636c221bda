/** Sentences of the season ahead: nothing that only pads, nothing that is no figure, nothing said of what never was. */
import { expect, test } from 'vitest';
import type { PumpStanding } from '#findings/gear/gearStanding.ts';
import { reason } from '#findings/reason.ts';
import type { NextToMeasure } from '#findings/season/nextToMeasure.ts';
import type { Book } from '#records/book.ts';
import { knownOf } from '#screens/season/groupSentences.ts';
import { pumpDetail } from '#words/gearLines.ts';
import { en as gear } from '#words/gearScreen.ts';
import { reasonSentence } from '#words/reasons.ts';
import { aheadReasonText } from '#words/sampleAhead.ts';
import { en as picture } from '#words/seasonPicture.ts';

test('dust and limits stand as they were typed and as the rule writes them', () => {
  const params = { dustMgPerM3: 5, changeAfterMin: 200, cassettesCount: 3, boundUgPerM3: 15.625 };
  expect(aheadReasonText({ key: 'changeCassette', params })).toMatch(/^At 5\u00a0mg\/m³ of dust/);
  // 29 CFR 1926.62(c): 50 micrograms, no digit behind it.
  expect(picture.limit({ which: 'pel', limitUgPerM3: 50 })).toBe('Permissible exposure limit 50\u00a0µg/m³');
});

const pump = (lastWornOn: string | null, chargedSinceWorn: boolean | null) =>
  ({ lastWornOn, chargedSinceWorn, make: null, held: null, doubtful: false }) as unknown as PumpStanding;

test('"since" is said only of a pump that was worn', () => {
  expect(pumpDetail(pump(null, true))).toBe('not worn yet, charged to the full');
  expect(pumpDetail(pump(null, false))).toBe('not worn yet, no charge to the full is written down');
  expect(pumpDetail(pump('2026-10-01', true))).toBe('last worn 1 October 2026, charged to the full since');
});

test('one month is named once under the picture', () => {
  expect(gear.flow.x('2026-10-01', '2026-10-30')).toBe('October 2026');
  expect(gear.flow.x('2026-09-01', '2026-10-30')).toBe('September 2026 to October 2026');
});

test('what somebody typed gets its full stop, once', () => {
  for (const why of ['Rained off at two', 'Rained off at two.'])
    expect(reasonSentence(reason('notRegular', [], { why }))).toMatch(/: Rained off at two\. The figure stands/);
});

test('a figure that is at least nothing is no figure', () => {
  const last = { workerId: null, workOn: '2026-10-01', twa8UgPerM3: { kind: 'atLeast', lower: 0 } };
  const rest = { reliable: null, dueOn: null, overdue: false, ruleHeld: true, need: { dueOn: null } };
  const presumption = { presumedTextKey: 'notListed', presumedAbove: null, presumedUpTo: null };
  const [said] = knownOf({ last, presumption, ...rest } as unknown as NextToMeasure, {} as Book);
  expect(said).toBe('Last measured on 1 October 2026: average not known yet.');
});
