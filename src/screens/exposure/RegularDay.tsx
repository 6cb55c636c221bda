/** Was it a regular day? Asked of the supervisor after leaving, or by the office before the figure is relied on. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { TextField } from '#parts/TextField.tsx';
import type { NewFact } from '#records/fact.ts';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/exposure.ts';
import { en as partsWords } from '#words/parts.ts';
import { DayForm, type DayFormProps } from './DayForm.tsx';
import { corrected, useDayForm } from './useDayForm.ts';

interface RegularDraft {
  readonly regular: 'yes' | 'no' | null;
  readonly reason: string;
  readonly why: string;
}

const text = words.regular;

export function RegularDay({ day, over, onDone }: DayFormProps) {
  const said = day.record?.regular ?? null;
  const form = useDayForm<RegularDraft>(
    day,
    'regular',
    { regular: said?.regular ?? null, reason: said?.reason ?? '', why: '' },
    onDone,
  );
  const { value, set } = form.draft;

  const factsOf = (regular: 'yes' | 'no', typed: string | null): NewFact[] => {
    const reason = regular === 'no' ? typed : null;
    if (said === null) return [newFact('dayDescribed.v1', { workdayId: day.workdayId, regular, reason }, form.entry())];
    const entry = form.entry(value.why.trim());
    return [
      ...corrected(day, said.factId, '/regular', { old: said.regular, new: regular }, entry),
      ...corrected(day, said.factId, '/reason', { old: said.reason, new: reason }, entry),
    ];
  };
  const submit = () => {
    const read = fieldReader(partsWords);
    const { regular } = value;
    if (regular === null) read.add('regular', text.missing);
    const reason = read.text('reason', text.reason, value.reason, { optional: true });
    if (regular === 'no' && reason === null) read.add('reason', text.reasonMissing);
    if (said !== null && value.why.trim() === '') read.add('why', text.whyMissing);
    if (regular === null || read.errors.length > 0) return form.setErrors(read.errors);
    return void form.save(factsOf(regular, reason));
  };

  return (
    <DayForm
      heading={text.heading}
      over={over}
      errors={form.errors}
      busy={form.busy}
      saveText={text.save}
      onSave={submit}
      onBack={form.leave}
    >
      <p>{text.intro}</p>
      <Choice
        name="regular"
        label={text.heading}
        options={[
          { value: 'yes', label: text.yes },
          { value: 'no', label: text.no },
        ]}
        value={value.regular}
        onChange={(regular) => set({ ...value, regular })}
        error={errorOf(form.errors, 'regular')}
      />
      {value.regular === 'no' && (
        <TextField
          name="reason"
          label={text.reason}
          value={value.reason}
          onChange={(reason) => set({ ...value, reason })}
          error={errorOf(form.errors, 'reason')}
        />
      )}
      {said !== null && (
        <TextField
          name="why"
          label={text.why}
          value={value.why}
          onChange={(why) => set({ ...value, why })}
          error={errorOf(form.errors, 'why')}
        />
      )}
    </DayForm>
  );
}
