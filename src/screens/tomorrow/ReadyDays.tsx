/** Days from today on that were made ready, and those that the plans name. */
import { plannedOn } from '#findings/season/plannedOn.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { en } from '#words/tomorrowScreen.ts';

const words = en.where;

export function ReadyDays({ book, today }: { readonly book: Book; readonly today: string }) {
  const ready = [...book.dayPlans.values()]
    .filter(({ workOn, prepared }) => workOn >= today && prepared !== null)
    .sort((a, b) => a.id.localeCompare(b.id));
  const isReady = new Set(ready.map(({ id }) => id));
  const days = [...new Set([...book.plans.values()].flatMap(({ slots }) => slots.map(({ workOn }) => workOn ?? '')))];
  const planned = days
    .filter((day) => day >= today)
    .sort()
    .flatMap((day) => [...book.sites.values()].map((site) => ({ site, day, id: `${site.id}.${day}` })))
    .map((each) => ({ ...each, count: plannedOn(book, each.day, each.site.id).length }))
    .filter(({ id, count }) => count > 0 && !isReady.has(id));
  return (
    <>
      <Lines heading={words.ready} whenEmpty={words.readyNone}>
        {ready.map(({ id, siteId, workOn, prepared }) => (
          <Line
            key={id}
            to={`/tomorrow/${id}`}
            detail={words.readyDetail(prepared?.wearers.length ?? 0, prepared?.asked ?? 'evening')}
          >
            {words.readyLine(book.sites.get(siteId)?.name ?? '', workOn)}
          </Line>
        ))}
      </Lines>
      {planned.length > 0 && (
        <Lines heading={words.plannedHeading}>
          {planned.map(({ id, site, day, count }) => (
            <Line key={id} to={`/tomorrow/${id}`} detail={words.planned(count)}>
              {words.readyLine(site.name, day)}
            </Line>
          ))}
        </Lines>
      )}
    </>
  );
}
