/** Two steps that the practice book takes again and again: a flow check with a steady reading, and a fitting with every point met. */
import type { NewFact } from '#records/fact.ts';
import type { PracticeIds } from './practiceBook.ts';
import type { PracticeClock } from './practiceClock.ts';

export const practiceCheck =
  (ids: PracticeIds, { fact }: PracticeClock, shiftId: string) =>
  (at: string, pumpId: string, purpose: 'before' | 'after' | 'between', readings: readonly number[]): NewFact =>
    fact(at, 'flowChecked.v1', {
      flowCheckId: `${pumpId.slice(0, 4)}${idOfMoment(at)}`,
      shiftId,
      pumpId,
      meterId: ids.piston,
      lotId: ids.lot,
      inLine: 'representativeCassette',
      purpose,
      readings: readings.map((flow) => ({ lowLPerMin: flow, highLPerMin: flow })),
      temperatureC: null,
      pressureKPa: null,
      remark: null,
    });

/** Eight digits of the moment: with the pump's own letters a record id. */
const idOfMoment = (at: string): string => at.replace(/\D/g, '').slice(4, 12);

export const practiceFitting = (
  { fact }: PracticeClock,
  at: string,
  sampleId: string,
  initials: string,
  language: 'en' | 'es',
): NewFact =>
  fact(at, 'fittingChecked.v1', {
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
    initials,
    language,
  });
