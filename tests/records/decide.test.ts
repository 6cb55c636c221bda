import { describe, expect, test } from 'vitest';
import { decide, needs } from '#records/decide.ts';
import type { NewFact } from '#records/fact.ts';
import { at, freshOf, ids, journal, look, prepared, putOn, result, sealed, stopped, wanted } from './facts.ts';

const context = { now: at('22:00', '2026-12-03'), lastSeenAt: null };

/** given these facts, when this is wanted: `refused ...` by key and field, or `facts` with its cautions. */
function given(...facts: readonly NewFact[]) {
  const fresh = freshOf(journal(facts));
  return {
    when: (...wants: readonly NewFact[]): readonly string[] => {
      const decision = decide(wants, fresh, context);
      if (decision.kind === 'refused') return decision.refusals.map(({ key, fields }) => `${key} ${fields.join(' ')}`);
      return ['facts', ...decision.cautions.map(({ key }) => `caution ${key}`)];
    },
  };
}

const sampleId = ids.one;
const fitted = wanted('fittingChecked.v1', {
  sampleId,
  mode: 'fitted',
  points: {
    pumpSecured: true,
    tubingSecured: true,
    breathingZone: true,
    outsideRespirator: true,
    insideHelmet: null,
    inletDown: true,
    plugsOff: true,
    running: true,
  },
  observationOffered: true,
  initials: 'AR',
  language: 'es',
});
const second = (more: Parameters<typeof prepared>[1] = {}) =>
  prepared(ids.two, { sampleNumber: '120027', workerId: ids.ben, pumpId: ids.pumpB, ...more });
const off = (time: string) =>
  wanted('pumpTakenOff.v1', { sampleId, stillRunning: false, awayFromLead: true, reason: 'lunch' }, { at: at(time) });
const backOn = (time: string) => wanted('pumpPutBackOn.v1', { sampleId }, { at: at(time) });
const left = (time: string) => wanted('leadAreaLeft.v1', { sampleId, reason: 'break' }, { at: at(time) });
const voided = (why: string | null) => wanted('sampleVoided.v1', { sampleId }, { why, at: at('21:00') });

describe('a sample number', () => {
  test('free and rightly keyed', () => {
    expect(given().when(prepared())).toEqual(['facts']);
    expect(given().when(prepared(ids.one, { sampleNumber: '120017' }))).toEqual(['numberWrong 0/body/sampleNumber']);
  });

  test('used on another cassette, also in the same call, also by a void sample', () => {
    expect(given(prepared()).when(second({ sampleNumber: '120019' }))).toEqual(['numberUsed 0/body/sampleNumber']);
    expect(given(prepared(), voided('wet')).when(second({ sampleNumber: '120019' }))).toHaveLength(1);
    expect(given().when(prepared(), second({ sampleNumber: '120019' }))).toEqual(['numberUsed 1/body/sampleNumber']);
  });

  test('prepared twice', () => {
    expect(given(prepared()).when(prepared())).toEqual(['alreadyInBook 0/body/sampleId']);
  });
});

describe('putting on', () => {
  test('in the order of the day; a missing fitting check is named', () => {
    expect(given(prepared(), fitted).when(putOn('12:00'))).toEqual(['facts']);
    expect(given(prepared()).when(putOn('12:00'))).toEqual(['facts', 'caution fittingNotChecked']);
    expect(given().when(prepared(), fitted, putOn('12:00'))).toEqual(['facts']);
  });

  test('without a flow check yet is allowed and named', () => {
    const fresh = { ...freshOf(journal([prepared(), fitted])), flowChecks: [] };
    expect(decide([putOn('12:00')], fresh, context)).toMatchObject({
      kind: 'facts',
      cautions: [{ key: 'noFlowCheckYet', params: { sampleNumber: '120019' } }],
    });
  });

  test('of a sample that is not in this book, twice, or void', () => {
    expect(given().when(putOn('12:00'))).toEqual(['recordUnknown 0/body/sampleId']);
    expect(given(prepared(), fitted, putOn('12:00')).when(putOn('12:01'))).toEqual(['alreadyPutOn 0/body/sampleId']);
    expect(given(prepared(), fitted).when(putOn('12:00'), putOn('12:00'))).toEqual(['alreadyPutOn 1/body/sampleId']);
    expect(given(prepared(), fitted, voided('wet')).when(putOn('12:00'))).toEqual(['sampleVoid 0/body/sampleId']);
  });

  test('one pump twice, one worker twice', () => {
    const samePump = second({ pumpId: ids.pumpA });
    const sameWorker = second({ workerId: ids.ana });
    expect(given(prepared(), putOn('12:00'), samePump).when(putOn('13:00', ids.two))).toContain(
      'pumpRunningElsewhere 0/body/sampleId',
    );
    expect(given(prepared(), putOn('12:00'), sameWorker).when(putOn('13:00', ids.two))).toContain(
      'workerWearsAnother 0/body/sampleId',
    );
    expect(given(prepared(), samePump).when(putOn('12:00'), putOn('12:00', ids.two))).toContain(
      'pumpRunningElsewhere 0/body/sampleId',
    );
    expect(given(prepared(), putOn('12:00'), second()).when(putOn('13:00', ids.two))[0]).toBe('facts');
    expect(given(prepared(), putOn('12:00'), voided('wet'), samePump).when(putOn('13:00', ids.two))[0]).toBe('facts');
  });

  test('a cassette change in one call, in any order; overlapping it is refused', () => {
    const next = second({ pumpId: ids.pumpA, workerId: ids.ana, follows: ids.one });
    const book = given(prepared(), putOn('12:00'));
    expect(book.when(stopped('16:00'), next, putOn('16:00', ids.two))[0]).toBe('facts');
    expect(book.when(next, putOn('16:00', ids.two), stopped('16:00'))[0]).toBe('facts');
    expect(book.when(next, putOn('15:59', ids.two), stopped('16:00'))).toHaveLength(2);
    expect(book.when(second({ follows: ids.three }))).toEqual(['recordUnknown 0/body/follows']);
  });

  test('a field blank has no pump', () => {
    const blank = wanted('blankOpened.v1', {
      sampleId,
      sampleNumber: '120019',
      shiftId: prepared().body.shiftId,
      lotId: ids.lot,
      openedWhere: 'reading room',
    });
    expect(given(blank).when(putOn('12:00'))).toEqual(['isBlank 0/body/sampleId']);
    expect(given(blank).when(sealed('12:00'))).toEqual(['facts']);
  });
});

describe('while it is on the worker', () => {
  const running = given(prepared(), fitted, putOn('12:00'));

  test.each([
    ['a look', look('13:00'), ['facts']],
    ['before it was put on', look('11:59'), ['beforePutOn 0/happened/at']],
    ['taken off', off('13:00'), ['facts']],
    ['back on without having been off', backOn('13:00'), ['notOff 0/body/sampleId']],
    [
      'back in the lead area without having left',
      wanted('leadAreaEntered.v1', { sampleId }, { at: at('13:00') }),
      ['notAway 0/body/sampleId'],
    ],
  ])('%s', (_, fact, expected) => {
    expect(running.when(fact)).toEqual(expected);
  });

  test('taken off twice, left twice, off and on again in one call', () => {
    expect(running.when(off('13:00'), off('13:10'))).toEqual(['alreadyOff 1/body/sampleId']);
    expect(running.when(left('13:00'), left('13:10'))).toEqual(['alreadyAway 1/body/sampleId']);
    expect(running.when(off('13:00'), backOn('13:30'), off('14:00'), backOn('14:30'))).toEqual(['facts']);
  });

  test('not put on, or stopped already', () => {
    expect(given(prepared()).when(look('13:00'))).toEqual(['notPutOn 0/body/sampleId']);
    const over = given(prepared(), putOn('12:00'), stopped('20:00'));
    expect(over.when(look('20:01'))).toEqual(['afterStopped 0/happened/at']);
    expect(over.when(look('15:00'))).toEqual(['facts']);
  });

  test('typed afterwards into the middle of the line', () => {
    expect(given(prepared(), putOn('12:00'), off('14:00')).when(off('13:00'), backOn('13:10'))[0]).toBe('facts');
  });
});

describe('stopping', () => {
  const running = given(prepared(), fitted, putOn('12:00'), look('15:00'));

  test.each([
    ['after the start', '20:00', ['facts']],
    ['before the start', '11:59', ['stopBeforeStart 0/happened/at']],
    ['zero minutes', '12:00', ['zeroMinutes 0/happened/at']],
    ['before the last look', '14:59', ['stopBeforeLast 0/happened/at']],
  ])('%s', (_, time, expected) => {
    expect(running.when(stopped(time))).toEqual(expected);
  });

  test('never put on, or twice', () => {
    expect(given(prepared()).when(stopped('20:00'))).toEqual(['notPutOn 0/body/sampleId']);
    expect(running.when(stopped('20:00'), stopped('20:00'))).toEqual(['alreadyStopped 1/body/sampleId']);
  });

  test('by mistake', () => {
    const mistake = (stopFactId: string) => wanted('stoppedByMistake.v1', { sampleId, stopFactId });
    const over = [prepared(), fitted, putOn('12:00'), stopped('14:00')];
    expect(given(...over).when(mistake('wwwwwwwwwwww.00000004'))).toEqual(['facts']);
    expect(given(...over).when(mistake('wwwwwwwwwwww.00000003'))).toEqual(['notStopped 0/body/stopFactId']);
    const taken = second({ pumpId: ids.pumpA });
    expect(given(...over, taken, putOn('15:00', ids.two)).when(mistake('wwwwwwwwwwww.00000004'))).toEqual([
      'pumpRunningElsewhere 0/body/sampleId',
    ]);
  });

  test('seal before stop, seal twice, locked in afterwards', () => {
    expect(running.when(sealed('20:00'))).toEqual(['sealBeforeStop 0/body/sampleId']);
    const over = [prepared(), putOn('12:00'), stopped('20:00'), sealed('20:10')];
    expect(given(...over).when(sealed('20:20'))).toEqual(['alreadySealed 0/body/sampleId']);
    expect(given(...over).when(sealed('20:20', 'van'))).toEqual(['facts']);
    expect(given(...over, sealed('20:20', 'van')).when(sealed('20:30', 'safe'))).toHaveLength(1);
  });

  test('void needs a reason, and once', () => {
    expect(running.when(voided(null))).toEqual(['whyNeeded 0/why']);
    expect(running.when(voided('  '))).toEqual(['whyNeeded 0/why']);
    expect(given(prepared(), voided('wet')).when(voided('wet'))).toEqual(['alreadyVoid 0/body/sampleId']);
  });
});

describe('results', () => {
  const over = [prepared(), putOn('12:00'), stopped('20:00')];
  test('once a report; a second report is a revised one', () => {
    expect(given(...over).when(result(5))).toEqual(['facts']);
    expect(given(...over, result(5)).when(result(6))).toEqual(['resultAlreadyIn 0/body/reportNumber']);
    expect(given(...over, result(5)).when(result(6, 'R-2'))).toEqual(['facts', 'caution revisedReport']);
    expect(given(...over).when(result(5), result(5))).toEqual(['resultAlreadyIn 1/body/reportNumber']);
  });

  test('for a void sample and for one not stopped are taken, and said', () => {
    expect(given(...over, voided('wet')).when(result(5))).toEqual(['facts', 'caution resultForVoid']);
    expect(given(prepared()).when(result(5))).toEqual(['facts', 'caution resultBeforeStop']);
  });
});

describe('all or nothing', () => {
  test('one refusal refuses the call, and every reason is told', () => {
    expect(given(prepared(), fitted).when(putOn('12:00'), stopped('11:00'), look('11:30'))).toEqual([
      'stopBeforeStart 1/happened/at',
      'beforePutOn 2/happened/at',
    ]);
  });

  test('what must be read is named', () => {
    expect(needs([second({ follows: ids.one }), putOn('12:00', ids.two)])).toEqual({
      keys: [`sample:${ids.two}`, `sample:${ids.one}`],
      runningSamples: true,
      sampleNumbers: ['120027'],
      boxesOfSamples: [],
      noticesOf: [],
      takingIn: false,
      missing: false,
      facts: [],
    });
    expect(needs([look('13:00')])).toMatchObject({ runningSamples: false, sampleNumbers: [] });
  });
});
