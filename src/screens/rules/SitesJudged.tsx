/** For each site of the book: by whose rule its days are judged today. */
import { dayOf } from '#core/calendar.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { SiteRecord } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { stateByCode } from '#reference/states.ts';
import { deviceZone, now } from '#store/device.ts';
import { en as words } from '#words/limitsBeside.ts';
import { en as wear } from '#words/wear.ts';

export function SitesJudged({ sites }: { readonly sites: readonly SiteRecord[] }) {
  const today = dayOf(now(), deviceZone());
  if (sites.length === 0) return null;
  return (
    <Lines heading={words.judges}>
      {sites.map(({ id, name, stateCode }) => {
        const here = limitSetOn(today, stateCode);
        const state = stateByCode(stateCode)?.name ?? stateCode;
        return (
          <Line key={id} detail={wear.governs[here.governs](state)} end={here.set.document}>
            {words.siteLine(name, state)}
          </Line>
        );
      })}
    </Lines>
  );
}
