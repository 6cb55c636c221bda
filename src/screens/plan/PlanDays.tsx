/** On which days, spread over the season; a day may stay open. */
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en } from '#words/planScreen.ts';
import type { PlanFields } from './fields.ts';
import styles from './plan.module.css';

const words = en.days;

export function PlanDays({ draft, onChange, errors, today }: PlanFields) {
  const { days } = draft;
  return (
    <section className={styles.part}>
      <h2>{words.heading}</h2>
      <TextField
        name="each"
        label={words.each}
        hint={words.eachHint}
        kind="digits"
        value={draft.each}
        onChange={(each) => onChange({ each })}
        error={errorOf(errors, 'each')}
      />
      {days.map((day, at) => (
        <DateField
          // biome-ignore lint/suspicious/noArrayIndexKey: a day that is being typed has no other name
          key={at}
          name={`day-${at}`}
          label={words.day(at + 1)}
          hint={words.dayHint}
          value={day}
          onChange={(text) => onChange({ days: days.map((each, i) => (i === at ? text : each)) })}
          today={today}
          error={errorOf(errors, `day-${at}`)}
        />
      ))}
      <div>
        <QuietAction onClick={() => onChange({ days: [...days, ''] })}>{words.add}</QuietAction>
      </div>
      <TextField
        name="season"
        label={words.season}
        hint={words.seasonHint}
        value={draft.season}
        onChange={(season) => onChange({ season })}
        error={errorOf(errors, 'season')}
      />
    </section>
  );
}
