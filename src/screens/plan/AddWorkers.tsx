/** Workers who are written down for the first time, here where they are first needed. */
import { errorOf } from '#parts/ErrorSummary.tsx';
import { emptyPerson, PersonFields } from '#parts/PersonFields.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { newId } from '#store/device.ts';
import { en } from '#words/planScreen.ts';
import type { PlanFields } from './fields.ts';
import styles from './plan.module.css';
import type { AddedWorker } from './planDraft.ts';

const words = en.who;

export function AddWorkers({ draft, onChange, errors, hasError }: PlanFields & { readonly hasError: boolean }) {
  const { added } = draft;
  const set = (people: readonly AddedWorker[]) => onChange({ added: people, draws: [] });
  const missing = hasError ? errorOf(errors, 'crew') : undefined;
  return (
    <div id={hasError ? 'crew' : undefined} className={styles.own}>
      {missing !== undefined && <p>{missing}</p>}
      {added.map((person, at) => (
        <fieldset key={person.id} aria-label={words.added(at + 1)} className={styles.own}>
          <h3>{words.added(at + 1)}</h3>
          <PersonFields
            name={person.id}
            value={person}
            onChange={(text) => set(added.map((each) => (each.id === person.id ? { ...each, ...text } : each)))}
            errors={errors}
          />
          <div>
            <QuietAction onClick={() => set(added.filter(({ id }) => id !== person.id))}>{words.remove}</QuietAction>
          </div>
        </fieldset>
      ))}
      <div>
        <QuietAction onClick={() => set([...added, { id: newId(), ...emptyPerson }])}>{words.add}</QuietAction>
      </div>
    </div>
  );
}
