/** Call-outs, a second site, a second employer: asked of the worker, because the eight hours know no employer. */
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

const asked = ['callOut', 'secondSite', 'secondEmployer'] as const;
type Asked = (typeof asked)[number];
type Answer = 'yes' | 'no';
type OtherDraft = Readonly<Record<Asked, Answer | null>> & { readonly why: string };

const text = words.other;

export function OtherWork({ day, over, onDone }: DayFormProps) {
  const said = day.record?.otherWork ?? null;
  const form = useDayForm<OtherDraft>(
    day,
    'otherWork',
    {
      callOut: said?.callOut ?? null,
      secondSite: said?.secondSite ?? null,
      secondEmployer: said?.secondEmployer ?? null,
      why: '',
    },
    onDone,
  );
  const { value, set } = form.draft;

  const submit = () => {
    const read = fieldReader(partsWords);
    const answers: Partial<Record<Asked, Answer>> = {};
    for (const which of asked) {
      const answer = value[which];
      if (answer === null) read.add(which, text.missing);
      else answers[which] = answer;
    }
    const why = value.why.trim();
    if (said !== null && why === '') read.add('why', text.whyMissing);
    if (read.errors.length > 0) return form.setErrors(read.errors);
    return void form.save(factsOf(answers as Record<Asked, Answer>, why));
  };
  const factsOf = (answers: Record<Asked, Answer>, why: string): NewFact[] => {
    const factId = day.record?.otherWorkFactId;
    if (said === null || !factId)
      return [newFact('otherWorkAsked.v1', { workdayId: day.workdayId, ...answers }, form.entry())];
    return asked.flatMap((which) =>
      corrected(day, factId, `/${which}`, { old: said[which], new: answers[which] }, form.entry(why)),
    );
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
      {asked.map((which) => (
        <Choice
          key={which}
          name={which}
          label={text[which]}
          options={[
            { value: 'no', label: text.no },
            { value: 'yes', label: text.yes },
          ]}
          value={value[which]}
          onChange={(answer) => set({ ...value, [which]: answer })}
          error={errorOf(form.errors, which)}
        />
      ))}
      {asked.some((which) => value[which] === 'yes') && <p>{text.thenHours}</p>}
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
