/** The struck-through correction that paper had: the old value stays visible, with the new one and why. */
import { useSearch } from 'wouter';
import { wallTimeOf } from '#core/calendar.ts';
import { namesIn } from '#findings/naming.ts';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { Page } from '#parts/Page.tsx';
import { parseMoment } from '#parts/parseMoment.ts';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/story.ts';
import { valueText } from '#words/valueText.ts';
import type { Correctable, CorrectableValue } from './correctable.ts';
import { DeedForm } from './DeedForm.tsx';
import { type CorrectDraft, NewValue, tasksIn } from './NewValue.tsx';
import { pumpMinRange } from './pumpMinutes.ts';
import { storyOf } from './storyOf.ts';
import type { Sampling } from './useSampling.ts';

const words = en.correcting;

/** A flow meter cannot show more; a slip of a thousand is caught here. */
const flowRange = { least: 0.01, most: 50 };

function newValue(field: Correctable, typed: CorrectDraft, read: FieldReader, sampling: Sampling): CorrectableValue {
  switch (field.kind) {
    case 'time': {
      const parsed = parseMoment('new', typed.moment, sampling.place);
      if (parsed.kind === 'value') return parsed.happened.at;
      for (const { field: name, text } of parsed.errors) read.add(name, text);
      return null;
    }
    case 'minutes':
      return read.quantity('new', field.label, 'min', typed.text, pumpMinRange);
    case 'flow':
      return read.quantity('new', field.label, 'L/min', typed.text, flowRange);
    case 'text':
      return read.text('new', field.label, typed.text);
    case 'choice': {
      const chosen = read.chosen('new', field.label, typed.text);
      return field.choices?.find(({ value }) => value === chosen)?.means ?? null;
    }
    case 'tasks': {
      const taskIds = tasksIn(typed.text);
      return taskIds.length === 0 ? read.add('new', words.noTask) : taskIds;
    }
    default:
      return read.chosen('new', field.label, typed.text);
  }
}

export function Correct({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, place } = sampling;
  const asked = new URLSearchParams(useSearch());
  const field = storyOf(sample, book)
    .flatMap(({ fields }) => fields)
    .find(({ factId, path }) => factId === asked.get('fact') && path === asked.get('path'));
  if (field === undefined)
    return (
      <Page heading={words.heading} back={`/sample/${sample.id}`}>
        <ErrorSummary errors={[{ field: null, text: words.gone }]} />
      </Page>
    );
  const isTime = field.kind === 'time';
  const stands = isTime ? wallTimeOf(String(field.value), place.zone) : null;
  const blank: CorrectDraft = {
    text: Array.isArray(field.value) ? field.value.join(' ') : '',
    moment: { day: stands?.day ?? sample.workOn, time: '', from: '', which: null },
    why: '',
  };
  return (
    <DeedForm
      sampling={sampling}
      name={`correct/${field.factId}${field.path}`}
      heading={words.heading}
      action={words.action}
      when="now"
      blank={blank}
      fieldByName={{ new: isTime ? 'new-time' : 'new', why: 'why' }}
      build={(typed, read, entry) => {
        const value = newValue(field, typed, read, sampling);
        if (typed.why.trim() === '') read.add('why', words.whyMissing);
        const why = read.text('why', words.why, typed.why, { optional: true, most: 2000 });
        const [old, right] = [field.value, value] as never[];
        const body = { replaces: field.factId, path: field.path, old, new: right, supersedes: null } as never;
        return [newFact('valueCorrected.v1', body, { ...entry, why, about: [aboutOf(field, sampling)] })];
      }}
    >
      {(typed, change, errors) => (
        <>
          <p>
            {field.label}. {words.now}:{' '}
            {valueText(field.path, field.value, { nameOf: namesIn(book), zone: place.zone, on: sample.workOn })}
          </p>
          <NewValue field={field} typed={typed} change={change} errors={errors} sampling={sampling} />
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
    </DeedForm>
  );
}

/** The record that the corrected fact is about: the sample, or one of its flow checks. */
function aboutOf(field: Correctable, { sample, book }: Sampling): string {
  const check = [...book.flowChecks.values()].find(({ factIds }) => factIds.includes(field.factId));
  return check?.key ?? sample.key;
}
