/**
 * The supervisor, any time of the day: one site's day on one page, in the order of the day. Each line says how it stands and leads to
 * where it is done; the foot offers what is due first.
 */
import { lazy, Suspense } from 'react';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { useKeeping } from '#store/hooks/useKeeping.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/shift.ts';
import { AfterLines } from './AfterLines.tsx';
import { BeforeLines } from './BeforeLines.tsx';
import { DayLines } from './DayLines.tsx';
import { NextAction } from './NextAction.tsx';
import { OnWorkerLines } from './OnWorkerLines.tsx';
import { useShift } from './useShift.ts';

/** Only where the day was made ready beforehand. */
const ReadyDay = lazy(async () => ({ default: (await import('./ReadyDay.tsx')).ReadyDay }));

export function Shift({ shiftId = '' }: { readonly shiftId?: string }) {
  const day = useShift(shiftId);
  const keeping = useKeeping();
  if (day === undefined) return null;
  if (day === null)
    return (
      <Page heading={words.noShiftHeading} back="/" action={<MainAction to="/">{words.toToday}</MainAction>}>
        <p>{words.noShift}</p>
      </Page>
    );
  // Until it is known, nothing is said of files: an action that changes under the thumb is worse than one that comes late.
  const lastSentAt = keeping === undefined ? day.place.now : keeping.lastSentAt;
  const { site, shift } = day.place;
  return (
    <Page
      heading={words.heading(site.name)}
      over={formatDay(shift.workOn, 'en', 'weekday')}
      back="/"
      backText={words.toToday}
      aside={<DayLines day={day} lastSentAt={lastSentAt} />}
      action={<NextAction day={day} lastSentAt={lastSentAt} />}
    >
      {day.book.dayPlans.has(shift.id) && (
        <Suspense fallback={null}>
          <ReadyDay day={day} />
        </Suspense>
      )}
      <BeforeLines day={day} />
      <OnWorkerLines day={day} />
      <AfterLines day={day} />
    </Page>
  );
}
