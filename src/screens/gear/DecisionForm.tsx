/** The one decision about a doubt: which, by how much where a flow meter read wrong, and why. Two that differ are settled by one more. */
import type { ReactNode } from 'react';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { parseQuantity } from '#parts/parseQuantity.ts';
import { TextField } from '#parts/TextField.tsx';
import type { GearDoubt } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en } from '#words/gearDoubt.ts';
import { GearForm } from './GearForm.tsx';
import { doubtPath, type GearHere } from './gearHere.ts';
import { WillChange } from './WillChange.tsx';

const words = en.page;
type Which = keyof typeof words.choices;

interface Typed {
  readonly which: Which | null;
  readonly factor: string;
  readonly why: string;
}

/** What a meter may be off by and still be a meter: the bounds of the fact. */
const factorRange = { least: 0.5, most: 2 };

export interface DecisionFormProps {
  readonly here: GearHere;
  readonly doubt: GearDoubt;
  readonly onWritten: () => void;
  /** What was found, and what rests on it. */
  readonly children: ReactNode;
}

function settledFact(here: GearHere, doubt: GearDoubt, typed: Typed, read: FieldReader, entry: Entry): NewFact | null {
  const { gear, record } = here;
  const { doubtId } = doubt;
  const decision = read.chosen('decision', words.which, typed.which);
  const trueOverRead =
    decision === 'asFound' ? read.quantity('factor', words.trueOverRead, '', typed.factor, factorRange) : null;
  const why = read.text('why', words.whyLabel, typed.why, { optional: true, most: 2000 });
  if (why === null && !read.errors.some(({ field }) => field === 'why')) read.add('why', words.whyMissing);
  if (decision === null || read.errors.length > 0) return null;
  const body = { gear, gearId: record.id, doubtId, decision, trueOverRead };
  return newFact('gearDoubtSettled.v1', body, { ...entry, why });
}

export function DecisionForm({ here, doubt, onWritten, children }: DecisionFormProps) {
  const choices: readonly Which[] =
    here.gear === 'meter' ? ['noEffect', 'asFound', 'staysDoubtful'] : ['noEffect', 'staysDoubtful'];
  return (
    <GearForm<Typed>
      here={here}
      name={`settle-${doubt.doubtId}`}
      heading={words.heading(here.name)}
      over={words.span(doubt.fromOn, doubt.untilOn)}
      action={words.save}
      blank={{ which: null, factor: '', why: '' }}
      fieldByName={{ trueOverRead: 'factor', why: 'why' }}
      next={doubtPath(here, doubt)}
      onWritten={onWritten}
      about={children}
      build={(typed, read, entry) => settledFact(here, doubt, typed, read, entry)}
    >
      {(typed, change, errors) => (
        <>
          <h2>{words.decideHeading}</h2>
          <Choice
            name="decision"
            label={words.which}
            options={choices.map((value) => ({ value, ...words.choices[value] }))}
            value={typed.which}
            onChange={(which) => change({ which })}
            error={errorOf(errors, 'decision')}
          />
          {typed.which === 'asFound' && (
            <TextField
              name="factor"
              label={words.trueOverRead}
              hint={words.trueOverReadHint}
              value={typed.factor}
              onChange={(factor) => change({ factor })}
              error={errorOf(errors, 'factor')}
            />
          )}
          <WillChange here={here} doubt={doubt} decision={typed.which} trueOverRead={factorOf(typed)} />
          <TextField
            name="why"
            label={words.why}
            hint={words.whyHint}
            rows={2}
            value={typed.why}
            onChange={(why) => change({ why })}
            error={errorOf(errors, 'why')}
          />
        </>
      )}
    </GearForm>
  );
}

/** null while it is not asked for, or cannot be read yet. */
function factorOf({ which, factor }: Typed): number | null {
  if (which !== 'asFound') return null;
  const parsed = parseQuantity(factor, '', factorRange);
  return parsed.kind === 'value' ? parsed.value : null;
}
