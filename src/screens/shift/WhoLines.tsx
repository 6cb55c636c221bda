/** Who works here today, and what is new at this job: asked before anyone enters. */
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { ShiftRecord } from '#records/book.ts';
import { changeKeys, en as jobStart } from '#words/jobStart.ts';
import { en as roster } from '#words/roster.ts';
import type { ShiftDay } from './useShift.ts';

function sentenceOf(changes: ShiftRecord['changes']): string {
  const words = jobStart.line;
  if (!changes) return words.none;
  const said = changeKeys.map((key) => changes[key]);
  return said.includes('yes') ? words.some : said.includes('notKnown') ? words.notKnown : words.nothing;
}

export function WhoLines({ day }: { readonly day: ShiftDay }) {
  const { book, place } = day;
  const shift = `/shift/${place.shift.id}`;
  const here = [...book.workdays.values()].filter(({ worked = [] }) =>
    worked.some(({ shiftId }) => shiftId === place.shift.id),
  );
  const done = <StandingMark standing="done" />;
  return (
    <Lines heading={roster.line.heading}>
      <Line to={`${shift}/roster`} detail={roster.line.detail} end={here.length > 0 ? done : undefined}>
        {here.length === 0 ? roster.line.none : roster.line.count(here.length)}
      </Line>
      <Line to={`${shift}/job-start`} detail={sentenceOf(place.shift.changes)}>
        {jobStart.line.heading}
      </Line>
    </Lines>
  );
}
