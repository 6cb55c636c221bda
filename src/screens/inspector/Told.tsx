/** Notices of results and written determinations of the site. */
import type { InspectorView } from '#findings/duties/list/inspector.ts';
import type { NoticeOwed } from '#findings/duties/telling/notice.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/inspector.ts';
import { formatDay, inSentence } from '#words/quantity.ts';

const day = (on: string): string => formatDay(on, 'en', 'weekday');

export function Told({ view }: { readonly view: InspectorView }) {
  const measuredOn = (id: string): string => day(view.measurements.find((one) => one.id === id)?.workOn ?? '');
  const carriedBy = (id: string): string | null => {
    const workerId = view.measurements.find((one) => one.id === id)?.workerId;
    const name = view.people.find((one) => one.id === workerId)?.name;
    return name === undefined ? null : words.carriedBy(name);
  };
  return (
    <>
      <Lines heading={words.notices} whenEmpty={words.noticesNone}>
        {view.notices.map((notice) => (
          <Line
            key={notice.measurementId}
            detail={[carriedBy(notice.measurementId), howTold(notice)].filter(Boolean).join('; ')}
          >
            {words.notice(measuredOn(notice.measurementId), notice.toldIds.length, notice.affectedIds.length)}
          </Line>
        ))}
      </Lines>
      <Lines heading={words.determinations} whenEmpty={words.determinationsNone}>
        {view.determinations.map((one) => (
          <Line key={one.groupKey} detail={howDetermined(one)}>
            {tasksOf(one.groupKey)}
          </Line>
        ))}
      </Lines>
    </>
  );
}

function howTold({ openIds, overdue, toldLate, dueOn }: NoticeOwed): string | undefined {
  if (openIds.length > 0) return overdue ? words.noticeOverdue(day(dueOn)) : words.noticeDue(day(dueOn));
  return toldLate ? words.noticeLate : undefined;
}

function howDetermined({ outcome, writtenId, differsFromRecord }: InspectorView['determinations'][number]): string {
  if (writtenId === null) return words.outcome[outcome];
  if (differsFromRecord) return words.outcome.differs;
  return outcome === 'positive' ? words.outcome.positiveWritten : words.outcome.negativeWritten;
}

/** The tasks in a group's key (findings/duties/groups/taskGroup.ts). */
const tasksOf = (groupKey: string): string =>
  (groupKey.split('|')[2] ?? '')
    .split('+')
    .map((id, at) => (at === 0 ? (taskById(id)?.en ?? id) : inSentence(taskById(id)?.en ?? id)))
    .join(', ');
