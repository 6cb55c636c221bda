import { describe, expect, test } from 'vitest';
import { type DecideContext, type Decision, decide } from '#records/decide.ts';
import type { FactBody, NewFact } from '#records/fact.ts';
import {
  at,
  corrects,
  folded,
  freshOf,
  ids,
  journal,
  look,
  office,
  phone,
  prepared,
  putOn,
  result,
  sealed,
  stopped,
  Writer,
  wanted,
} from './facts.ts';

const evening = { now: at('23:00', '2026-12-03'), lastSeenAt: null };
const key = `sample:${ids.one}`;
const saidOf = (decision: Decision): readonly string[] =>
  decision.kind === 'facts'
    ? ['facts', ...decision.cautions.map((c) => c.key)]
    : decision.refusals.map((r) => `${r.key} ${r.fields.join(' ')}`);
const given = (facts: readonly NewFact[], context: DecideContext = evening) => ({
  when: (...wants: readonly NewFact[]) => saidOf(decide(wants, freshOf(journal(facts)), context)),
});
const day = [prepared(), putOn('12:00'), stopped('20:00'), sealed('20:10')];

describe('every entry', () => {
  test('future time: more than two minutes ahead is refused', () => {
    const book = given([prepared(), putOn('12:00')], { now: at('13:00'), lastSeenAt: null });
    expect(book.when(look('13:02'))).toEqual(['facts']);
    expect(book.when(look('13:03'))).toEqual(['timeInFuture 0/happened/at']);
  });

  test('future times inside an entry too', () => {
    const workdayId = `${ids.ana}.2026-11-25`;
    const hours = (endedAt: string) =>
      wanted('workHoursStated.v1', {
        workdayId,
        pieces: [{ startedAt: at('12:00'), endedAt, place: null, employer: null }],
      });
    const book = given([], { now: at('20:00'), lastSeenAt: null });
    expect(book.when(hours(at('20:00')))).toEqual(['facts']);
    expect(book.when(hours(at('20:30')))).toEqual(['timeInFuture 0/body/pieces/0/endedAt']);
  });

  test('clock set back while running: a tap is refused, a typed time is taken', () => {
    const back = { now: at('12:30'), lastSeenAt: at('13:00') };
    const book = given([prepared(), putOn('12:00')], back);
    expect(book.when(look('12:30'))).toEqual(['clockSetBack 0/happened/at']);
    const typed = wanted('pumpLookedAt.v1', look('12:30').body, { at: at('12:30'), entry: 'typed' });
    expect(book.when(typed)).toEqual(['facts']);
    expect(given([prepared()], back).when(putOn('12:30'))[0]).toBe('facts');
    expect(
      given([prepared(), putOn('12:00')], { now: at('11:00'), lastSeenAt: null }).when(stopped('11:00')),
    ).toContain('clockSetBack 0/happened/at');
  });

  test('a missing or misfitting field is named by its place', () => {
    const noSerial = wanted('pumpAdded.v1', { pumpId: ids.pumpA, serial: ' ', model: null });
    expect(given([]).when(noSerial)).toEqual(['entryNotComplete 0/body/serial']);
    const noMinutes = wanted('pumpStopped.v1', { sampleId: ids.one, pumpMin: -3 });
    expect(given([prepared(), putOn('12:00')]).when(noMinutes)).toEqual(['entryNotComplete 0/body/pumpMin']);
    const noZone = { ...look('13:00'), happened: { ...look('13:00').happened, at: 'noon' } };
    expect(given([prepared(), putOn('12:00')]).when(noZone)).toEqual(['entryNotComplete 0/happened/at']);
  });

  test('text is trimmed, and the record it is about is filled in', () => {
    const pump = {
      ...wanted('pumpAdded.v1', { pumpId: ids.pumpA, serial: '  A-17 ', model: null }),
      about: ['site:x'],
    };
    const decision = decide([pump], freshOf([]), evening);
    expect(decision).toMatchObject({ facts: [{ about: [`pump:${ids.pumpA}`, 'site:x'], body: { serial: 'A-17' } }] });
  });

  test.each(['123-45-6789', '123 45 6789', '123456789'])('a social security number as identifier: %s', (identifier) => {
    const person = (text: string | null) =>
      wanted('personAdded.v1', {
        personId: ids.ana,
        name: 'Ana Ruiz',
        identifier: text,
        language: 'es',
        jobClassificationId: null,
        employer: null,
      });
    expect(given([]).when(person(identifier))).toEqual(['looksLikeSocialSecurityNumber 0/body/identifier']);
    expect(given([]).when(person('W-0417'))).toEqual(['facts']);
    const correction = corrects('wwwwwwwwwwww.00000001', '/identifier', 'W-0417', identifier, null, [
      `person:${ids.ana}`,
    ]);
    expect(given([person('W-0417')]).when(correction)).toEqual(['looksLikeSocialSecurityNumber 0/body/new']);
  });

  test('a social security number in a remark', () => {
    const remark = (text: string) => wanted('remarkMade.v1', { sampleId: ids.one, text });
    expect(given([prepared()]).when(remark('his number is 123-45-6789.'))).toHaveLength(1);
    expect(given([prepared()]).when(remark('pump 123456789, call 555-0100'))).toEqual(['facts']);
  });

  test('people and gear are entered once; a name changes only what is there', () => {
    const pump = wanted('pumpAdded.v1', { pumpId: ids.pumpA, serial: 'A-17', model: null });
    expect(given([pump]).when(pump)).toEqual(['alreadyInBook 0/about/0']);
    const renamed = wanted('nameChanged.v1', { name: 'A-18' }, { about: [`pump:${ids.pumpA}`] });
    expect(given([]).when(renamed)).toEqual(['recordUnknown 0/about/0']);
    const decision = decide([renamed], freshOf(journal([pump, renamed])), evening);
    expect(decision).toMatchObject({ facts: [{ body: { supersedes: 'wwwwwwwwwwww.00000002' } }] });
  });
});

describe('the box', () => {
  const box = (sampleIds: readonly string[], boxId: string = ids.box) =>
    wanted('boxPacked.v1', {
      boxId,
      siteId: ids.site,
      sampleIds: [...sampleIds],
      laboratoryId: ids.laboratory,
      samplerId: ids.supervisor,
      analysis: 'lead',
      methodId: null,
      reportingLimitUg: null,
      includeWallDeposit: true,
      callBeforeReanalysis: true,
      turnaround: 'standard',
      workersShownAs: 'identifier',
      remark: null,
    });
  const sheet = (revision: string, why: string | null = null) =>
    wanted(
      'custodySheetIssued.v1',
      {
        boxId: ids.box,
        revision,
        paper: 'letter',
        sheet: {},
        pdfHash: 'a'.repeat(64),
        editions: { app: '0.1.0', rules: '1', formulas: '1' },
        heads: [],
      },
      { why },
    );

  test('each sample once, in one box', () => {
    expect(given(day).when(box([ids.one]))).toEqual(['facts']);
    expect(given(day).when(box([ids.one, ids.one]))).toEqual(['sampleTwiceInBox 0/body/sampleIds/1']);
    expect(given([...day, box([ids.one])]).when(box([ids.one], 'x00000000002'))).toEqual([
      'sampleInOtherBox 0/body/sampleIds/0',
    ]);
    expect(given([...day, box([ids.one])]).when(box([ids.one]))).toEqual(['alreadyInBook 0/body/boxId']);
    expect(given([]).when(box([ids.one]))).toEqual(['recordUnknown 0/body/sampleIds/0']);
  });

  test('a running sample stays out; one that is not sealed, or void, is named', () => {
    expect(given(day.slice(0, 2)).when(box([ids.one]))).toEqual(['stillRunning 0/body/sampleIds/0']);
    expect(given(day.slice(0, 3)).when(box([ids.one]))).toEqual(['facts', 'notSealed']);
    const voided = wanted('sampleVoided.v1', { sampleId: ids.one }, { why: 'wet' });
    expect(given([...day, voided]).when(box([ids.one]))).toEqual(['facts', 'voidInBox']);
  });

  test('revisions follow one another, with a reason from the second on', () => {
    const packed = [...day, box([ids.one])];
    expect(given(day).when(sheet('1'))).toEqual(['recordUnknown 0/body/boxId']);
    expect(given(packed).when(sheet('1'))).toEqual(['facts']);
    expect(given(packed).when(sheet('2', 'number corrected'))).toEqual(['sheetRevisionNotNext 0/body/revision']);
    const issued = [...packed, sheet('1')];
    expect(given(issued).when(sheet('1'))).toContain('sheetRevisionNotNext 0/body/revision');
    expect(given(issued).when(sheet('2'))).toEqual(['whyNeeded 0/why']);
    expect(given(issued).when(sheet('2', 'number corrected'))).toEqual(['facts']);
    expect(given(packed).when(sheet('1'), sheet('2', 'number corrected'))).toEqual(['facts']);
  });
});

describe('corrections', () => {
  const stop = `${phone}.00000003`;

  test('name what stands now, the new value and why', () => {
    const book = given([...day, result(5)]);
    const res = `${phone}.00000005`;
    expect(book.when(corrects(res, '/mass/massUg', 5, 6))).toEqual(['facts']);
    expect(book.when({ ...corrects(res, '/mass/massUg', 5, 6), why: null })).toEqual(['whyNeeded 0/why']);
    expect(book.when(corrects(res, '/mass/massUg', 4, 6))).toEqual(['valueChangedMeanwhile 0/body/old']);
    expect(book.when(corrects(res, '/mass/massUg', 5, 5))).toEqual(['sameValue 0/body/new']);
    expect(book.when(corrects(res, '/mass/massUg', 5, '6'))).toEqual(['entryNotComplete 0/body/new']);
    expect(book.when(corrects(res, '/weight', 5, 6))).toEqual(['fieldUnknown 0/body/path']);
    expect(book.when(corrects(res, '/sampleId', ids.one, ids.two))).toEqual(['fieldFixed 0/body/path']);
    expect(book.when(corrects(`${office}.00000001`, '/mass', 5, 6))).toEqual(['factUnknown 0/body/replaces']);
    expect(book.when(corrects(res, '/__proto__', null, 1))).toEqual(['fieldUnknown 0/body/path']);
  });

  test('of a moment leave the stop after the start, and stay out of the future', () => {
    const book = given(day);
    expect(book.when(corrects(stop, '/happened/at', at('20:00'), at('19:00')))).toEqual(['facts']);
    expect(book.when(corrects(stop, '/happened/at', at('20:00'), at('11:00')))).toEqual(['stopBeforeStart 0/body/new']);
    expect(book.when(corrects(stop, '/happened/at', at('20:00'), at('12:00')))).toEqual(['zeroMinutes 0/body/new']);
    expect(book.when(corrects(stop, '/happened/at', at('20:00'), at('12:00', '2027-01-01')))).toEqual([
      'timeInFuture 0/body/new',
    ]);
  });

  test('of a number or a pump are held against the others', () => {
    const other = prepared(ids.two, { sampleNumber: '120027', workerId: ids.ben, pumpId: ids.pumpB });
    const both = [prepared(), other, putOn('12:00'), putOn('12:00', ids.two)];
    const first = `${phone}.00000001`;
    expect(given(both).when(corrects(first, '/sampleNumber', '120019', '120027'))).toEqual(['numberUsed 0/body/new']);
    expect(given(both).when(corrects(first, '/sampleNumber', '120019', '120018'))).toEqual(['numberWrong 0/body/new']);
    expect(given(both).when(corrects(first, '/pumpId', ids.pumpA, ids.pumpB))).toEqual([
      'pumpRunningElsewhere 0/body/sampleId',
    ]);
  });

  test('one after another are a chain; apart, they are a conflict that is settled by choosing', () => {
    const onPhone = new Writer(phone);
    const inOffice = new Writer(office);
    for (const fact of [...day, result(5)]) onPhone.add(fact);
    const res = `${phone}.00000005`;
    const addDecided = (writer: Writer, fact: NewFact, from: readonly Writer[]) => {
      const decision = decide([fact], freshOf(from.flatMap(({ entries }) => entries)), evening);
      expect(saidOf(decision)[0]).toBe('facts');
      if (decision.kind === 'facts') for (const decided of decision.facts) writer.add(decided);
    };
    addDecided(onPhone, corrects(res, '/mass/massUg', 5, 6), [onPhone]);
    addDecided(onPhone, corrects(res, '/mass/massUg', 6, 7), [onPhone]);
    expect(folded(key, onPhone.entries)).toMatchObject({ conflicts: [], results: [{ mass: { massUg: 7 } }] });
    // The office has taken in the phone's file; then both correct without knowledge of each other.
    const apart = [...onPhone.entries];
    addDecided(onPhone, corrects(res, '/mass/massUg', 7, 4), [onPhone]);
    const decision = decide([corrects(res, '/mass/massUg', 7, 3)], freshOf(apart), evening);
    if (decision.kind === 'facts') for (const fact of decision.facts) inOffice.add(fact);
    const all = [onPhone, inOffice];
    const conflict = folded(key, [...onPhone.entries, ...inOffice.entries]).conflicts[0];
    expect(conflict?.candidates).toHaveLength(2);
    const fresh = freshOf(all.flatMap(({ entries }) => entries));
    expect(saidOf(decide([corrects(res, '/mass/massUg', 4, 8)], fresh, evening))).toContain('conflictOpen 0/body/path');
    const settle = (chosen: string) =>
      wanted(
        'correctionSettled.v1',
        { replaces: res, path: '/mass/massUg', chosen } as FactBody<'correctionSettled.v1'>,
        { about: [key], why: 'looked at the report' },
      );
    expect(saidOf(decide([settle(`${phone}.00000099`)], fresh, evening))).toEqual(['noConflict 0/body/chosen']);
    addDecided(inOffice, settle(`${office}.00000001`), all);
    const settled = folded(key, [...onPhone.entries, ...inOffice.entries]);
    expect(settled).toMatchObject({ conflicts: [], results: [{ mass: { massUg: 3 } }] });
    addDecided(onPhone, corrects(res, '/mass/massUg', 3, 9), all);
    expect(folded(key, [...onPhone.entries, ...inOffice.entries])).toMatchObject({
      conflicts: [],
      results: [{ mass: { massUg: 9 } }],
    });
  });
});
