/** Eight taps on how the day was; two beside each other, so that the most of a question fits on a phone. */
import { type ConditionKey, conditionKeys, en as words } from '#words/conditions.ts';
import { Choice } from './Choice.tsx';
import styles from './ConditionChoices.module.css';
import { errorOf, type FieldError } from './ErrorSummary.tsx';

export type ChosenConditions = Partial<Readonly<Record<ConditionKey, string>>>;

export interface ConditionChoicesProps {
  readonly chosen: ChosenConditions;
  readonly onChange: (chosen: ChosenConditions) => void;
  readonly errors: readonly FieldError[];
}

export function ConditionChoices({ chosen, onChange, errors }: ConditionChoicesProps) {
  return (
    <div className={styles.dense}>
      {conditionKeys.map((key) => (
        <Choice
          key={key}
          name={key}
          label={words.labels[key]}
          options={Object.entries(words.options[key]).map(([value, label]) => ({ value, label }))}
          value={chosen[key] ?? null}
          onChange={(value) => onChange({ ...chosen, [key]: value })}
          error={errorOf(errors, key)}
        />
      ))}
    </div>
  );
}
