/** What the rule presumes of the work, because of which task, under which paragraph, and what in it is our own reading. */
import type { FirstDay } from '#findings/duties/protecting/firstDay.ts';
import { isCitable } from '#reference/source.ts';
import { taskById } from '#reference/tasks.ts';
import { formatInWorking } from '#words/quantity.ts';
import { en } from '#words/wear.ts';
import styles from './wear.module.css';

const words = en.answer;

export function PresumedLevel({ first }: { readonly first: FirstDay }) {
  const { presumption, levels } = first;
  const { presumedTextKey, becauseTaskIds, mapping, leadTakenAsPresent, sources } = presumption;
  const [tierSource] = sources;
  const tasks = becauseTaskIds.map((id) => taskById(id)?.en ?? id);
  const limit = (level: number | null): string => (level === null ? '' : formatInWorking(level, 'µg/m³'));
  return (
    <section className={styles.presumed}>
      <p className={styles.strong}>
        {levels.ofState && levels.aboveUgPerM3 !== null
          ? words.takenAs(limit(levels.aboveUgPerM3), limit(levels.upToUgPerM3))
          : words.presumed[presumedTextKey](limit(levels.aboveUgPerM3), limit(levels.upToUgPerM3))}
      </p>
      <p>{words.because(tasks)}</p>
      {mapping === 'open' && <p>{words.open}</p>}
      {leadTakenAsPresent && presumption.tier !== 'none' && <p>{words.leadTaken}</p>}
      <p className={styles.source}>
        {levels.ofState
          ? words.levelsOfState
          : tierSource && isCitable(tierSource)
            ? words.cited(tierSource.title, tierSource.section ?? '', tierSource.edition ?? '')
            : ''}{' '}
        {sources.slice(1).some((source) => !isCitable(source)) &&
          (mapping === 'notListed' ? words.ownReadingNone : words.ownReading)}
      </p>
    </section>
  );
}
