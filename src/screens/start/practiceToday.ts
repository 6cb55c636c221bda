/** Today in the practice book: the shift is open, one worker is fitted and the pump runs. */
import type { NewFact } from '#records/fact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { practice as words } from '#words/practice.ts';
import type { PracticeIds } from './practiceBook.ts';
import type { PracticeClock } from './practiceClock.ts';
import { practiceCheck, practiceFitting } from './practiceSteps.ts';

export function practiceToday(ids: PracticeIds, clock: PracticeClock): NewFact[] {
  const { ago, fact, today: workOn } = clock;
  const shiftId = `${ids.site}.${workOn}`;
  const check = practiceCheck(ids, clock, shiftId);
  return [
    fact(ago(145), 'shiftOpened.v1', { shiftId, siteId: ids.site, workOn }),
    check(ago(140), ids.pumpOne, 'before', [2.53, 2.54, 2.54]),
    fact(ago(130), 'samplePrepared.v1', {
      sampleId: ids.today,
      sampleNumber: nextFreeNumber,
      shiftId,
      workerId: ids.first,
      pumpId: ids.pumpOne,
      lotId: ids.lot,
      taskIds: ['windowTakeOut'],
      jobClassificationId: ids.restorer,
      follows: null,
    }),
    practiceFitting(clock, ago(115), ids.today, words.initials.first, 'en'),
    fact(ago(105), 'pumpPutOn.v1', { sampleId: ids.today }),
  ];
}
