/**
 * The office, with one worker beside the desk or on the telephone: when this worker is measured next, which days count, what was told,
 * which records there are. Afterwards the record that was asked for is one tap away.
 */
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import type { Book, PersonRecord } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { restsLines } from '#words/gearLines.ts';
import { en as words } from '#words/person.ts';
import { Courses } from './Courses.tsx';
import { DaysAtOrAbove } from './DaysAtOrAbove.tsx';
import { measuredDays, noticesOfPerson } from './people.ts';
import { Respirators } from './Respirators.tsx';

export function Person({ personId = '' }: { readonly personId?: string }) {
  const found = useFoundInBook(findDutiesInSteps, dayOf(now(), deviceZone()));
  if (found === undefined)
    return (
      <Page heading={words.heading} back="/person">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const { book, found: duties } = found;
  const person = book.people.get(personId);
  if (person === undefined)
    return (
      <Page
        heading={words.gone.heading}
        back="/person"
        action={<MainAction to="/person">{words.gone.action}</MainAction>}
      >
        <p>{words.gone.text}</p>
      </Page>
    );
  return <OnePerson person={person} duties={duties} book={book} />;
}

interface OnePersonProps {
  readonly person: PersonRecord;
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

function OnePerson({ person, duties, book }: OnePersonProps) {
  const { employer, employed } = person;
  const open = duties.duties.filter(({ done, workerIds }) => done === null && workerIds.includes(person.id));
  const over = [
    employer === null ? (book.book?.firmName ?? '') : words.ofEmployer(employer),
    ...(employed ? [words.employed(employed.fromOn, employed.toOn)] : []),
  ].join(', ');
  const shared = { personId: person.id, duties, book };
  return (
    <Page
      heading={person.name}
      over={over}
      back="/person"
      action={<MainAction to={`/todo?person=${person.id}`}>{words.toDo(open.length)}</MainAction>}
      aside={
        <>
          <NoticesTold {...shared} />
          <Records {...shared} />
        </>
      }
    >
      <RestsOn lines={restsLines(gearDoubtsOfPaper({ kind: 'measurements', ids: daysOf(shared) }, book))} />
      <Courses {...shared} />
      <DaysAtOrAbove {...shared} />
      <Respirators {...shared} />
    </Page>
  );
}

interface OfPerson {
  readonly personId: string;
  readonly duties: DutiesOfBook;
  readonly book: Book;
}

/** The worker's own measured days. */
const daysOf = ({ personId, duties, book }: OfPerson): readonly string[] =>
  measuredDays(personId, duties, book).map(({ measurement }) => measurement.id);

function NoticesTold({ personId, duties, book }: OfPerson) {
  const text = words.notices;
  return (
    <Lines heading={text.heading} whenEmpty={text.none}>
      {noticesOfPerson(personId, duties).map(({ measurementId, openIds, overdue, toldLate, dueOn }) => {
        const measurement = duties.measurements.get(measurementId);
        const day = words.records.line(measurement?.workOn ?? dueOn);
        const other =
          measurement?.workerId === personId ? undefined : book.people.get(measurement?.workerId ?? '')?.name;
        const due = words.records.line(dueOn);
        const open = openIds.includes(personId);
        return (
          <Line
            key={measurementId}
            to={`/notice/${encodeURIComponent(measurementId)}`}
            detail={other === undefined ? undefined : text.carriedBy(other)}
          >
            {open
              ? overdue
                ? text.overdue(day, due)
                : text.open(day, due)
              : toldLate
                ? text.toldLate(day)
                : text.told(day)}
          </Line>
        );
      })}
    </Lines>
  );
}

function Records({ personId, duties, book }: OfPerson) {
  const text = words.records;
  return (
    <Lines heading={text.heading} whenEmpty={text.none}>
      {measuredDays(personId, duties, book).map(({ measurement, issuedCount }) => (
        <Line
          key={measurement.id}
          to={`/exposure-record/${measurement.id}`}
          detail={[text.asPdf, ...(issuedCount > 0 ? [text.issued(issuedCount)] : [])].join(', ')}
        >
          {text.line(measurement.workOn)}
        </Line>
      ))}
    </Lines>
  );
}
