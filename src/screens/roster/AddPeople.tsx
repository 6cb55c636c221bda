/** People who are written down for the first time, of this firm or of another that works beside it. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { emptyPerson, PersonFields } from '#parts/PersonFields.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { newId } from '#store/device.ts';
import { en } from '#words/roster.ts';
import styles from './roster.module.css';
import type { AddedPerson } from './rosterDraft.ts';

const words = en.person;

export interface AddPeopleProps {
  readonly people: readonly AddedPerson[];
  readonly onChange: (people: readonly AddedPerson[]) => void;
  readonly errors: readonly FieldError[];
}

export function AddPeople({ people, onChange, errors }: AddPeopleProps) {
  const blank = (): AddedPerson => ({ id: newId(), ...emptyPerson });
  return (
    <>
      {people.map((person, at) => (
        <fieldset key={person.id} aria-label={words.heading(at + 1)} className={styles.own}>
          <h2>{words.heading(at + 1)}</h2>
          <PersonFields
            name={person.id}
            value={person}
            onChange={(text) => onChange(people.map((each) => (each.id === person.id ? { ...each, ...text } : each)))}
            errors={errors}
          />
          <div>
            <QuietAction onClick={() => onChange(people.filter(({ id }) => id !== person.id))}>
              {words.remove}
            </QuietAction>
          </div>
        </fieldset>
      ))}
      <div>
        <QuietAction onClick={() => onChange([...people, blank()])}>{words.add}</QuietAction>
      </div>
    </>
  );
}
