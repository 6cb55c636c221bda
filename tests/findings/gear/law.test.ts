/**
 * The careful side as one law, over what is said of gear: adding a doubt, a decision that it stays, a certificate without a due day or of
 * a later day takes no duty away and proves nothing low; a decision that is blanked relaxes nothing. Stated from the law itself.
 */
import { describe, expect, it } from 'vitest';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { Book, GearDoubt, LotRecord, MeterRecord, PumpRecord } from '#records/book.ts';
import { season } from '#tests/bench/seasonBook.ts';
import { seededRandom } from '../../store/seeded.ts';
import { relaxed, takenAway } from '../duties/auditLaw.ts';
import { base } from '../sliceRegisters.ts';
import { certificate, doubt, settled, withCertificates } from './gearFacts.ts';

const seed = Number(process.env.SEED ?? 20261125);
console.info(`doubts about gear: seed ${seed} (SEED=… to change)`);
const { between, pick } = seededRandom(seed);

const times = Number(process.env.TIMES ?? 1);
const made = season(40);
const today = made.lastOn;
const pumpIds = [...new Set([...made.book.samples.values()].map(({ pumpId }) => pumpId ?? ''))];
const pumps = new Map<string, PumpRecord>(
  pumpIds.map((id) => [id, { ...base('pump', id), pumpId: id, serial: id, model: null }]),
);
const sound: Book = { ...made.book, pumps };
const before = findDuties(sound, today);
const days = [...new Set([...sound.samples.values()].map(({ workOn }) => workOn))].sort();

function drawnDoubt(): GearDoubt {
  const gear = pick(['pump', 'meter', 'lot'] as const);
  const gearId = pick([...(gear === 'pump' ? sound.pumps : gear === 'meter' ? sound.meters : sound.lots).keys()]);
  const [one, other] = [pick(days), pick(days)].sort();
  return doubt(gear, gearId, {
    fromOn: between(0, 1) === 0 ? null : (one ?? null),
    untilOn: between(0, 1) === 0 ? null : (other ?? null),
  });
}

function withDoubts(...doubts: readonly GearDoubt[]): Book {
  const of = <R extends PumpRecord | MeterRecord | LotRecord>(records: ReadonlyMap<string, R>): Map<string, R> =>
    new Map(
      [...records].map(([id, one]) => {
        const own = doubts.filter(({ gearId }) => gearId === id);
        return [id, own.length === 0 ? one : { ...one, doubts: own }];
      }),
    );
  return { ...sound, pumps: of(sound.pumps), meters: of(sound.meters), lots: of(sound.lots) };
}

const found = (book: Book): DutiesOfBook => findDuties(book, today, before);

const rank = { belowActionLevel: 0, open: 1, actionLevelToPel: 2, abovePel: 3 };
const proven = ({ provesBelowActionLevel, provesNotAbovePel, finding }: Measurement): number =>
  Number(provesBelowActionLevel) +
  Number(provesNotAbovePel) +
  (finding?.standings.filter(({ verdict }) => verdict === 'below').length ?? 0);

const where = (was: DutiesOfBook, now: DutiesOfBook, is: (one: Measurement, other: Measurement) => boolean) =>
  [...was.measurements.values()].flatMap((one) => {
    const other = now.measurements.get(one.id);
    return !other || is(one, other) ? [one.id] : [];
  });

/** Measurements that prove more low than before. */
const provenLower = (was: DutiesOfBook, now: DutiesOfBook) =>
  where(was, now, (one, other) => proven(other) > proven(one));
/** Or that stand lower. */
const lower = (was: DutiesOfBook, now: DutiesOfBook) =>
  where(was, now, (one, other) => proven(other) > proven(one) || rank[other.band] < rank[one.band]);

function expectNothingRelaxed(was: DutiesOfBook, now: DutiesOfBook): void {
  expect(takenAway(was, now)).toEqual([]);
  expect(relaxed(was, now)).toEqual([]);
  expect(lower(was, now)).toEqual([]);
}

const rounds = Array.from({ length: 6 * times }, (_, i) => i);

describe('adding relaxes nothing', () => {
  it.each(rounds)('a doubt, then a decision that it stays, then one by a factor (%s)', () => {
    const open = drawnDoubt();
    const doubted = found(withDoubts(open));
    expectNothingRelaxed(before, doubted);
    const stays = found(withDoubts({ ...open, settled: settled('staysDoubtful') }));
    expectNothingRelaxed(doubted, stays);
    expectNothingRelaxed(before, stays);
    if (open.gear !== 'meter') return;
    const f = between(50, 200) / 100;
    expectNothingRelaxed(before, found(withDoubts({ ...open, settled: settled('asFound', f) })));
  });

  it('a decision without effect brings back what was there, and nothing else', () => {
    for (let round = 0; round < 2 * times; round += 1) {
      const lifted = found(withDoubts({ ...drawnDoubt(), settled: settled('noEffect') }));
      expect(lifted.duties).toEqual(before.duties);
      expect(lower(before, lifted)).toEqual([]);
    }
  });

  it('a second doubt beside one that was settled', () => {
    const first = { ...drawnDoubt(), settled: settled('noEffect') };
    const second = { ...drawnDoubt(), doubtId: 'd00000000002' };
    expectNothingRelaxed(found(withDoubts(first)), found(withDoubts(first, second)));
  });

  it.each(rounds.slice(0, 2 * times))('a certificate without a due day, or of a day after everything (%s)', () => {
    const meterId = pick([...sound.meters.keys()]);
    const meter = sound.meters.get(meterId);
    if (!meter) throw new Error('no such meter');
    const put = (one: MeterRecord): DutiesOfBook =>
      found({ ...sound, meters: new Map(sound.meters).set(meterId, one) });
    expectNothingRelaxed(before, put(withCertificates(meter, certificate(pick(days)))));
    const later = put(withCertificates(meter, certificate('2027-06-01', { dueOn: '2028-06-01' })));
    expect(later.duties).toEqual(before.duties);
    expect([...later.measurements.values()].map(({ band, blocks }) => [band, blocks])).toEqual(
      [...before.measurements.values()].map(({ band, blocks }) => [band, blocks]),
    );
  });
});

describe('blanking relaxes nothing', () => {
  it.each(rounds.slice(0, 3 * times))('the decision, its reason or its factor (%s)', () => {
    const one = { ...drawnDoubt(), settled: settled(pick(['noEffect', 'asFound', 'staysDoubtful']), 0.9) };
    const was = found(withDoubts(one));
    // without the decision or its factor nobody knows of a bound that only they told of
    for (const less of [null, { ...one.settled, trueOverRead: null }])
      expect(provenLower(was, found(withDoubts({ ...one, settled: less })))).toEqual([]);
    expect(lower(was, found(withDoubts({ ...one, settled: { ...one.settled, why: null } })))).toEqual([]);
  });

  it('the days of a doubt', () => {
    for (let round = 0; round < 2 * times; round += 1) {
      const one = { ...drawnDoubt(), fromOn: days[2] ?? null, untilOn: days[3] ?? null };
      const was = found(withDoubts(one));
      expectNothingRelaxed(was, found(withDoubts({ ...one, fromOn: null })));
      expectNothingRelaxed(was, found(withDoubts({ ...one, untilOn: null })));
    }
  });
});
