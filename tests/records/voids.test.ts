/** Void on one device, a result on another: what stands, in whatever order the facts arrive, and what a person may say of it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StoredFact } from '#records/canonical.ts';
import { decide } from '#records/decide.ts';
import { foldRecord } from '#records/fold.ts';
import { folded, freshOf, ids, office, phone, prepared, result, Writer, wanted } from './facts.ts';

const key = `sample:${ids.one}`;
const third = 'xxxxxxxxxxx1';
const context = { now: '2026-12-03T12:00:00.000Z', lastSeenAt: null };

const voided = () => wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'dropped in water' });
const review = (voidFactId: string, stands: boolean, knew: readonly string[], why: string | null = 'asked the crew') =>
  wanted('voidReviewed.v1', { sampleId: ids.one, voidFactId, stands, knew: [...knew] }, { why });

/** A sample prepared and declared void on the phone, with a result keyed in at the office. */
function begun() {
  const onPhone = new Writer(phone);
  onPhone.add(prepared());
  const voidId = onPhone.add(voided());
  const inOffice = new Writer(office);
  const resultId = inOffice.add(result(9));
  return { onPhone, inOffice, elsewhere: new Writer(third), voidId, resultId };
}
type Begun = ReturnType<typeof begun>;
const all = ({ onPhone, inOffice, elsewhere }: Begun) => [
  ...onPhone.entries,
  ...inOffice.entries,
  ...elsewhere.entries,
];
const sample = (story: Begun) => folded(key, all(story));
const isVoid = (story: Begun): boolean => sample(story).voided !== null;

describe('void against result', () => {
  test('the void judges, and the question is open', () => {
    expect(sample(begun())).toMatchObject({ voided: { why: 'dropped in water' }, voidAgainstResult: true });
  });

  test('a void without a result is no question', () => {
    const { onPhone } = begun();
    expect(folded(key, onPhone.entries)).toMatchObject({ voidAgainstResult: false, voidReview: null });
  });

  test('stands=true leaves it void and closes the question; stands=false lifts it', () => {
    const keeps = begun();
    keeps.inOffice.add(review(keeps.voidId, true, [keeps.resultId]));
    expect(sample(keeps)).toMatchObject({ voided: {}, voidAgainstResult: false, voidReview: { stands: true } });
    const lifts = begun();
    lifts.inOffice.add(review(lifts.voidId, false, [lifts.resultId]));
    expect(sample(lifts)).toMatchObject({ voided: null, voidAgainstResult: false, voidReview: { stands: false } });
  });

  test.each([
    ['no reason', null, true],
    ['a reason of blanks', '  ', true],
    ['no result', 'asked the crew', false],
  ])('a void is not lifted with %s', (_, why, knowing) => {
    const story = begun();
    story.inOffice.add(review(story.voidId, false, knowing ? [story.resultId] : [], why));
    expect(sample(story)).toMatchObject({ voided: {}, voidAgainstResult: true });
  });

  test('nor by a review of another void, nor while the result it knew is not here', () => {
    const other = begun();
    other.inOffice.add(review(`${third}.00000001`, false, [other.resultId]));
    expect(isVoid(other)).toBe(true);
    const away = begun();
    away.elsewhere.add(review(away.voidId, false, [away.resultId]));
    expect(folded(key, [...away.onPhone.entries, ...away.elsewhere.entries]).voided).not.toBeNull();
  });

  test('a result that nobody knew of opens it again, whatever was said', () => {
    for (const stands of [true, false]) {
      const story = begun();
      story.inOffice.add(review(story.voidId, stands, [story.resultId]));
      const late = story.elsewhere.add(result(80, 'R-2'));
      expect(sample(story)).toMatchObject({ voided: {}, voidAgainstResult: true });
      story.inOffice.add(review(story.voidId, stands, [story.resultId, late]));
      expect(sample(story)).toMatchObject({ voidAgainstResult: false });
      expect(isVoid(story)).toBe(stands);
    }
  });

  test('two that differ leave it void and open, until one that knew both', () => {
    const story = begun();
    const yes = story.onPhone.add(review(story.voidId, true, [story.resultId]));
    const no = story.inOffice.add(review(story.voidId, false, [story.resultId]));
    expect(sample(story)).toMatchObject({ voided: {}, voidAgainstResult: true, voidReview: null });
    story.elsewhere.add(review(story.voidId, false, [story.resultId, no]));
    expect(isVoid(story), 'one that knew only its like').toBe(true);
    story.elsewhere.add(review(story.voidId, false, [story.resultId, no, yes]));
    expect(sample(story)).toMatchObject({ voided: null, voidAgainstResult: false });
  });

  test('two that claim to have known each other replace nothing', () => {
    const story = begun();
    story.onPhone.add(review(story.voidId, true, [story.resultId, `${office}.00000002`]));
    story.inOffice.add(review(story.voidId, false, [story.resultId, `${phone}.00000003`]));
    expect(sample(story)).toMatchObject({ voided: {}, voidAgainstResult: true });
  });

  test('voided on two devices, each void must be lifted', () => {
    const story = begun();
    const second = story.elsewhere.add(voided());
    story.inOffice.add(review(story.voidId, false, [story.resultId]));
    expect(sample(story)).toMatchObject({ voided: { factId: second }, voidAgainstResult: true });
    story.inOffice.add(review(second, false, [story.resultId]));
    expect(sample(story).voided).toBeNull();
  });

  test('does not depend on the order of arrival, nor on what arrives twice being told once', () => {
    let [lifted, open] = [0, 0];
    const said = fc.record({
      writer: fc.nat(2),
      stands: fc.boolean(),
      knew: fc.subarray([0, 0, 1, 2, 3, 4, 5, 6], { minLength: 2 }),
      act: fc.constantFrom(...Array(7).fill('review'), 'result', 'void'),
    });
    fc.assert(
      fc.property(fc.array(said, { maxLength: 6 }), fc.infiniteStream(fc.nat()), (acts, random) => {
        const story = begun();
        const writers = [story.onPhone, story.inOffice, story.elsewhere] as const;
        const spoken = [story.resultId];
        for (const { writer, stands, knew, act } of acts) {
          const to = writers[writer] ?? story.onPhone;
          if (act === 'result') spoken.push(to.add(result(5, `R-${acts.length}`)));
          else if (act === 'void') to.add(voided());
          else
            spoken.push(
              to.add(
                review(
                  story.voidId,
                  stands,
                  knew.flatMap((at) => spoken[at] ?? []),
                ),
              ),
            );
        }
        const facts: readonly StoredFact[] = all(story);
        const record = foldRecord(key, facts);
        const shuffled = facts.map((fact) => [random.next().value, fact] as const).sort(([a], [b]) => a - b);
        expect(
          foldRecord(
            key,
            shuffled.map(([, fact]) => fact),
          ),
        ).toEqual(record);
        lifted += Number(sample(story).voided === null);
        open += Number(sample(story).voidAgainstResult === true);
      }),
      { numRuns: 500 },
    );
    expect(lifted).toBeGreaterThan(10);
    expect(open).toBeGreaterThan(10);
  });
});

describe('saying whether it stays void', () => {
  const refusalsOf = (story: Begun, fact: ReturnType<typeof review>, more: object = {}) => {
    const decision = decide([fact], { ...freshOf(all(story)), ...more }, context);
    return decision.kind === 'facts' ? decision.facts : decision.refusals.map(({ key: why }) => why);
  };

  test('what was known of is filled in: every result, and what was said before', () => {
    const story = begun();
    const yes = story.onPhone.add(review(story.voidId, true, [story.resultId]));
    const no = story.inOffice.add(review(story.voidId, false, [story.resultId]));
    const [fact] = refusalsOf(story, review(story.voidId, false, ['aaaaaaaaaaaa.00000009']));
    expect(fact).toMatchObject({ body: { knew: expect.arrayContaining([story.resultId, yes, no]) } });
    expect((fact as ReturnType<typeof review>).body.knew).toHaveLength(3);
    story.elsewhere.add(fact as ReturnType<typeof review>);
    expect(sample(story).voided).toBeNull();
  });

  test('needs a reason, an open void, the void that stands, and a known sample', () => {
    const story = begun();
    expect(refusalsOf(story, review(story.voidId, false, [], null))).toEqual(['whyNeeded']);
    expect(refusalsOf(story, review(story.resultId, false, []))).toEqual(['valueChangedMeanwhile']);
    const unknown = { ...review(story.voidId, false, []), body: { ...review(story.voidId, false, []).body } };
    unknown.body.sampleId = ids.three;
    expect(refusalsOf(story, { ...unknown, about: [`sample:${ids.three}`] })).toEqual(['recordUnknown']);
    story.inOffice.add(review(story.voidId, true, [story.resultId]));
    expect(refusalsOf(story, review(story.voidId, false, []))).toEqual(['voidNotOpen']);
  });

  test('is not lifted while a file is half taken in; that it stays void may be said', () => {
    const story = begun();
    expect(refusalsOf(story, review(story.voidId, false, []), { takingIn: true })).toEqual(['takingIn']);
    expect(refusalsOf(story, review(story.voidId, true, []), { takingIn: true })).toMatchObject([
      { body: { stands: true } },
    ]);
  });
});
