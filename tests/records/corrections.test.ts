import { describe, expect, test } from 'vitest';
import type { FlowCheckRecord, PersonRecord } from '#records/book.ts';
import type { JournalEntry } from '#records/chain.ts';
import type { FactBody } from '#records/fact.ts';
import { at, corrects, folded, ids, office, phone, prepared, putOn, result, stopped, Writer, wanted } from './facts.ts';

const key = `sample:${ids.one}`;

/** A phone that writes the day and an office that has taken it in. */
function twoDevices() {
  const onPhone = new Writer(phone);
  onPhone.add(prepared());
  const put = onPhone.add(putOn('12:00'));
  const stop = onPhone.add(stopped('20:00', 480));
  const res = onPhone.add(result(5));
  return { onPhone, inOffice: new Writer(office), put, stop, res };
}
const together = (...writers: readonly Writer[]): readonly JournalEntry[] => writers.flatMap(({ entries }) => entries);
const massOf = (entries: readonly JournalEntry[]) => folded(key, entries).results.at(-1)?.mass;
const settles = (replaces: string, path: string, chosen: string, over?: string[]) =>
  wanted(
    'correctionSettled.v1',
    { replaces, path, chosen, ...(over ? { over } : {}) } as FactBody<'correctionSettled.v1'>,
    {
      about: [key],
      at: at('21:00'),
    },
  );

describe('a correction', () => {
  test('replaces the value, and the old one is struck with its reason', () => {
    const { onPhone, res } = twoDevices();
    onPhone.add(corrects(res, '/mass/massUg', 5, 6));
    const record = folded(key, onPhone.entries);
    expect(record.results.at(-1)?.mass).toEqual({ kind: 'measured', massUg: 6 });
    expect(record.strikes).toEqual([
      {
        correctionId: `${phone}.00000005`,
        factId: res,
        path: '/mass/massUg',
        old: 5,
        new: 6,
        why: 'misread',
        by: ids.supervisor,
      },
    ]);
    expect(record.conflicts).toEqual([]);
  });

  test('of a moment moves it', () => {
    const { onPhone, put } = twoDevices();
    onPhone.add(corrects(put, '/happened/at', at('12:00'), at('12:30')));
    const record = folded(key, onPhone.entries);
    expect(record.putOn?.at).toBe(at('12:30'));
    expect(record.intervals.map(({ fromAt }) => fromAt)).toEqual([at('12:30')]);
  });

  test('of a correction: the latest in the chain stands', () => {
    const { onPhone, inOffice, res } = twoDevices();
    const first = onPhone.add(corrects(res, '/mass/massUg', 5, 9));
    const second = inOffice.add(corrects(res, '/mass/massUg', 9, 7, first));
    onPhone.add(corrects(res, '/mass/massUg', 7, 5, second));
    expect(massOf(together(onPhone, inOffice))).toMatchObject({ massUg: 5 });
    expect(folded(key, together(onPhone, inOffice)).conflicts).toEqual([]);
    expect(folded(key, together(onPhone, inOffice)).strikes).toHaveLength(3);
  });

  test('back to a value that was corrected before: no conflict with itself', () => {
    const { onPhone, res } = twoDevices();
    const first = onPhone.add(corrects(res, '/mass/massUg', 5, 6));
    const second = onPhone.add(corrects(res, '/mass/massUg', 6, 7, first));
    onPhone.add(corrects(res, '/mass/massUg', 7, 6, second));
    expect(massOf(onPhone.entries)).toMatchObject({ massUg: 6 });
    expect(folded(key, onPhone.entries).conflicts).toEqual([]);
  });

  test('that makes no sense of its fact is not applied, and makes the record doubtful', () => {
    const { onPhone, res } = twoDevices();
    const bad = onPhone.add(corrects(res, '/mass/massUg', 5, 'heavy'));
    const nowhere = onPhone.add(corrects(res, '/weight', 5, 6));
    const lost = onPhone.add(corrects(`${office}.00000099`, '/mass', 5, 6));
    const record = folded(key, onPhone.entries);
    expect(record.results.at(-1)?.mass).toMatchObject({ massUg: 5 });
    expect(record.notUnderstood).toEqual([bad, nowhere, lost].sort());
  });

  test('cannot reach a prototype', () => {
    const { onPhone, res } = twoDevices();
    onPhone.add(corrects(res, '/__proto__/polluted', null, true));
    onPhone.add(corrects(res, '/constructor/prototype', null, true));
    expect(folded(key, onPhone.entries).notUnderstood).toHaveLength(2);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test('that supersede each other in a ring are a conflict, not an endless loop', () => {
    const { onPhone, inOffice, res } = twoDevices();
    onPhone.add(corrects(res, '/mass/massUg', 5, 6, `${office}.00000001`));
    inOffice.add(corrects(res, '/mass/massUg', 5, 7, `${phone}.00000005`));
    expect(folded(key, together(onPhone, inOffice)).conflicts).toHaveLength(1);
  });
});

describe('two corrections without knowledge of each other', () => {
  test('are a conflict; the heavier mass stands, whoever wrote it and whenever', () => {
    for (const [here, there] of [
      [6, 4],
      [4, 6],
    ] as const) {
      const { onPhone, inOffice, res } = twoDevices();
      const ids = [
        onPhone.add(corrects(res, '/mass/massUg', 5, here)),
        inOffice.add(corrects(res, '/mass/massUg', 5, there)),
      ];
      const record = folded(key, together(onPhone, inOffice));
      expect(record.results.at(-1)?.mass).toMatchObject({ massUg: 6 });
      expect(record.conflicts).toMatchObject([
        { factId: res, path: '/mass/massUg', standing: ids[here === 6 ? 0 : 1] },
      ]);
      expect(record.conflicts[0]?.candidates.map(({ correctionId }) => correctionId).sort()).toEqual([...ids].sort());
    }
  });

  test('to one and the same value are none, and a later correction replaces both', () => {
    const { onPhone, inOffice, res } = twoDevices();
    const first = onPhone.add(corrects(res, '/mass/massUg', 5, 6));
    inOffice.add(corrects(res, '/mass/massUg', 5, 6));
    expect(folded(key, together(onPhone, inOffice)).conflicts).toEqual([]);
    onPhone.add(corrects(res, '/mass/massUg', 6, 8, first));
    expect(folded(key, together(onPhone, inOffice)).conflicts).toEqual([]);
    expect(massOf(together(onPhone, inOffice))).toMatchObject({ massUg: 8 });
  });

  test('of the whole and of a part of it are one conflict', () => {
    const { onPhone, inOffice, res } = twoDevices();
    onPhone.add(corrects(res, '/mass', { kind: 'measured', massUg: 5 }, { kind: 'lessThan', reportingLimitUg: 2 }));
    inOffice.add(corrects(res, '/mass/massUg', 5, 7));
    const record = folded(key, together(onPhone, inOffice));
    expect(record.conflicts).toMatchObject([{ path: '/mass' }]);
    expect(record.results.at(-1)?.mass).toEqual({ kind: 'measured', massUg: 7 });
  });

  test('of when it was put on: the shorter run stands', () => {
    const { onPhone, inOffice, put, stop } = twoDevices();
    onPhone.add(corrects(put, '/happened/at', at('12:00'), at('12:10')));
    inOffice.add(corrects(put, '/happened/at', at('12:00'), at('11:50')));
    onPhone.add(corrects(stop, '/happened/at', at('20:00'), at('20:10')));
    inOffice.add(corrects(stop, '/happened/at', at('20:00'), at('19:50')));
    const record = folded(key, together(onPhone, inOffice));
    expect([record.putOn?.at, record.stopped?.at]).toEqual([at('12:10'), at('19:50')]);
    expect(record.conflicts).toHaveLength(2);
  });

  test('where no direction is known: the old value stands and the doubt is shown', () => {
    const { onPhone, inOffice, res } = twoDevices();
    onPhone.add(corrects(res, '/laboratoryVolumeL', null, 900));
    inOffice.add(corrects(res, '/laboratoryVolumeL', null, 950));
    const record = folded(key, together(onPhone, inOffice));
    expect(record.results.at(-1)?.laboratoryVolumeL).toBeNull();
    expect(record.conflicts).toMatchObject([{ standing: res }]);
  });

  test('of a flow reading: the lower flow stands', () => {
    const onPhone = new Writer(phone);
    const readings = (...ends: readonly number[]) => ends.map((flow) => ({ lowLPerMin: flow, highLPerMin: flow }));
    const flowCheckId = 'f00000000001';
    const check = onPhone.add(
      wanted('flowChecked.v1', {
        flowCheckId,
        shiftId: prepared().body.shiftId,
        pumpId: ids.pumpA,
        meterId: ids.meter,
        lotId: ids.lot,
        inLine: 'representativeCassette',
        purpose: 'before',
        readings: readings(2.0, 2.0),
        temperatureC: null,
        pressureKPa: null,
        remark: null,
      }),
    );
    const about = [`flowCheck:${flowCheckId}`];
    const inOffice = new Writer(office);
    onPhone.add(corrects(check, '/readings', readings(2.0, 2.0), readings(2.1, 2.1), null, about));
    inOffice.add(corrects(check, '/readings', readings(2.0, 2.0), readings(1.9, 2.0), null, about));
    const record = folded<FlowCheckRecord>(about[0] ?? '', together(onPhone, inOffice));
    expect(record.readings).toEqual(readings(1.9, 2.0));
  });
});

describe('settling', () => {
  test('a person picks one, and the conflict is over', () => {
    const { onPhone, inOffice, res } = twoDevices();
    const light = onPhone.add(corrects(res, '/mass/massUg', 5, 4));
    const heavy = inOffice.add(corrects(res, '/mass/massUg', 5, 6));
    const settled = onPhone.add(settles(res, '/mass/massUg', light, [light, heavy]));
    const record = folded(key, together(onPhone, inOffice));
    expect(record.conflicts).toEqual([]);
    expect(record.results.at(-1)?.mass).toMatchObject({ massUg: 4 });
    onPhone.add(corrects(res, '/mass/massUg', 4, 8, settled));
    expect(massOf(together(onPhone, inOffice))).toMatchObject({ massUg: 8 });
  });

  test('does not settle a third one that it did not know of', () => {
    const { onPhone, inOffice, res } = twoDevices();
    const third = new Writer('yyyyyyyyyyyy');
    const light = onPhone.add(corrects(res, '/mass/massUg', 5, 4));
    const heavy = inOffice.add(corrects(res, '/mass/massUg', 5, 6));
    third.add(corrects(res, '/mass/massUg', 5, 7));
    onPhone.add(settles(res, '/mass/massUg', light, [light, heavy]));
    const record = folded(key, together(onPhone, inOffice, third));
    expect(record.conflicts).toHaveLength(1);
    expect(record.results.at(-1)?.mass).toMatchObject({ massUg: 7 });
  });

  test('two people settle differently: a conflict again, and the heavier stands', () => {
    const { onPhone, inOffice, res } = twoDevices();
    const light = onPhone.add(corrects(res, '/mass/massUg', 5, 4));
    const heavy = inOffice.add(corrects(res, '/mass/massUg', 5, 6));
    onPhone.add(settles(res, '/mass/massUg', light, [light, heavy]));
    inOffice.add(settles(res, '/mass/massUg', heavy, [light, heavy]));
    const record = folded(key, together(onPhone, inOffice));
    expect(record.conflicts).toHaveLength(1);
    expect(record.results.at(-1)?.mass).toMatchObject({ massUg: 6 });
  });

  test('the first value can be chosen too', () => {
    const { onPhone, inOffice, res } = twoDevices();
    const light = onPhone.add(corrects(res, '/mass/massUg', 5, 4));
    const heavy = inOffice.add(corrects(res, '/mass/massUg', 5, 6));
    onPhone.add(settles(res, '/mass/massUg', res, [light, heavy]));
    expect(massOf(together(onPhone, inOffice))).toMatchObject({ massUg: 5 });
    expect(folded(key, together(onPhone, inOffice)).conflicts).toEqual([]);
  });
});

describe('names', () => {
  const person = `person:${ids.ana}`;
  const added = wanted('personAdded.v1', {
    personId: ids.ana,
    name: 'Ana Ruiz',
    identifier: null,
    language: 'es',
    jobClassificationId: null,
    employer: null,
  });
  const renamed = (name: string, supersedes: string | null) =>
    wanted('nameChanged.v1', { name, supersedes }, { about: [person] });

  test('the last writer wins, and every name is listed as struck', () => {
    const onPhone = new Writer(phone);
    const inOffice = new Writer(office);
    onPhone.add(added);
    const first = onPhone.add(renamed('Ana Ruíz', null));
    inOffice.add(renamed('Ana María Ruíz', first));
    const record = folded<PersonRecord>(person, together(onPhone, inOffice));
    expect(record.name).toBe('Ana María Ruíz');
    expect(record.strikes.map((strike) => [strike.old, strike.new])).toEqual([
      ['Ana Ruiz', 'Ana Ruíz'],
      ['Ana Ruíz', 'Ana María Ruíz'],
    ]);
  });

  test('a phone set years ahead does not win over a name that was written knowing of its own', () => {
    const ahead = new Writer('yyyyyyyyyyyy', '2031-01-01');
    const onPhone = new Writer(phone);
    onPhone.add(added);
    const early = ahead.add(renamed('A. Ruiz', null));
    onPhone.add(renamed('Ana Ruíz', early));
    expect(folded<PersonRecord>(person, together(onPhone, ahead)).name).toBe('Ana Ruíz');
  });
});
