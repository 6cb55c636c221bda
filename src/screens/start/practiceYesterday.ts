/** Yesterday in the practice book: two workers' whole shift, one of them with a cassette change at lunch, and the blanks of the day. */
import type { NewFact } from '#records/fact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { practice as words } from '#words/practice.ts';
import type { PracticeIds } from './practiceBook.ts';
import type { PracticeClock } from './practiceClock.ts';
import { practiceCheck, practiceFitting } from './practiceSteps.ts';

export function practiceYesterday(ids: PracticeIds, clock: PracticeClock): NewFact[] {
  const { at, fact, yesterday: workOn } = clock;
  const shiftId = `${ids.site}.${workOn}`;
  const check = practiceCheck(ids, clock, shiftId);
  const prepare = (time: string, sampleId: string, worker: 'first' | 'second', follows: string | null): NewFact =>
    fact(at(time), 'samplePrepared.v1', {
      sampleId,
      sampleNumber: nextFreeNumber,
      shiftId,
      workerId: ids[worker],
      pumpId: worker === 'first' ? ids.pumpOne : ids.pumpTwo,
      lotId: ids.lot,
      taskIds: worker === 'first' ? ['windowTakeOut', 'puttyRemoval'] : ['handScraping', 'wetSanding'],
      jobClassificationId: worker === 'first' ? ids.restorer : ids.painter,
      follows,
    });
  const look = (time: string, sampleId: string): NewFact =>
    fact(at(time), 'pumpLookedAt.v1', { sampleId, running: true, inPlace: true, remark: null });
  const stop = (time: string, sampleId: string, pumpMin: number): NewFact =>
    fact(at(time), 'pumpStopped.v1', { sampleId, pumpMin });
  const seal = (time: string, sampleId: string): NewFact =>
    fact(at(time), 'cassetteSealed.v1', {
      sampleId,
      labelled: true,
      lockedIn: words.lockedIn,
      lockedById: ids.supervisor,
    });
  const blank = (time: string, sampleId: string): NewFact =>
    fact(at(time), 'blankOpened.v1', {
      sampleId,
      sampleNumber: nextFreeNumber,
      shiftId,
      lotId: ids.lot,
      openedWhere: words.blankWhere,
    });
  return [
    fact(at('06:40'), 'shiftOpened.v1', { shiftId, siteId: ids.site, workOn }),
    check(at('06:48'), ids.pumpOne, 'before', [2.54, 2.55, 2.56]),
    check(at('06:53'), ids.pumpTwo, 'before', [2.08, 2.1, 2.09]),
    prepare('06:58', ids.morning, 'first', null),
    practiceFitting(clock, at('07:06'), ids.morning, words.initials.first, 'en'),
    fact(at('07:12'), 'pumpPutOn.v1', { sampleId: ids.morning }),
    prepare('07:01', ids.wholeDay, 'second', null),
    practiceFitting(clock, at('07:16'), ids.wholeDay, words.initials.second, 'es'),
    fact(at('07:20'), 'pumpPutOn.v1', { sampleId: ids.wholeDay }),
    look('09:05', ids.morning),
    look('09:10', ids.wholeDay),
    blank('10:02', ids.blankOne),
    look('10:58', ids.morning),
    stop('11:31', ids.morning, 259),
    fact(at('11:33'), 'pumpTakenOff.v1', {
      sampleId: ids.wholeDay,
      stillRunning: false,
      awayFromLead: true,
      reason: words.lunch,
    }),
    check(at('11:40'), ids.pumpOne, 'between', [2.52, 2.53, 2.51]),
    seal('11:44', ids.morning),
    prepare('11:50', ids.afternoon, 'first', ids.morning),
    practiceFitting(clock, at('12:00'), ids.afternoon, words.initials.first, 'en'),
    fact(at('12:04'), 'pumpPutOn.v1', { sampleId: ids.afternoon }),
    fact(at('12:06'), 'pumpPutBackOn.v1', { sampleId: ids.wholeDay }),
    look('13:55', ids.afternoon),
    look('14:00', ids.wholeDay),
    blank('14:20', ids.blankTwo),
    stop('15:30', ids.wholeDay, 457),
    stop('15:36', ids.afternoon, 212),
    check(at('15:46'), ids.pumpOne, 'after', [2.49, 2.5, 2.5]),
    check(at('15:52'), ids.pumpTwo, 'after', [1.96, 1.97, 1.96]),
    seal('15:56', ids.afternoon),
    seal('15:58', ids.wholeDay),
    fact(at('16:02'), 'conditionsNoted.v1', {
      shiftId,
      tool: 'hand',
      method: 'mixed',
      dustCollection: 'none',
      containment: 'partial',
      ventilation: 'natural',
      weather: 'indoors',
      paintLead: 'tested',
      area: 'room',
      remark: null,
    }),
    ...practiceDays(ids, clock),
  ];
}

/** Pia's day is whole and longer than eight hours; twenty minutes of Otto's are left for whoever practises. */
function practiceDays(ids: PracticeIds, { at, fact, yesterday }: PracticeClock): NewFact[] {
  const first = `${ids.first}.${yesterday}`;
  const second = `${ids.second}.${yesterday}`;
  const piece = (from: string, to: string) => ({ startedAt: at(from), endedAt: at(to), place: null, employer: null });
  const away = (from: string, to: string, reason: string): NewFact =>
    fact(at('16:10'), 'minutesExplained.v1', {
      workdayId: first,
      fromAt: at(from),
      toAt: at(to),
      as: 'away',
      sampleId: null,
      reason,
    });
  const asked = (workdayId: string): NewFact[] => [
    fact(at('16:12'), 'otherWorkAsked.v1', { workdayId, callOut: 'no', secondSite: 'no', secondEmployer: 'no' }),
    fact(at('16:13'), 'dayDescribed.v1', { workdayId, regular: 'yes', reason: null }),
  ];
  return [
    fact(at('16:06'), 'workHoursStated.v1', {
      workdayId: first,
      pieces: [piece('07:00', '11:31'), piece('12:04', '15:45')],
    }),
    fact(at('16:07'), 'workHoursStated.v1', {
      workdayId: second,
      pieces: [piece('07:00', '11:33'), piece('12:06', '15:30')],
    }),
    away('07:00', '07:12', words.settingUp),
    away('15:36', '15:45', words.washingUp),
    ...asked(first),
    ...asked(second),
  ];
}
