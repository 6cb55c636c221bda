/** After keying in: what was written, and the way to each day that it belongs to. */
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { SampleRecord } from '#records/book.ts';
import type { Registers } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/results.ts';

/** No cassette waits. A revised report may come all the same. */
export function NothingWaits({ onAllTheSame }: { readonly onAllTheSame: () => void }) {
  return (
    <Page
      heading={words.heading}
      action={
        <>
          <MainAction to="/">{words.toToday}</MainAction>
          <QuietAction onClick={onAllTheSame}>{words.allTheSame}</QuietAction>
        </>
      }
    >
      <p>{words.empty}</p>
    </Page>
  );
}

export interface WrittenProps {
  readonly samples: readonly SampleRecord[];
  readonly registers: Registers;
  readonly onMore: () => void;
}

interface DayLine {
  readonly workdayId: string;
  readonly worker: string;
  readonly day: string;
}

export function Written({ samples, registers, onMore }: WrittenProps) {
  const days = new Map<string, DayLine>();
  for (const { workdayId, workerId, workOn } of samples) {
    if (workdayId === null) continue;
    const worker = registers.people.byId.get(workerId ?? '')?.name ?? '';
    days.set(workdayId, { workdayId, worker, day: formatDay(workOn, 'en', 'weekday') });
  }
  const lines = [...days.values()];
  const first = lines[0];
  return (
    <Page
      heading={words.done.heading(samples.length)}
      action={
        <>
          {first ? (
            <MainAction to={`/day/${first.workdayId}`}>{words.done.first(first.worker)}</MainAction>
          ) : (
            <MainAction to="/">{words.done.today}</MainAction>
          )}
          <QuietAction onClick={onMore}>{words.done.more}</QuietAction>
        </>
      }
    >
      <p role="status">{words.done.intro}</p>
      <Lines>
        {lines.map(({ workdayId, worker, day }) => (
          <Line key={workdayId} to={`/day/${workdayId}`}>
            {words.done.day(worker, day)}
          </Line>
        ))}
        <Line key="todo" to="/todo">
          {words.done.todo}
        </Line>
      </Lines>
    </Page>
  );
}
