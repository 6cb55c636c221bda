/**
 * The office with a report in hand that is not of our own sampling: what was reported is listed, newest first, each marked as without
 * flow readings of our own; a new one is written down, and one that was mistyped is put right with its reason.
 */
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book, ReportedRecord } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta, useNow } from '#store/hooks.ts';
import { inSentence } from '#words/quantity.ts';
import { en as words } from '#words/reported.ts';
import { ReportedForm } from './ReportedForm.tsx';

const minute = 60_000;
const path = '/reported';

export function Reported() {
  const today = dayOf(useNow(minute), deviceZone());
  const read = useFoundInBook(findDutiesInSteps, today);
  const meta = useBookMeta();
  const asked = new URLSearchParams(useSearch());
  if (read === undefined || meta === undefined) return <Page heading={words.heading} />;
  const { book } = read;
  const id = asked.get('correct');
  const reported = id === null ? null : (book.reported.get(id) ?? null);
  if (id !== null && reported === null)
    return (
      <Page heading={words.heading} back={path}>
        <p>{words.gone}</p>
      </Page>
    );
  if (reported !== null || asked.has('add'))
    return (
      <ReportedForm
        key={id ?? 'new'}
        book={book}
        reported={reported}
        today={today}
        by={meta.holderPersonId}
        back={path}
      />
    );
  return (
    <Page heading={words.heading} action={<MainAction to={`${path}?add=1`}>{words.add}</MainAction>}>
      <p>{words.intro}</p>
      <Lines heading={words.list} whenEmpty={words.none}>
        {newestFirst(book).map((each) => (
          <Line
            key={each.id}
            to={`${path}?correct=${each.id}`}
            detail={words.detail(each.from, each.fromName, words.value(each.average))}
          >
            {words.line(workerOf(each, book), tasksOf(each), each.workOn)}
          </Line>
        ))}
      </Lines>
    </Page>
  );
}

const newestFirst = (book: Book): readonly ReportedRecord[] =>
  [...book.reported.values()].sort((a, b) => b.workOn.localeCompare(a.workOn) || a.id.localeCompare(b.id));

const workerOf = ({ workerId }: ReportedRecord, book: Book): string =>
  book.people.get(workerId ?? '')?.name ?? words.notInBook;

const tasksOf = ({ taskIds }: ReportedRecord): readonly string[] =>
  taskIds.map((id) => inSentence(taskById(id)?.en ?? id));
