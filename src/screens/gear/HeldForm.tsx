/** Office, when gear comes or goes: owned, rented or lent, from whom, back on which day; or that it is out of use, with the reason. */
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { TextField } from '#parts/TextField.tsx';
import type { FactBody, NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en } from '#words/gearScreen.ts';
import { GearForm } from './GearForm.tsx';
import type { GearHere } from './gearHere.ts';

const words = en.held;

interface Typed {
  readonly held: FactBody<'gearHeld.v1'>['held'] | null;
  readonly from: string;
  readonly backOn: string;
  readonly use: keyof typeof words.uses;
  readonly why: string;
}

const typedOf = ({ record: { held } }: GearHere): Typed => ({
  held: held?.held ?? null,
  from: held?.from ?? '',
  backOn: held?.backOn ?? '',
  use: held?.retired === true ? 'retired' : 'inUse',
  why: '',
});

function heldFact(here: GearHere, typed: Typed, read: FieldReader, entry: Entry): NewFact | null {
  const { record, gear, today } = here;
  const retired = typed.use === 'retired';
  const isOthers = typed.held === 'rented' || typed.held === 'lent';
  const held = read.chosen('held', words.which, typed.held);
  const from = isOthers ? read.text('from', words.from, typed.from, { optional: true }) : null;
  const backOn = isOthers ? read.day('back', words.back, typed.backOn, today, { optional: true }) : null;
  const why = read.text('why', words.why, retired ? typed.why : '', { optional: true, most: 2000 });
  if (backOn !== null && backOn < today && !retired && backOn !== record.held?.backOn) read.add('back', words.turned);
  if (retired && why === null && read.errors.length === 0) read.add('why', words.whyMissing);
  if (held === null) return null;
  return newFact('gearHeld.v1', { gear, gearId: record.id, held, from, backOn, retired }, { ...entry, why });
}

export function HeldForm({ here }: { readonly here: GearHere }) {
  return (
    <GearForm<Typed>
      here={here}
      name="held"
      heading={words.heading(here.name)}
      action={words.save}
      blank={typedOf(here)}
      fieldByName={{ backOn: 'back' }}
      build={(typed, read, entry) => heldFact(here, typed, read, entry)}
    >
      {(typed, change, errors) => (
        <>
          <Choice
            name="held"
            label={words.which}
            options={(['owned', 'rented', 'lent'] as const).map((value) => ({ value, label: words.choices[value] }))}
            value={typed.held}
            onChange={(held) => change({ held })}
            error={errorOf(errors, 'held')}
          />
          {(typed.held === 'rented' || typed.held === 'lent') && (
            <>
              <TextField
                name="from"
                label={words.from}
                value={typed.from}
                onChange={(from) => change({ from })}
                error={errorOf(errors, 'from')}
              />
              <DateField
                name="back"
                label={words.back}
                hint={words.backHint}
                value={typed.backOn}
                today={here.today}
                onChange={(backOn) => change({ backOn })}
                error={errorOf(errors, 'back')}
              />
            </>
          )}
          <Choice
            name="use"
            label={words.use}
            options={[
              { value: 'inUse', label: words.uses.inUse },
              { value: 'retired', label: words.uses.retired, hint: words.retiredHint },
            ]}
            value={typed.use}
            onChange={(use) => change({ use })}
          />
          {typed.use === 'retired' && (
            <TextField
              name="why"
              label={words.why}
              hint={words.whyHint}
              value={typed.why}
              onChange={(why) => change({ why })}
              error={errorOf(errors, 'why')}
            />
          )}
        </>
      )}
    </GearForm>
  );
}
