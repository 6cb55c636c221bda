/** The careful side against gear as journals hold it: entries that contradict each other, that are missing, that a newer version wrote. */
import { describe, expect, it } from 'vitest';
import { findSample } from '#findings/sample.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import { ids, journal, office, Writer, wanted } from '../../records/facts.ts';
import { seededRandom } from '../../store/seeded.ts';
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

describe('drawn journals of three writers', () => {
  const seed = Number(process.env.SEED ?? 20261125);
  console.info(`journals about gear: seed ${seed} (SEED=… to change)`);
  const { between, pick } = seededRandom(seed);
  const doubtIds = ['d00000000001', 'd00000000002'];

  /** Doubts about three pieces of gear, and decisions that knew of none, some or all of the earlier ones. */
  function drawn(): JournalEntry[] {
    const writers = [office, elsewhere, 'yyyyyyyyyyy1'].map((name) => new Writer(name));
    const said = new Map<string, string[]>();
    const about = doubtIds.map((doubtId) => ({ doubtId, gear: pick(gears) }));
    for (const { doubtId, gear } of about) pick(writers).add(doubted(gear[0], gear[1], { doubtId }));
    for (let i = between(1, 6); i > 0; i--) {
      const { doubtId, gear } = pick(about);
      const before = said.get(doubtId) ?? [];
      const decision = pick(['noEffect', 'noEffect', 'asFound', 'staysDoubtful'] as const);
      const trueOverRead = decision === 'asFound' ? pick([0.7, 0.9, 1.2, null]) : null;
      const knew = before.filter(() => between(0, 2) > 0);
      const body = { gear: gear[0], gearId: gear[1], doubtId, decision, trueOverRead, knew };
      const why = between(0, 6) === 0 ? ' ' : 'held against the film';
      const id = pick(writers).add(
        wanted('gearDoubtSettled.v1', body, { why, at: '2026-12-22T12:00:00.000Z', entry: 'typed' }),
      );
      said.set(doubtId, [...before, id]);
    }
    return writers.flatMap((one) => one.entries);
  }
  const kindOf = ({ text }: JournalEntry) => (JSON.parse(text) as { kind: string }).kind;
  const decisionOf = ({ text }: JournalEntry) => (JSON.parse(text) as { body: { decision?: string } }).body.decision;

  const takesAway = (one: JournalEntry): boolean => kindOf(one) === 'gearDoubted.v1';
  const gives = (one: JournalEntry): boolean => decisionOf(one) === 'noEffect';
  const rounds = Array.from({ length: 6 * Number(process.env.TIMES ?? 1) }, (_, i) => i);

  // 60 µg in 960 L are 62.5 µg/m³, and at 1.2 times the flow 52: above 30 whatever is doubted
  it('high stays high', () => {
    for (const _ of rounds) expect(verdict([...journal(soundDay(60)), ...drawn()])).toBe('above');
  });

  // 24 µg are 25 µg/m³, below 30
  it.each(rounds)('no doubt relaxes, no decision that is lost relaxes, and no order of arrival matters (%s)', () => {
    const given = drawn();
    const day = journal(soundDay(24));
    const whole = verdict([...day, ...given]);
    expect(verdict([...given].reverse().concat(day))).toBe(whole);
    const without = (one: JournalEntry) => verdict([...day, ...given.filter((other) => other !== one)]);
    if (whole === 'below') for (const one of given.filter(takesAway)) expect(without(one)).toBe('below');
    else for (const one of given.filter(gives)) expect(without(one)).not.toBe('below');
  });
});
