/** The careful side as one law (design.md section 4, last paragraph), over days that were written as facts and folded. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { WorkdayFinding } from '#findings/workday.ts';
import { factText } from '#records/canonical.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { NewFact } from '#records/fact.ts';
import { ids, journal, office, phone, Writer, wanted } from '../records/facts.ts';
import { blankedOnce, factOf } from './carefulBlanked.ts';
import { type Description, description, factsOf } from './carefulGenerated.ts';
import { blankOpened, dayFrom, keysOf, result, sampleKey } from './carefulStory.ts';

const seed = Number(process.env.SEED ?? 20261125);
console.info(`the careful side over facts: seed ${seed} (SEED=… to change)`);
const runs = (numRuns: number) => ({ seed, numRuns: numRuns * Number(process.env.TIMES ?? 1) });

/** Counts how often each case occurred; the named ones must have occurred. */
class Seen {
  private readonly counts = new Map<string, number>();
  note(what: string, occurred = true): void {
    if (occurred) this.counts.set(what, (this.counts.get(what) ?? 0) + 1);
  }
  tell(title: string, needed: readonly string[]): void {
    console.info(
      `${title}: ${[...this.counts]
        .sort()
        .map(([what, count]) => `${what} ${count}`)
        .join(', ')}`,
    );
    for (const what of needed) expect(this.counts.get(what) ?? 0, `no case of: ${what}`).toBeGreaterThan(0);
  }
}

const tryDay = (entries: readonly JournalEntry[]): WorkdayFinding | null => {
  try {
    return dayFrom(entries);
  } catch (error) {
    // a day of which nothing is known any more
    if (error instanceof Error && error.message.startsWith('no work day')) return null;
    throw error;
  }
};

function expectNoNewRelaxation(before: WorkdayFinding, after: WorkdayFinding, what: string): void {
  for (const standing of after.standings) {
    const was = before.standings.find(({ which }) => which === standing.which);
    if (standing.verdict === 'below') expect(was?.verdict, what).toBe('below');
    if (standing.crossed === 'no') expect(was?.crossed, what).toBe('no');
    if (standing.atOrAbove === 'no') expect(was?.atOrAbove, what).toBe('no');
  }
  if (after.shiftComparison?.crossed === 'no') expect(before.shiftComparison?.crossed ?? 'no', what).toBe('no');
}

describe('relaxations need evidence', () => {
  it('leaving out any one input, or any one value of it, brings no relaxation that was not there', () => {
    const seen = new Seen();
    fc.assert(
      fc.property(description, (given) => {
        const entries = journal(factsOf(given));
        const before = dayFrom(entries);
        for (const { verdict } of before.standings) seen.note(`base ${verdict}`);
        for (const { what, entries: blanked } of blankedOnce(entries)) {
          const after = tryDay(blanked);
          if (!after) continue;
          expectNoNewRelaxation(before, after, what);
          const took = before.standings.some(
            ({ verdict, which }) =>
              verdict === 'below' && after.standings.find((one) => one.which === which)?.verdict !== 'below',
          );
          seen.note(`below taken away by ${what}`, took);
        }
      }),
      runs(120),
    );
    const takes = [
      'siteAdded.v1 whole',
      'siteAdded.v1 /altitudeM',
      'meterAdded.v1 whole',
      'meterAdded.v1 /dueOn',
      'meterAdded.v1 /certificateOn',
      'meterAdded.v1 /calibrationTemperatureC',
      'flowChecked.v1 whole',
      'flowChecked.v1 /temperatureC',
      'fittingChecked.v1 whole',
      'fittingChecked.v1 /points/insideHelmet',
      'pumpPutOn.v1 whole',
      'pumpStopped.v1 whole',
      'pumpStopped.v1 /pumpMin',
      'resultReceived.v1 whole',
      'resultReceived.v1 /reportingLimitUg',
      'resultReceived.v1 /methodId',
      'resultReceived.v1 /reportedOn',
      'workHoursStated.v1 whole',
      'workHoursStated.v1 /pieces/n/employer',
      'otherWorkAsked.v1 whole',
      'minutesExplained.v1 whole',
      'minutesExplained.v1 /reason',
    ].map((what) => `below taken away by ${what}`);
    const bases = ['below', 'above', 'unresolved', 'atLeastBelow'].map((one) => `base ${one}`);
    seen.tell('relaxations need evidence', [...bases, ...takes]);
  });
});

describe('adding a void, a note, an error, a blank flag or a doubt removes nothing', () => {
  const fromOffice = (...facts: readonly NewFact[]) => journal(facts, office);
  const newer = (): readonly JournalEntry[] => {
    const writer = new Writer(office);
    writer.add(wanted('noteMade.v1', { text: 'x' }, { about: [sampleKey] }), {
      kind: 'ofANewerVersion.v1',
      mustUnderstand: true,
      body: {},
    });
    return writer.entries;
  };
  const withError = (entries: readonly JournalEntry[]): JournalEntry[] =>
    entries.map((entry) => {
      const fact = factOf(entry);
      if (fact.kind !== 'resultReceived.v1') return entry;
      return { ...entry, text: factText({ ...fact, body: { ...fact.body, saeFraction: 0.3 } }) };
    });
  const flag = 'c00000000099';
  const additions: Readonly<Record<string, (entries: readonly JournalEntry[]) => readonly JournalEntry[]>> = {
    void: (entries) => [
      ...entries,
      ...fromOffice(wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'found open' })),
    ],
    remark: (entries) => [...entries, ...fromOffice(wanted('remarkMade.v1', { sampleId: ids.one, text: 'windy' }))],
    mishap: (entries) => [
      ...entries,
      ...fromOffice(wanted('mishapNoted.v1', { sampleId: ids.one, mishap: 'wet', remark: null })),
    ],
    error: withError,
    'blank flag': (entries) => [
      ...entries,
      ...fromOffice(blankOpened(flag), result(3, { sampleId: flag, reportingLimitUg: null })),
    ],
    'void of a blank': (entries) => [
      ...entries,
      ...fromOffice(wanted('sampleVoided.v1', { sampleId: 'c00000000090' }, { why: 'lost' })),
    ],
    'not a regular day': (entries) => [
      ...entries,
      ...fromOffice(wanted('dayDescribed.v1', { workdayId: `${ids.ana}.2026-11-25`, regular: 'no', reason: 'rain' })),
    ],
    'a fact of a newer version': (entries) => [...entries, ...newer()],
    'a clock set back': (entries) => [
      ...entries,
      ...fromOffice(wanted('clockSetBackNoticed.v1', { sampleId: ids.one, setBackMin: 5 })),
    ],
  };

  it.each(Object.keys(additions))('%s', (what) => {
    const seen = new Seen();
    fc.assert(
      fc.property(description, (given) => {
        const entries = journal(factsOf(given));
        const before = dayFrom(entries);
        const after = dayFrom(additions[what]?.(entries) ?? entries);
        expectNoNewRelaxation(before, after, what);
        for (const { which, crossed, atOrAbove, verdict } of before.standings) {
          const now = after.standings.find((one) => one.which === which);
          seen.note(`crossed ${crossed}`);
          seen.note(`verdict ${verdict}`);
          if (crossed === 'yes') expect(now?.crossed).toBe('yes');
          if (atOrAbove === 'yes') expect(now?.atOrAbove).toBe('yes');
        }
        for (const key of keysOf(before.blocksBelow)) expect(keysOf(after.blocksBelow)).toContain(key);
      }),
      runs(120),
    );
    seen.tell(`adding ${what}`, ['crossed yes', 'crossed no', 'crossed unresolved', 'verdict below']);
  });
});

describe('entry order and device', () => {
  /** Each fact by one of three writers, in an order drawn by lot; recorded times follow the order of writing. */
  const dealt = (facts: readonly NewFact[], order: readonly number[], hands: readonly number[]): JournalEntry[] => {
    const writers = [phone, office, 'xxxxxxxxxxx1'].map((name) => new Writer(name));
    const rank = (at: number): number => order[at % order.length] ?? 0;
    const mixed = facts.map((fact, at) => ({ fact, at })).sort((a, b) => rank(a.at) - rank(b.at) || a.at - b.at);
    for (const { fact, at } of mixed) writers[(hands[at % hands.length] ?? 0) % 3]?.add(fact);
    return writers.flatMap(({ entries }) => entries).reverse();
  };
  const told = (day: WorkdayFinding) => ({
    twa8: day.twa8?.estimate,
    protective: day.protectiveTwa8?.estimate,
    shift: day.shiftAverage?.estimate,
    minutes: day.segments.map(({ fromAt, toAt, as, sampleId }) => [fromAt, toAt, as, sampleId]),
    standings: day.standings.map(({ which, verdict, crossed, atOrAbove }) => [which, verdict, crossed, atOrAbove]),
    reasons: [...new Set(keysOf(day.reasons))].sort(),
  });

  it('change no figure, no minute, no verdict and no reason', () => {
    const seen = new Seen();
    const lots = fc.array(fc.nat(40), { minLength: 7, maxLength: 31 });
    fc.assert(
      fc.property(description, lots, lots, (given: Description, order, hands) => {
        const facts = factsOf(given);
        const [plain, mixed] = [dayFrom(journal(facts)), dayFrom(dealt(facts, order, hands))];
        seen.note(`reports ${given.reports}`);
        seen.note(`second ${given.second}`);
        seen.note(`event ${given.event}`);
        expect(told(mixed)).toEqual(told(plain));
      }),
      runs(200),
    );
    seen.tell('entry order and device', [
      'reports sameDay',
      'second overlapping',
      'event tubingOff',
      'event notRunning',
    ]);
  });

  it('every minute of the day stands once: segments follow one another and none overlaps', () => {
    fc.assert(
      fc.property(description, (given) => {
        const { segments, hoursWorked } = dayFrom(journal(factsOf(given)));
        for (const [i, segment] of segments.entries())
          expect((segments[i + 1]?.fromAt ?? '9') >= segment.toAt && segment.durationMin > 0).toBe(true);
        const min = segments.reduce((sum, { durationMin }) => sum + durationMin, 0);
        // 12:00 to 20:00 or 21:00, and half an hour for the second employer: by hand from the description
        const worked = (given.tail === 'none' ? 480 : 540) + (given.secondEmployer ? 30 : 0);
        expect(min).toBe(worked);
        expect(hoursWorked?.estimate).toEqual({ kind: 'exact', value: expect.closeTo(worked / 60, 12) });
      }),
      runs(200),
    );
  });
});
