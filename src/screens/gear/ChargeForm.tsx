/** Supervisor, in the evening or the next morning: when a pump was charged, typed from memory, a watch or the paper beside the charger. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { MomentFields } from '#parts/MomentFields.tsx';
import { type MomentDraft, type MomentPlace, parseMoment } from '#parts/parseMoment.ts';
import { TextField } from '#parts/TextField.tsx';
import type { NewFact } from '#records/fact.ts';
import { now } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en } from '#words/gearScreen.ts';
import { en as moments } from '#words/moment.ts';
import { GearForm } from './GearForm.tsx';
import type { GearHere } from './gearHere.ts';

const words = en.charge;

interface Typed {
  readonly moment: MomentDraft;
  readonly far: keyof typeof words.fulls;
  readonly remark: string;
}

export function ChargeForm({ here }: { readonly here: GearHere }) {
  const { zone, today, by, book, record } = here;
  const place = (): MomentPlace => ({ zone, today, now: now() });
  const from = moments.fromWatch(book.people.get(by ?? '')?.name ?? null);
  const build = (typed: Typed, read: FieldReader, entry: Entry): NewFact | null => {
    const parsed = parseMoment('moment', typed.moment, place());
    const remark = read.text('remark', words.remark, typed.remark, { optional: true, most: 2000 });
    if (parsed.kind === 'errors') {
      for (const { field, text } of parsed.errors) read.add(field, text);
      return null;
    }
    const body = { pumpId: record.id, full: typed.far === 'full', remark };
    return newFact('pumpCharged.v1', body, { ...entry, happened: parsed.happened });
  };
  return (
    <GearForm<Typed>
      here={here}
      name="charge"
      heading={words.otherHeading(here.name)}
      action={words.save}
      blank={{ moment: { day: today, time: '', from, which: null }, far: 'full', remark: '' }}
      build={build}
    >
      {(typed, change, errors) => (
        <>
          <MomentFields
            name="moment"
            value={typed.moment}
            onChange={(moment) => change({ moment })}
            place={place()}
            errors={errors}
          />
          <Choice
            name="far"
            label={words.full}
            options={(['full', 'part'] as const).map((value) => ({ value, label: words.fulls[value] }))}
            value={typed.far}
            onChange={(far) => change({ far })}
          />
          <TextField
            name="remark"
            label={words.remark}
            value={typed.remark}
            onChange={(remark) => change({ remark })}
            error={errorOf(errors, 'remark')}
          />
        </>
      )}
    </GearForm>
  );
}
