/** Tomorrow at the library, as it was said this evening: who wears what, what lies ready beside it, and labels whose numbers are taken. */
import { addDays } from '#core/calendar.ts';
import type { NewFact } from '#records/fact.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { PracticeClock } from '../practiceClock.ts';
import type { SeasonIds } from './seasonIds.ts';
import { walls } from './seasonPlan.ts';

/** After everything else, so that the numbers of its labels follow those of today. */
export function seasonTomorrow(ids: SeasonIds, { ago, fact, today }: PracticeClock): NewFact[] {
  const shiftId = `${ids.site}.${addDays(today, 1)}`;
  const label = (workerId: string | null, blank = false) => ({ sampleNumber: '', workerId, blank });
  return [
    fact(ago(12), 'dayPrepared.v1', {
      ...{ shiftId, asked: 'evening' },
      wearers: [
        {
          ...{ workerId: ids.dora, planId: ids.planWalls, taskIds: [...walls], jobClassificationId: ids.painter },
          ...{ pumpId: ids.pumpTwo, lotId: ids.newLot },
        },
        {
          ...{ workerId: ids.first, planId: ids.planTakeOut, taskIds: ['windowTakeOut'] },
          ...{ jobClassificationId: ids.restorer, pumpId: ids.pumpThree, lotId: ids.newLot },
        },
      ],
      ...{ sparePumpIds: [ids.pumpSeven], spareCassettesCount: 2, chargedById: ids.supervisor },
      remark: words.ahead.remark,
    }),
    fact(ago(8), 'labelsMade.v1', {
      shiftId,
      labels: [label(ids.dora), label(ids.first), label(null), label(null), label(null, true), label(null, true)],
    }),
  ];
}
