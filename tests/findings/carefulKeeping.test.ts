/** The careful side as one law, over what two devices bring together: pictures, voids against results, sheets left so, missing entries. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import type { Book } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { boxPacked, ids, journal, office, wanted } from '../records/facts.ts';
import { description, factsOf } from './carefulGenerated.ts';
import { bookFrom, dayOf, keysOf, soundDay, standing, workdayId } from './carefulStory.ts';

const seed = Number(process.env.SEED ?? 20261125);
console.info(`the careful side over two devices: seed ${seed} (SEED=… to change)`);
const runs = { seed, numRuns: 120 * Number(process.env.TIMES ?? 1) };

const hash = 'd'.repeat(64);
const elsewhere = 'xxxxxxxxxxx1';
const why = 'asked the crew';

type Story = { readonly facts: readonly NewFact[]; readonly book: Book };
const story = (facts: readonly NewFact[], ...more: readonly (readonly [string, readonly NewFact[]])[]): Story => {
  const entries = [...journal(facts), ...more.flatMap(([name, own]) => journal(own, name))];
  return { facts, book: bookFrom(entries) };
};
const dayIn = ({ book }: Story): WorkdayFinding => findWorkday(workdayId, book);

/** Nothing that blocked is gone, nothing said at or above is taken back, and nothing low is said that was not said. */
function expectNothingRelaxed(before: WorkdayFinding, after: WorkdayFinding): void {
  for (const was of before.standings) {
    const now = standing(after, was.which);
    if (now.verdict === 'below') expect(was.verdict).toBe('below');
    for (const one of ['crossed', 'atOrAbove'] as const) {
      if (was[one] === 'yes') expect(now[one]).toBe('yes');
      if (now[one] === 'no') expect(was[one]).toBe('no');
    }
  }
  for (const key of keysOf(before.blocksBelow)) expect(keysOf(after.blocksBelow)).toContain(key);
}

const photo = (about: string) =>
  wanted(
    'photoTaken.v1',
    { photoId: 'f00000000001', of: 'label', hash, type: 'image/jpeg', widthPx: 9, heightPx: 9, bytesCount: 900 },
    { about: [about] },
  );
const voided = wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'found open' });
const voidId = `${office}.00000001`;
const review = (stands: boolean, knew: readonly string[], reason: string | null = why) =>
  wanted('voidReviewed.v1', { sampleId: ids.one, voidFactId: voidId, stands, knew: [...knew] }, { why: reason });
const resultIds = ({ book }: Story): readonly string[] =>
  (book.samples.get(ids.one)?.results ?? []).map(({ factId }) => factId);
const kept = wanted('sheetDifferenceKept.v1', { boxId: ids.box, revision: '1', recordHash: hash }, { why });
const packed = boxPacked([ids.one]);

describe('adding removes no doubt and no duty', () => {
  it.each<[string, (given: readonly NewFact[]) => readonly [Story, Story]]>([
    ['a picture of the sample', (f) => [story(f), story(f, [office, [photo(`sample:${ids.one}`)]])]],
    ['a picture of the day', (f) => [story(f), story(f, [office, [photo(`workday:${workdayId}`)]])]],
    ['a void', (f) => [story(f), story(f, [office, [voided]])]],
    [
      'that a void stays',
      (f) => {
        const before = story(f, [office, [voided]]);
        return [before, story(f, [office, [voided]], [elsewhere, [review(true, resultIds(before))]])];
      },
    ],
    ['that a void stays where there is none', (f) => [story(f), story(f, [office, [review(true, [])]])]],
    ['a sheet left as it is', (f) => [story(f, [office, [packed]]), story(f, [office, [packed]], [elsewhere, [kept]])]],
  ])('%s', (_, both) => {
    let [above, below] = [0, 0];
    fc.assert(
      fc.property(description, (given) => {
        const [before, after] = both(factsOf(given)).map(dayIn) as [WorkdayFinding, WorkdayFinding];
        expectNothingRelaxed(before, after);
        above += before.standings.filter(({ crossed }) => crossed === 'yes').length;
        below += before.standings.filter(({ crossed }) => crossed !== 'yes').length;
      }),
      runs,
    );
    expect(above).toBeGreaterThan(0);
    expect(below).toBeGreaterThan(0);
  });

  it.each([
    ['missing entries', { missing: [{ writer: office, fromCount: 2, toCount: 4, untilOn: '2026-11-25' }] }],
    ['a file half taken in', { takingIn: true }],
  ])('%s', (_, beside) => {
    let [above, below] = [0, 0];
    fc.assert(
      fc.property(description, (given) => {
        const { book, facts } = story(factsOf(given));
        const [before, after] = [dayIn({ book, facts }), dayIn({ book: { ...book, ...beside }, facts })];
        expectNothingRelaxed(before, after);
        for (const { verdict, crossed } of after.standings) {
          expect(verdict).not.toBe('below');
          expect(crossed).not.toBe('no');
        }
        above += before.standings.filter(({ crossed }) => crossed === 'yes').length;
        below += before.standings.filter(({ verdict }) => verdict === 'below').length;
      }),
      runs,
    );
    expect(above).toBeGreaterThan(0);
    expect(below).toBeGreaterThan(0);
  });
});

describe('lifting a void', () => {
  it('needs a reason and every result; then the day is as if it had never been void', () => {
    let [lifted, differs] = [0, 0];
    fc.assert(
      fc.property(description, fc.constantFrom('', ' ', null), (given, empty) => {
        const facts = factsOf(given);
        const void_ = story(facts, [office, [voided]]);
        const knew = resultIds(void_);
        const said = (fact: NewFact) => dayIn(story(facts, [office, [voided]], [elsewhere, [fact]]));
        const refused = [review(false, []), review(false, knew, empty), review(false, knew.slice(1))];
        for (const fact of refused) {
          expect(said(fact).standings.map(({ verdict }) => verdict)).toEqual(
            dayIn(void_).standings.map(({ verdict }) => verdict),
          );
          expect(keysOf(said(fact).blocksBelow)).toContain('voided');
        }
        const whole = dayIn(story(facts));
        const after = said(review(false, knew));
        expect(after.standings.map(({ verdict }) => verdict)).toEqual(whole.standings.map(({ verdict }) => verdict));
        expect(after.twa8?.estimate).toEqual(whole.twa8?.estimate);
        lifted += 1;
        differs += Number(JSON.stringify(dayIn(void_).twa8?.estimate) !== JSON.stringify(whole.twa8?.estimate));
      }),
      runs,
    );
    expect(lifted).toBeGreaterThan(0);
    expect(differs).toBeGreaterThan(0);
  });

  it('an open void against a result is told, and blocks nothing more than the void does', () => {
    const before = dayIn(story(soundDay(24)));
    const day = dayIn(story(soundDay(24), [office, [voided]]));
    expect(standing(before, 'actionLevel').verdict).toBe('below');
    expect(standing(day, 'actionLevel').verdict).not.toBe('below');
    expect(keysOf(day.reasons)).toContain('voidAgainstResult');
    expect(keysOf(day.blocksBelow)).not.toContain('voidAgainstResult');
  });
});

describe('missing entries', () => {
  const missing = (untilOn: string) => [{ writer: office, fromCount: 2, toCount: 4, untilOn }];
  const day = (untilOn: string, massUg = 24) =>
    findWorkday(workdayId, { ...bookFrom(journal(soundDay(massUg))), missing: missing(untilOn) });

  it('bear on the days up to the first entry after them, and on no later one', () => {
    expect(standing(day('2026-11-24'), 'actionLevel').verdict).toBe('below');
    expect(standing(day('2026-11-25'), 'actionLevel').verdict).toBe('unresolved');
    expect(standing(day('2026-12-01'), 'actionLevel').verdict).toBe('unresolved');
    expect(day('2026-11-25').reasons.filter(({ key }) => key === 'entriesMissing')).toMatchObject([
      { params: { entriesCount: 3 } },
    ]);
  });

  it('never keep *above* from being said', () => {
    const high = 96;
    expect(standing(dayOf(soundDay(high)), 'pel').verdict).toBe('above');
    expect(standing(day('2026-12-01', high), 'pel').verdict).toBe('above');
  });
});
