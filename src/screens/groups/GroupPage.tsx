/** One task group: what is presumed or measured, how the work is done, who does it, and whom each measurement stands for. */
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { standsFor } from '#findings/duties/groups/standsFor.ts';
import type { TaskGroup } from '#findings/duties/groups/taskGroup.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { findPresumption } from '#findings/presumption.ts';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { en as fitting } from '#words/fitting.ts';
import { en as words } from '#words/groups.ts';
import { averageText, groupName, measurementsOfGroup, standingOf } from './groupText.ts';
import { termsInWords } from './termsInWords.ts';

export interface GroupPageProps {
  readonly book: Book;
  readonly found: DutiesOfBook;
  readonly groupKey: string;
}

export function GroupPage({ book, found, groupKey }: GroupPageProps) {
  const group = found.groups.get(groupKey);
  if (group === undefined)
    return (
      <Page heading={words.heading} back="/groups" backText={words.back}>
        <p>{words.gone}</p>
      </Page>
    );
  const measurements = measurementsOfGroup(groupKey, found);
  const terms = termsInWords(group, book);
  return (
    <Page
      heading={groupName(group, book)}
      over={words.detail(group.workerIds.length, group.days.length, group.lastOn)}
      back="/groups"
      backText={words.back}
      aside={
        <>
          <section>
            <h2>{words.terms}</h2>
            {terms === null ? <p>{words.termsNone}</p> : <Particulars items={terms} />}
          </section>
          <Workers group={group} book={book} />
        </>
      }
    >
      <p>
        <strong>{standingOf(groupKey, found)}</strong>
      </p>
      {!measurements.some(({ provesNotAbovePel }) => provesNotAbovePel) && <Presumed group={group} book={book} />}
      <Lines heading={words.measurements} whenEmpty={words.measurementsNone}>
        {measurements.map((each) => (
          <MeasurementLine key={each.id} measurement={each} book={book} found={found} />
        ))}
      </Lines>
    </Page>
  );
}

const microgram = (level: { readonly value: number; readonly unit: string } | null): string =>
  level === null ? '' : `${level.value}\u00a0${level.unit}`;

function Presumed({ group, book }: { readonly group: TaskGroup; readonly book: Book }) {
  const paintLead = book.shifts.get(group.days.at(-1)?.shiftId ?? '')?.conditions?.paintLead ?? null;
  const { presumedTextKey, presumedAbove, presumedUpTo } = findPresumption(group.taskIds, paintLead);
  return (
    <section>
      <h2>{words.presumed}</h2>
      <p>{fitting.presumed[presumedTextKey](microgram(presumedAbove), microgram(presumedUpTo))}</p>
    </section>
  );
}

function Workers({ group, book }: { readonly group: TaskGroup; readonly book: Book }) {
  return (
    <Lines heading={words.workers}>
      {group.workerIds.map((id) => {
        const days = group.days.filter(({ workerId }) => workerId === id);
        const person = book.people.get(id);
        return (
          <Line key={id} detail={words.workerDays(days.length, days.at(-1)?.workOn ?? '')}>
            {words.employer(person?.name ?? words.someone, person?.employer ?? null)}
          </Line>
        );
      })}
    </Lines>
  );
}

interface MeasurementLineProps {
  readonly measurement: Measurement;
  readonly book: Book;
  readonly found: DutiesOfBook;
}

function MeasurementLine({ measurement, book, found }: MeasurementLineProps) {
  const { id, from, workerId, workOn } = measurement;
  const nameOf = (person: string | null): string => book.people.get(person ?? '')?.name ?? words.someone;
  const days = [...found.groups.values()].flatMap((group) => group.days);
  const others = standsFor(measurement, book, days).filter((person) => person !== workerId);
  const isOurs = from === 'sampled';
  return (
    <>
      <Line
        to={isOurs ? `/day/${id}` : `/reported?correct=${id}`}
        detail={`${words.standsFor(others.map(nameOf))}${isOurs ? '' : `; ${words.reported}`}`}
      >
        {words.measurement(nameOf(workerId), workOn, averageText(measurement))}
      </Line>
      {isOurs && <Line to={`/groups?stands=${encodeURIComponent(id)}`}>{words.standsToo}</Line>}
    </>
  );
}
