/** One invented worker's shift, written down twice: tapped on a phone at the moments themselves, and typed in the evening from paper. */
import { screen } from '@testing-library/react';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { openSession } from '#store/session.ts';
import { entry, type Library, sampleOf } from '#tests/store/scenario.ts';
import { put, type Stage, visit } from './stage.tsx';

const conditions = {
  tool: 'hand',
  method: 'dry',
  dustCollection: 'shroud',
  containment: 'partial',
  ventilation: 'natural',
  weather: 'indoors',
  paintLead: 'tested',
  area: 'room',
} as const;

const check = (day: Library, purpose: 'before' | 'after', readings: readonly (readonly [number, number])[]): NewFact =>
  newFact(
    'flowChecked.v1',
    {
      flowCheckId: newId(),
      shiftId: day.shiftId,
      pumpId: day.pumpId,
      meterId: day.meterId,
      lotId: day.lotId,
      inLine: 'representativeCassette',
      purpose,
      readings: readings.map(([lowLPerMin, highLPerMin]) => ({ lowLPerMin, highLPerMin })),
      temperatureC: null,
      pressureKPa: null,
      remark: null,
    },
    entry(),
  );

const fitting = {
  mode: 'fitted',
  points: {
    pumpSecured: true,
    tubingSecured: true,
    breathingZone: true,
    outsideRespirator: true,
    insideHelmet: null,
    inletDown: true,
    plugsOff: false,
    running: true,
  },
  observationOffered: true,
  initials: 'AQ',
  language: 'en',
} as const;

/** The shift as tapped, moment by moment. Answers the number of the cassette. */
export async function tapShift({ clock, day }: Stage): Promise<string> {
  const at = async (time: string, ...facts: readonly (() => NewFact)[]): Promise<void> => {
    clock.atMs = Date.parse(`2026-11-25T${time}:00.000-05:00`);
    await put(facts.map((fact) => fact()));
  };
  const sample = sampleOf(day);
  const workdayId = `${day.personId}.2026-11-25`;
  await at('06:00', () =>
    check(day, 'before', [
      [2.5, 2.6],
      [2.55, 2.55],
    ]),
  );
  const work = { taskIds: ['handScraping'], jobClassificationId: null };
  await at(
    '06:30',
    () => sample.prepared(entry()),
    () =>
      newFact('workNoted.v1', { workdayId, shiftId: day.shiftId, ...work, respirator: 'airPurifyingHalf' }, entry()),
  );
  await at('06:30', () => newFact('fittingChecked.v1', { sampleId: sample.sampleId, ...fitting }, entry()));
  await at('06:30', () => sample.putOn(entry()));
  await at('08:10', () => sample.lookedAt(entry()));
  await at('14:05', () => newFact('pumpStopped.v1', { sampleId: sample.sampleId, pumpMin: 455 }, entry()));
  await at('14:05', () =>
    newFact('conditionsNoted.v1', { shiftId: day.shiftId, ...conditions, remark: null }, entry()),
  );
  await at('14:05', () => newFact('dayDescribed.v1', { workdayId, regular: 'yes', reason: null }, entry()));
  await at('14:20', () => check(day, 'after', [[2.45, 2.5]]));
  await at('14:30', () => sample.sealed(entry()));
  const rows = await openSession()?.db.records.toArray();
  const row = rows?.find(({ kind }) => kind === 'sample');
  return (row?.record as { readonly sampleNumber?: string } | undefined)?.sampleNumber ?? '';
}

/** Field id -> text, as somebody types the same shift from its paper. */
export const paper = (sampleNumber: string): Readonly<Record<string, string>> => ({
  day: '11/25/2026',
  'before-time': '06:00',
  'before-reading-0-low': '2.5',
  'before-reading-0-high': '2.6',
  'before-reading-1-low': '2,55',
  number: sampleNumber,
  initials: 'AQ',
  'putOn-time': '0630',
  'look-0-time': '8:10',
  'stopped-time': '14:05',
  pumpMin: '455',
  'after-time': '2:20 pm',
  'after-reading-0-low': '2.45',
  'after-reading-0-high': '2.5',
  'sealed-time': '14:30',
  lockedIn: 'Van',
});

export const field = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no field ${id}`);
  return found;
};

/** Everything on the page but what a test leaves out or writes otherwise ('' leaves it empty). */
export async function typeForm(day: Library, sampleNumber: string, otherwise: Readonly<Record<string, string>> = {}) {
  const user = visit('/key-in');
  await screen.findByRole('heading', { level: 1, name: 'Key in a paper form' });
  const { siteId, meterId, lotId, personId, pumpId } = day;
  const gear = [`site-${siteId}`, `meter-${meterId}`, `lot-${lotId}`, `worker-${personId}`, `pump-${pumpId}`];
  for (const id of [...gear, 'tasks-handScraping', 'fitting-mode-fitted']) await user.click(field(id));
  const ticked = [
    'pumpSecured',
    'tubingSecured',
    'breathingZone',
    'outsideRespirator',
    'inletDown',
    'running',
    'offered',
  ];
  for (const point of ticked) await user.click(field(`fitting-points-${point}`));
  for (const [id, text] of Object.entries({ ...paper(sampleNumber), ...otherwise }))
    if (text !== '') {
      await user.click(field(id));
      await user.paste(text);
    }
  await user.selectOptions(field('respirator'), 'airPurifyingHalf');
  await user.click(field('labelled-yes'));
  for (const [key, value] of Object.entries(conditions)) await user.click(field(`${key}-${value}`));
  await user.click(field('regular-yes'));
  return user;
}

/** What differs between two books of the same shift by nature: drawn ids, and whether a moment was tapped or typed, by whom. */
const byNature = /^(id|key|sampleId|flowCheckId|entry|from|by|factIds|.*[fF]actId)$/;

function withoutNature(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutNature);
  if (typeof value !== 'object' || value === null) return value;
  const kept = Object.entries(value).filter(([name]) => !byNature.test(name));
  return Object.fromEntries(kept.map(([name, inner]) => [name, withoutNature(inner)]));
}

/** Every record of the shift, comparable from book to book. */
export async function recordsOfShift(): Promise<readonly string[]> {
  const rows = (await openSession()?.db.records.toArray()) ?? [];
  return rows
    .filter(({ kind }) => ['shift', 'flowCheck', 'sample', 'workday'].includes(kind))
    .map(({ kind, record }) => `${kind} ${JSON.stringify(withoutNature(record), null, 1)}`)
    .sort();
}
