/** Who works at the site, on which days, and what was worn. */
import type { InspectorView } from '#findings/duties/list/inspector.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { respirators } from '#reference/respirators.ts';
import { en as words } from '#words/inspector.ts';
import { formatDay } from '#words/quantity.ts';
import { noneWorn, wornText } from '#words/worn.ts';

export function Who({ view }: { readonly view: InspectorView }) {
  return (
    <>
      <Lines heading={words.people} whenEmpty={words.peopleNone}>
        {view.people.map(({ id, name, identifier, employer }) => (
          <Line
            key={id}
            detail={
              [identifier, employer === null ? null : words.ofEmployer(employer)].filter(Boolean).join(', ') ||
              undefined
            }
          >
            {name}
          </Line>
        ))}
      </Lines>
      {view.elsewhereCount > 0 && <p>{words.elsewhere(view.elsewhereCount)}</p>}
      <Lines heading={words.respirators} whenEmpty={words.respiratorsNone}>
        {wornBy(view).map(([worn, names]) => (
          <Line key={worn}>{words.respiratorLine(worn, names.join(', '))}</Line>
        ))}
      </Lines>
      <Lines heading={words.days}>
        {byMonth(view).map(([month, shifts]) => {
          const crews = shifts.map(({ days }) => new Set(days.map(({ workerId }) => workerId)).size);
          return (
            <Line key={month} detail={shifts.map(({ workOn }) => String(Number(workOn.slice(8)))).join(', ')}>
              {words.month(monthName(month), shifts.length, Math.min(...crews), Math.max(...crews))}
            </Line>
          );
        })}
      </Lines>
    </>
  );
}

/** 'October 2026', of '2026-10' */
const monthName = (month: string): string => formatDay(`${month}-01`).replace(/^1 /, '');

/** Newest month first; in it the days as they follow each other. */
function byMonth({ shifts }: InspectorView): readonly (readonly [string, InspectorView['shifts']])[] {
  const months = new Map<string, InspectorView['shifts'][number][]>();
  for (const shift of shifts) {
    const month = shift.workOn.slice(0, 7);
    months.set(month, [shift, ...(months.get(month) ?? [])]);
  }
  return [...months];
}

const nameOf = (id: string): string => {
  const found = respirators().find((one) => one.id === id);
  return found === undefined ? (id === 'none' ? noneWorn.en : id) : wornText(found);
};

/** What was noted as worn, and by whom. */
function wornBy({ shifts, people }: InspectorView): readonly (readonly [string, readonly string[]])[] {
  const found = new Map<string, Set<string>>();
  for (const { days } of shifts)
    for (const { respirator, workerId } of days) {
      if (respirator === null) continue;
      const names = found.get(nameOf(respirator)) ?? new Set<string>();
      names.add(people.find(({ id }) => id === workerId)?.name ?? words.someWorker);
      found.set(nameOf(respirator), names);
    }
  return [...found].map(([worn, names]) => [worn, [...names]] as const);
}
