/**
 * Whoever found that a pump, a flow meter or a lot was bad: what was found, when, for which time. What follows is said before it is saved.
 * Afterwards the page of everything that rests on it is open.
 */
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { TextField } from '#parts/TextField.tsx';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as words } from '#words/gearDoubt.ts';
import { GearForm } from './GearForm.tsx';
import { type GearHere, pathOf } from './gearHere.ts';

interface Typed {
  readonly found: string;
  readonly foundOn: string;
  readonly fromOn: string;
  readonly untilOn: string;
}

function doubtFact(here: GearHere, doubtId: string, typed: Typed, read: FieldReader, entry: Entry): NewFact | null {
  const { gear, record, today } = here;
  const past = { past: true } as const;
  const found = read.text('found', words.what, typed.found);
  const foundOn = read.day('found-on', words.foundOn, typed.foundOn, today, past);
  const fromOn = read.day('from-on', words.fromOn, typed.fromOn, today, { ...past, optional: true });
  const untilOn = read.day('until-on', words.untilOn, typed.untilOn, today, { ...past, optional: true });
  if (fromOn !== null && untilOn !== null && untilOn < fromOn) read.add('until-on', words.turned);
  if (fromOn !== null && foundOn !== null && fromOn > foundOn) read.add('from-on', words.fromAfterFound);
  if (found === null || foundOn === null) return null;
  return newFact('gearDoubted.v1', { gear, gearId: record.id, doubtId, foundOn, fromOn, untilOn, found }, entry);
}

/** `doubtId`: drawn when the form was opened, so that the page to come has its address. */
export function DoubtForm({ here, doubtId }: { readonly here: GearHere; readonly doubtId: string }) {
  const days = [
    ['found-on', 'foundOn', undefined],
    ['from-on', 'fromOn', words.fromHint],
    ['until-on', 'untilOn', words.untilHint],
  ] as const;
  return (
    <GearForm<Typed>
      here={here}
      name="doubt"
      heading={words.heading(here.title)}
      action={words.save}
      blank={{ found: '', foundOn: here.today, fromOn: '', untilOn: '' }}
      fieldByName={{ foundOn: 'found-on', fromOn: 'from-on', untilOn: 'until-on' }}
      next={`${pathOf(here)}?doubt=${doubtId}`}
      build={(typed, read, entry) => doubtFact(here, doubtId, typed, read, entry)}
    >
      {(typed, change, errors) => (
        <>
          <p>{words.follows}</p>
          <TextField
            name="found"
            label={words.what}
            hint={words.whatHint}
            rows={2}
            value={typed.found}
            onChange={(found) => change({ found })}
            error={errorOf(errors, 'found')}
          />
          {days.map(([name, key, hint]) => (
            <DateField
              key={name}
              name={name}
              label={words[key]}
              hint={hint}
              value={typed[key]}
              today={here.today}
              onChange={(text) => change({ [key]: text })}
              error={errorOf(errors, name)}
            />
          ))}
        </>
      )}
    </GearForm>
  );
}
