/** The careful side as one law (design.md section 4), and the two identities of the regulation sheet, over generated days. */
import * as fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import { findWorkday, type WorkdayFinding } from '#findings/workday.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import { blankedOnce } from './blanked.ts';
import { bookOf, generatedDay } from './generated.ts';
import { workdayId } from './sliceRegisters.ts';
import { blank, result } from './slices.ts';

vi.setConfig({ testTimeout: 120_000 });
const seed = Number(process.env.SEED ?? 20261125);
console.info(`properties of findings: seed ${seed} (SEED=… to change)`);
const runs = (numRuns: number) => ({ seed, numRuns: numRuns * Number(process.env.TIMES ?? 1) });

/** Counts how often each case occurred; a case that never occurred makes the property worthless. */
class Seen {
  private readonly counts = new Map<string, number>();
  note(what: string, occurred = true): void {
    this.counts.set(what, (this.counts.get(what) ?? 0) + (occurred ? 1 : 0));
  }
  tell(title: string): void {
    const told = [...this.counts].sort().map(([what, count]) => `${what} ${count}`);
    console.info(`${title}: ${told.join(', ')}`);
    for (const [what, count] of this.counts) expect(count, `no case of: ${what}`).toBeGreaterThan(0);
  }
}

const found = (book: Book): WorkdayFinding => findWorkday(workdayId, book);
const shuffled = <T>(map: ReadonlyMap<string, T>): Map<string, T> => new Map([...map].reverse());
const changed = (book: Book, change: (sample: SampleRecord) => SampleRecord): Book => ({
  ...book,
  samples: new Map(
    [...book.samples].map(([id, sample]) => [id, sample.sampleKind === 'air' ? change(sample) : sample]),
  ),
});

function termsIn(term: Term | null): Term[] {
  if (!term) return [];
  if (term.kind === 'recorded') return [term];
  return [
    term,
    ...Object.values(term.inputs).flatMap((input) => (Array.isArray(input) ? input : [input as Term]).flatMap(termsIn)),
  ];
}

describe('relaxations need evidence', () => {
  it('blanking any one input while its sample or day stays brings no below that was not there', () => {
    const seen = new Seen();
    fc.assert(
      fc.property(generatedDay, (generated) => {
        const book = bookOf(generated);
        const before = found(book);
        for (const { verdict } of before.standings) seen.note(`base ${verdict}`);
        for (const { what, book: blanked } of blankedOnce(book)) {
          const after = found(blanked);
          after.standings.forEach((standing, i) => {
            const was = before.standings[i];
            seen.note(`blank ${what}: below taken away`, was?.verdict === 'below' && standing.verdict !== 'below');
            if (standing.verdict === 'below') expect(was?.verdict, `blank ${what} at ${standing.which}`).toBe('below');
            if (standing.crossed === 'no') expect(was?.crossed, `blank ${what} at ${standing.which}`).toBe('no');
          });
          if (after.shiftComparison?.crossed === 'no') expect(before.shiftComparison?.crossed, what).not.toBe('yes');
        }
      }),
      runs(300),
    );
    // inputs that carry no relaxation take nothing away when they are blank
    const idle = [
      'sealed',
      'accreditation',
      'sae',
      'laboratory',
      'analysedOn',
      'regular day',
      'lot in line',
      'reason of the void',
      'blankCorrected',
      'sample of explained minutes',
      'decision',
    ];
    const counts = Reflect.get(seen, 'counts') as Map<string, number>;
    for (const what of counts.keys())
      if (what.startsWith('blank blank ') || idle.some((one) => what.includes(one))) counts.delete(what);
    seen.tell('relaxations need evidence');
  });
});

describe('adding a void, a note, an error or a blank flag removes nothing', () => {
  const addings: Readonly<Record<string, (book: Book) => Book>> = {
    void: (book) => changed(book, (s) => ({ ...s, voided: s.voided ?? { why: 'added', factId: 'v' } })),
    remark: (book) => changed(book, (s) => ({ ...s, remarks: [...s.remarks, 'added'] })),
    mishap: (book) =>
      changed(book, (s) => ({
        ...s,
        mishaps: [
          ...s.mishaps,
          { sampleId: s.id, mishap: 'dropped', remark: null, at: s.preparedAt, entry: 'typed', factId: 'm' },
        ],
      })),
    error: (book) => changed(book, (s) => ({ ...s, results: s.results.map((one) => ({ ...one, saeFraction: 0.3 })) })),
    'blank flag': (book) => {
      // a blank that may not be subtracted: its own reporting limit is not stated
      const flag = blank('c00000000099', [result(3, { reportingLimitUg: null })]);
      return { ...book, samples: new Map(book.samples).set(flag.id, flag) };
    },
    'regular day no': (book) => ({
      ...book,
      workdays: new Map(
        [...book.workdays].map(([id, day]) => [
          id,
          { ...day, regular: { regular: 'no', reason: 'rain', factId: 'r' } },
        ]),
      ),
    }),
  };

  it.each(Object.keys(addings))('%s', (what) => {
    const seen = new Seen();
    fc.assert(
      fc.property(generatedDay, (generated) => {
        const book = bookOf(generated);
        const before = found(book);
        const after = found(addings[what]?.(book) ?? book);
        before.standings.forEach((standing, i) => {
          const now = after.standings[i];
          seen.note('crossed before', standing.crossed === 'yes');
          if (standing.crossed === 'yes') expect(now?.crossed).toBe('yes');
          if (standing.atOrAbove === 'yes') expect(now?.atOrAbove).toBe('yes');
          if (now?.verdict === 'below') expect(standing.verdict).toBe('below');
        });
        for (const { key } of before.blocksBelow)
          expect(
            after.blocksBelow.some((one) => one.key === key),
            key,
          ).toBe(true);
      }),
      runs(300),
    );
    seen.tell(`adding ${what}`);
  });
});

describe('figures', () => {
  it('bounds never cross, in any term of any working; the protective average is never under the one shown', () => {
    const seen = new Seen();
    fc.assert(
      fc.property(generatedDay, (generated) => {
        const day = found(bookOf(generated));
        const all = [
          day.twa8,
          day.protectiveTwa8,
          day.shiftAverage,
          ...day.samples.flatMap((s) => [s.judged, s.protectiveConcentration, s.volume]),
        ];
        for (const term of all.flatMap(termsIn)) {
          seen.note(`term ${term.estimate.kind}`);
          expect(lowerOf(term.estimate)).toBeLessThanOrEqual(upperOf(term.estimate));
          expect(Number.isFinite(lowerOf(term.estimate))).toBe(true);
        }
        if (!day.twa8 || !day.protectiveTwa8) return;
        const shown = lowerOf(day.twa8.estimate);
        seen.note('protective above', lowerOf(day.protectiveTwa8.estimate) > shown);
        expect(lowerOf(day.protectiveTwa8.estimate)).toBeGreaterThanOrEqual(shown * (1 - 1e-12));
      }),
      runs(500),
    );
    seen.tell('bounds');
  });

  it('the order of entry changes no figure and no verdict', () => {
    fc.assert(
      fc.property(generatedDay, (generated) => {
        const book = bookOf(generated);
        const other = { ...book, samples: shuffled(book.samples), flowChecks: shuffled(book.flowChecks) };
        const [a, b] = [found(book), found(other)];
        expect(b.twa8?.estimate).toEqual(a.twa8?.estimate);
        expect(b.protectiveTwa8?.estimate).toEqual(a.protectiveTwa8?.estimate);
        expect(b.standings.map(({ verdict, crossed }) => [verdict, crossed])).toEqual(
          a.standings.map(({ verdict, crossed }) => [verdict, crossed]),
        );
      }),
      runs(300),
    );
  });

  it('TWA8 equals the sum of m / (0.48 Q) where samples carry their own minutes', () => {
    const seen = new Seen();
    fc.assert(
      fc.property(generatedDay, (generated) => {
        const day = found(bookOf({ ...generated, gapIs: 'away' }));
        const usable = day.samples.every(
          ({ concentration, quality }) => concentration?.estimate.kind === 'exact' && quality !== 'void',
        );
        seen.note('usable', usable);
        if (!usable || !day.twa8) return;
        // by hand from the records: mass and the mean of the two flows, not from the workings
        const sum = day.samples.reduce((total, { mass, averageFlow }) => {
          const [m, Q] = [mass ? lowerOf(mass.estimate) : 0, averageFlow ? lowerOf(averageFlow.estimate) : Number.NaN];
          return total + m / (0.48 * Q);
        }, 0);
        const unsampled = day.unknownMin > 0;
        seen.note('pump stopped early', unsampled);
        expect(Math.abs(lowerOf(day.twa8.estimate) - sum)).toBeLessThanOrEqual(1e-9 * sum);
      }),
      runs(500),
    );
    seen.tell('TWA8 by mass and flow');
  });

  it('regulation F9: the average over the shift against 400 / h is the same test as TWA8 against the PEL', () => {
    const seen = new Seen();
    fc.assert(
      fc.property(generatedDay, (generated) => {
        const day = found(bookOf({ ...generated, stateCode: 'TX' }));
        const pel = day.standings.find(({ which }) => which === 'pel');
        if (!day.shiftComparison || !pel) return;
        seen.note(`over 8 hours, ${pel.crossed}`);
        expect(day.shiftComparison.crossed).toBe(pel.crossed);
        expect(day.shiftComparison.atOrAbove).toBe(pel.atOrAbove);
      }),
      runs(800),
    );
    for (const answer of ['yes', 'no', 'unresolved']) seen.note(`over 8 hours, ${answer}`, false);
    seen.tell('400 / h');
  });
});
