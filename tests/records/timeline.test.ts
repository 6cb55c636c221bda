import { describe, expect, test } from 'vitest';
import type { NewFact } from '#records/fact.ts';
import { at, ids, look, prepared, putOn, sampleOf, stopped, wanted } from './facts.ts';

const sampleId = ids.one;
const off = (time: string, stillRunning: boolean, awayFromLead = true) =>
  wanted('pumpTakenOff.v1', { sampleId, stillRunning, awayFromLead, reason: 'lunch' }, { at: at(time) });
const backOn = (time: string) => wanted('pumpPutBackOn.v1', { sampleId }, { at: at(time) });
const left = (time: string) => wanted('leadAreaLeft.v1', { sampleId, reason: 'break' }, { at: at(time) });
const entered = (time: string) => wanted('leadAreaEntered.v1', { sampleId }, { at: at(time) });
const fault = (time: string, kind: 'stopped' | 'flowDropped' | 'tubingOff', pumpMin: number | null = null) =>
  wanted('pumpFaulted.v1', { sampleId, fault: kind, pumpMin, remark: null }, { at: at(time) });

/** `12:00-13:00 worn` and so on; an open end is `..`, away from the lead area a star. */
const lineOf = (facts: readonly NewFact[]): readonly string[] =>
  sampleOf([prepared(), ...facts]).intervals.map(
    ({ fromAt, toAt, state, awayFromLead }) =>
      `${fromAt.slice(11, 16)}-${toAt?.slice(11, 16) ?? '..'} ${state}${awayFromLead ? '*' : ''}`,
  );
const doubtsOf = (facts: readonly NewFact[]): readonly string[] =>
  sampleOf([prepared(), ...facts]).clockDoubts.map(({ kind }) => kind);

describe('the time line of a sample', () => {
  test('put on and stopped: worn in between', () => {
    expect(lineOf([putOn('12:00'), stopped('20:00')])).toEqual(['12:00-20:00 worn']);
  });

  test('still on the worker: the end is open', () => {
    expect(lineOf([putOn('12:00')])).toEqual(['12:00-.. worn']);
  });

  test('never put on: nothing', () => {
    expect(lineOf([])).toEqual([]);
    expect(sampleOf([prepared()]).putOn).toBeNull();
  });

  test('taken off over lunch, switched off or left running', () => {
    const rest = [backOn('16:30'), stopped('20:00')];
    expect(lineOf([putOn('12:00'), off('16:00', false), ...rest])).toEqual([
      '12:00-16:00 worn',
      '16:00-16:30 offStopped*',
      '16:30-20:00 worn',
    ]);
    expect(lineOf([putOn('12:00'), off('16:00', true, false), ...rest])).toEqual([
      '12:00-16:00 worn',
      '16:00-16:30 offRunning',
      '16:30-20:00 worn',
    ]);
  });

  test('away from the lead area with the pump worn', () => {
    const facts = [putOn('12:00'), left('14:00'), entered('14:20'), stopped('20:00')];
    expect(lineOf(facts)).toEqual(['12:00-14:00 worn', '14:00-14:20 worn*', '14:20-20:00 worn']);
    expect(sampleOf([prepared(), ...facts]).leadAreaAway).toEqual([
      { fromAt: at('14:00'), toAt: at('14:20'), reason: 'break' },
    ]);
  });

  test('times typed afterwards, in any order, make the same line', () => {
    const facts = [stopped('20:00'), backOn('16:30'), off('16:00', false), putOn('12:00')];
    expect(lineOf(facts)).toEqual(lineOf([...facts].reverse()));
    expect(doubtsOf(facts)).not.toContain('outOfOrder');
  });
});

describe('what was found later', () => {
  test('found stopped: doubtful since it was last seen running', () => {
    expect(lineOf([putOn('12:00'), look('14:00'), fault('17:00', 'stopped'), stopped('20:00')])).toEqual([
      '12:00-14:00 worn',
      '14:00-17:00 doubtful',
      '17:00-20:00 offStopped',
    ]);
  });

  test('found stopped and never looked at: doubtful from the start', () => {
    expect(lineOf([putOn('12:00'), fault('17:00', 'stopped'), backOn('17:05'), stopped('20:00')])).toEqual([
      '12:00-17:00 doubtful',
      '17:00-17:05 offStopped',
      '17:05-20:00 worn',
    ]);
  });

  test("found stopped, the pump's own minutes tell when: 180 minutes after 12:00 is 15:00", () => {
    expect(lineOf([putOn('12:00'), look('14:00'), fault('17:00', 'stopped', 180), stopped('20:00')])).toEqual([
      '12:00-15:00 worn',
      '15:00-17:00 offStopped',
      '17:00-20:00 offStopped',
    ]);
  });

  test("the pump's own minutes run on off the worker", () => {
    const facts = [
      putOn('12:00'),
      off('13:00', true),
      backOn('13:30'),
      fault('17:00', 'stopped', 180),
      stopped('18:00'),
    ];
    expect(lineOf(facts).slice(2, 4)).toEqual(['13:30-15:00 worn', '15:00-17:00 offStopped']);
  });

  test('a display that contradicts the last look leaves the doubt', () => {
    expect(lineOf([putOn('12:00'), look('16:00'), fault('17:00', 'stopped', 180), stopped('20:00')])).toEqual([
      '12:00-15:00 worn',
      '15:00-17:00 doubtful',
      '17:00-20:00 offStopped',
    ]);
  });

  test('a display of another run tells nothing', () => {
    expect(lineOf([putOn('12:00'), look('14:00'), fault('17:00', 'stopped', 900), stopped('20:00')])[1]).toBe(
      '14:00-17:00 doubtful',
    );
  });

  test('tubing off: doubtful before, and after until somebody looks', () => {
    expect(
      lineOf([putOn('12:00'), look('14:00'), fault('15:00', 'tubingOff'), look('15:10'), stopped('20:00')]),
    ).toEqual(['12:00-14:00 worn', '14:00-15:00 doubtful', '15:00-15:10 doubtful', '15:10-20:00 worn']);
  });

  test('a flow that dropped is left to the flow check afterwards', () => {
    expect(lineOf([putOn('12:00'), fault('15:00', 'flowDropped'), stopped('20:00')])).toEqual(['12:00-20:00 worn']);
  });

  test('looked at and not running, not in place', () => {
    expect(lineOf([putOn('12:00'), look('14:00'), look('15:00', false), stopped('20:00')])).toEqual([
      '12:00-14:00 worn',
      '14:00-15:00 doubtful',
      '15:00-20:00 offStopped',
    ]);
    expect(lineOf([putOn('12:00'), look('14:00'), look('15:00', true, false), stopped('20:00')])).toEqual([
      '12:00-14:00 worn',
      '14:00-15:00 doubtful',
      '15:00-20:00 worn',
    ]);
  });

  test('doubt reaches over a break and keeps it a break', () => {
    const facts = [
      putOn('12:00'),
      look('13:00'),
      left('14:00'),
      entered('14:20'),
      fault('15:00', 'stopped'),
      stopped('20:00'),
    ];
    expect(lineOf(facts)).toEqual([
      '12:00-13:00 worn',
      '13:00-14:00 doubtful',
      '14:00-14:20 doubtful*',
      '14:20-15:00 doubtful',
      '15:00-20:00 offStopped',
    ]);
  });
});

describe('what does not fit', () => {
  test('put on twice, on two devices: the first counts and the doubt is told', () => {
    expect(lineOf([putOn('12:00'), putOn('12:04'), stopped('20:00')])).toEqual(['12:00-20:00 worn']);
    expect(doubtsOf([putOn('12:00'), putOn('12:04'), stopped('20:00')])).toEqual(['outOfOrder']);
  });

  test('stopped twice: the shorter run is the careful one', () => {
    expect(lineOf([putOn('12:00'), stopped('20:00'), stopped('19:30')])).toEqual(['12:00-19:30 worn']);
  });

  test('a look before it was put on and one after the stop', () => {
    expect(doubtsOf([look('11:00'), putOn('12:00'), stopped('20:00'), look('20:30')])).toContain('outOfOrder');
    expect(lineOf([look('11:00'), putOn('12:00'), stopped('20:00'), look('20:30')])).toEqual(['12:00-20:00 worn']);
  });

  test('a clock that was set back while the pump ran', () => {
    expect(doubtsOf([putOn('12:00'), look('15:00'), look('14:00'), stopped('20:00')])).toEqual(['setBack']);
    const typed = { ...look('14:00'), happened: { ...look('14:00').happened, entry: 'typed' as const } };
    expect(doubtsOf([putOn('12:00'), look('15:00'), typed, stopped('20:00')])).toEqual([]);
  });
});

describe('stopped by mistake', () => {
  const stopFactId = 'wwwwwwwwwwww.00000003';
  const mistake = wanted('stoppedByMistake.v1', { sampleId, stopFactId }, { at: at('14:01') });

  test('takes back that stop, and only that one', () => {
    const facts = [putOn('12:00'), stopped('14:00'), mistake];
    expect(lineOf(facts)).toEqual(['12:00-.. worn']);
    expect(sampleOf([prepared(), ...facts]).stopped).toBeNull();
    expect(lineOf([...facts, stopped('20:00')])).toEqual(['12:00-20:00 worn']);
  });
});
