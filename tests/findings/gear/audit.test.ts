/** The careful side against gear as journals hold it: entries that contradict each other, that are missing, that a newer version wrote. */
import { describe, expect, it } from 'vitest';
import { findSample } from '#findings/sample.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { ids, journal, office, Writer, wanted } from '../../records/facts.ts';
import { bookFrom, dayFrom, keysOf, soundDay, standing } from '../carefulStory.ts';

const elsewhere = 'xxxxxxxxxxx1';
const entries = (massUg: number, ...more: readonly (readonly [string, readonly NewFact[]])[]) => [
  ...journal(soundDay(massUg)),
  ...more.flatMap(([writer, facts]) => journal(facts, writer)),
];
const verdict = (given: readonly JournalEntry[]) => standing(dayFrom(given), 'actionLevel').verdict;
const blocks = (given: readonly JournalEntry[]) => keysOf(findSample(ids.one, bookFrom(given)).blocksBelow);
const entryOf = (kind: string): string =>
  journal(soundDay(24)).find(({ text }) => text.includes(`"${kind}"`))?.id ?? '';

const gears = [
  ['pump', ids.pumpA, 'pumpAdded.v1'],
  ['meter', ids.meter, 'meterAdded.v1'],
  ['lot', ids.lot, 'lotAdded.v1'],
] as const;
const doubted = (gear: 'pump' | 'meter' | 'lot', gearId: string, more: Partial<FactBody<'gearDoubted.v1'>> = {}) =>
  wanted('gearDoubted.v1', {
    ...{ gear, gearId, doubtId: 'd00000000001', foundOn: '2026-12-20', fromOn: null, untilOn: null },
    found: 'dropped from the scaffold',
    ...more,
  });

describe('a lot that two devices put right differently', () => {
  const corrected = (to: string) =>
    wanted(
      'valueCorrected.v1',
      { replaces: entryOf('lotAdded.v1'), path: '/expiresOn', old: null, new: to, supersedes: null } as never,
      { why: 'misread', about: [`lot:${ids.lot}`] },
    );
  it('the earlier day stands, and nothing low is proven while it is open', () => {
    // both say that it had expired before 25 November
    const given = entries(24, [office, [corrected('2026-10-01')]], [elsewhere, [corrected('2026-09-01')]]);
    expect(bookFrom(given).lots.get(ids.lot)?.expiresOn).toBe('2026-09-01');
    expect(verdict(given)).toBe('unresolved');
    const later = entries(24, [office, [corrected('2027-10-01')]], [elsewhere, [corrected('2027-09-01')]]);
    expect(blocks(later)).toEqual(['correctionsConflict']);
  });
});

describe('facts of a newer version about gear', () => {
  it.each(gears)('%s: what must be understood keeps everything low from being proven', (gear, id) => {
    const writer = new Writer(office);
    writer.add(doubted(gear, id), { kind: 'gearDoubted.v2', mustUnderstand: true });
    const given = [...entries(24), ...writer.entries];
    expect(verdict(given)).toBe('unresolved');
  });
});

describe('gear whose own entry is lost', () => {
  it.each(gears)('%s: a doubt about it counts all the same', (gear, id, kind) => {
    const without = entries(24, [office, [doubted(gear, id)]]).filter(({ text }) => !text.includes(`"${kind}"`));
    expect(verdict(without)).toBe('unresolved');
  });
});
