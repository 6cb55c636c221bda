/** Which respirator is enough for each kind of task that this worker does: by the last result, or by what is presumed. */
import type { RespiratorAdvice } from '#findings/duties/protecting/respirator.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { en } from '#words/person.ts';
import { wornText } from '#words/worn.ts';
import type { OfPersonProps } from './Courses.tsx';
import { groupsOfPerson, groupText } from './people.ts';
import styles from './person.module.css';
import { adviceFor } from './respiratorHere.ts';

const words = en.respirator;
/** A factor as the table prints it; a plain count, no quantity. */
const factor = (apf: number | null): string => (apf === null ? '' : String(apf));

export function Respirators(props: OfPersonProps) {
  const groups = groupsOfPerson(props.personId, props.duties);
  return (
    <section className={styles.section}>
      <Lines heading={words.heading} whenEmpty={words.none}>
        {groups.map((groupKey) => {
          const { advice, measurement } = adviceFor(groupKey, props);
          return (
            <Line key={groupKey} detail={detailOf(advice)}>
              {`${groupText(groupKey, props.book)}: ${sentenceOf(advice, measurement?.workOn ?? null)}`}
            </Line>
          );
        })}
      </Lines>
      {groups.length > 0 && <p className={styles.quiet}>{words.conditions}</p>}
    </section>
  );
}

function sentenceOf(advice: RespiratorAdvice, measuredOn: string | null): string {
  if (advice.beyond) return words.beyond;
  if (advice.from === 'notNeededByResult') return words.from.notNeededByResult;
  if (advice.leastApf === null)
    return advice.floorApf === null ? words.from.notNeededByResult : words.noFactor(factor(advice.floorApf));
  const from = advice.from === 'result' && measuredOn !== null ? words.byResultOf(measuredOn) : words.from[advice.from];
  return `${words.least(factor(advice.leastApf))}, ${from}`;
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
