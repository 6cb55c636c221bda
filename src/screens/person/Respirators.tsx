/** Which respirator is enough for each kind of task that this worker does: by the last result, or by what is presumed. */
import type { RespiratorAdvice } from '#findings/duties/respirator.ts';
import { respiratorFor } from '#findings/duties/respirators.ts';
import { findPresumption } from '#findings/presumption.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { en } from '#words/person.ts';
import { wornText } from '#words/worn.ts';
import type { OfPersonProps } from './Courses.tsx';
import { coursesOfPerson, groupsOfPerson, groupText, partsOfGroup } from './people.ts';
import styles from './person.module.css';

const words = en.respirator;
/** A factor as the table prints it; a plain count, no quantity. */
const factor = (apf: number | null): string => (apf === null ? '' : String(apf));

export function Respirators(props: OfPersonProps) {
  const groups = groupsOfPerson(props.personId, props.duties);
  return (
    <section className={styles.section}>
      <Lines heading={words.heading} whenEmpty={words.none}>
        {groups.map((groupKey) => {
          const advice = adviceFor(groupKey, props);
          return (
            <Line key={groupKey} detail={detailOf(advice)}>
              {`${groupText(groupKey, props.book)}: ${sentenceOf(advice)}`}
            </Line>
          );
        })}
      </Lines>
      {groups.length > 0 && <p className={styles.quiet}>{words.conditions}</p>}
    </section>
  );
}

/** The state in which the tasks were done last decides whose limits hold. */
function stateOf(groupKey: string, { duties, book }: OfPersonProps): string {
  const siteId = duties.groups.get(groupKey)?.days.at(-1)?.siteId;
  return book.sites.get(siteId ?? '')?.stateCode ?? '';
}

function adviceFor(groupKey: string, props: OfPersonProps): RespiratorAdvice {
  const { duties, book, personId } = props;
  const course = coursesOfPerson(personId, duties).find((one) => one.groupKey === groupKey);
  const measurement = duties.measurements.get(course?.lastMeasurementId ?? '') ?? null;
  return respiratorFor({
    measurement,
    presumption: findPresumption(partsOfGroup(groupKey).taskIds),
    limits: measurement?.limits ?? limitSetOn(duties.today, stateOf(groupKey, props)),
    ownPelUgPerM3: ownPel(book),
  });
}

const ownPel = (book: Book): number | null => book.book?.limits?.ownPelUgPerM3 ?? null;

function sentenceOf(advice: RespiratorAdvice): string {
  if (advice.beyond) return words.beyond;
  if (advice.from === 'notNeededByResult') return words.from.notNeededByResult;
  if (advice.leastApf === null)
    return advice.floorApf === null ? words.from.notNeededByResult : words.noFactor(factor(advice.floorApf));
  return `${words.least(factor(advice.leastApf))}, ${words.from[advice.from]}`;
}

function detailOf({ choices, unbounded, byOwnLimit, leastApf }: RespiratorAdvice): string | undefined {
  const [least] = choices;
  const parts = [
    ...(least === undefined || leastApf === null ? [] : [words.choices(wornText(least))]),
    ...(unbounded ? [words.unbounded] : []),
    ...(byOwnLimit ? [words.byOwnLimit] : []),
  ];
  return parts.length === 0 ? undefined : parts.join('. ');
}
