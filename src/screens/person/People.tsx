/** Everybody who is in the book: one of them is opened for dates, days, notices and records. */
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/person.ts';
import { en as todo } from '#words/todo.ts';

export function People() {
  const registers = useRegisters();
  if (registers === undefined) return <Page heading={words.heading} back="/todo" />;
  const people = registers.people.list;
  const jobs = registers.jobClassifications.byId;
  return (
    <Page
      heading={words.heading}
      over={words.over}
      back="/todo"
      action={<MainAction to="/todo">{todo.one.back}</MainAction>}
    >
      <Lines whenEmpty={words.none}>
        {people.map(({ id, name, employer, jobClassificationId }) => {
          const job = jobs.get(jobClassificationId ?? '')?.name;
          const detail = [job, employer === null ? undefined : words.ofEmployer(employer)].filter(Boolean).join(', ');
          return (
            <Line key={id} to={`/person/${id}`} detail={detail === '' ? undefined : detail}>
              {name}
            </Line>
          );
        })}
      </Lines>
    </Page>
  );
}
