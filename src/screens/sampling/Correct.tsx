/** The struck-through correction that paper had: the old value stays visible, with the new one and why. */
import { useSearch } from 'wouter';
import { wallTimeOf } from '#core/calendar.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { MomentFields } from '#parts/MomentFields.tsx';
import { Page } from '#parts/Page.tsx';
import { type MomentDraft, parseMoment } from '#parts/parseMoment.ts';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/story.ts';
import type { Correctable } from './correctable.ts';
import { DeedForm } from './DeedForm.tsx';
import { pumpMinRange } from './pumpMinutes.ts';
import { storyOf } from './storyOf.ts';
import type { Sampling } from './useSampling.ts';
import { valueText } from './valueText.ts';

const words = en.correcting;

interface CorrectDraft {
  readonly text: string;
  readonly moment: MomentDraft;
  readonly why: string;
}

/** A flow meter cannot show more; a slip of a thousand is caught here. */
const flowRange = { least: 0.01, most: 50 };

function newValue(
  field: Correctable,
  typed: CorrectDraft,
  read: FieldReader,
  sampling: Sampling,
): string | number | null {
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
    text: '',
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
        const body = { replaces: field.factId, path: field.path, old: field.value, new: value, supersedes: null };
        return [newFact('valueCorrected.v1', body, { ...entry, why, about: [aboutOf(field, sampling)] })];
      }}
    >
      {(typed, change, errors) => (
        <>
          <p>
            {field.label}. {words.now}: {valueText(field.path, field.value, book, place.zone) || '–'}
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

interface NewValueProps {
  readonly field: Correctable;
  readonly typed: CorrectDraft;
  readonly change: (part: Partial<CorrectDraft>) => void;
  readonly errors: readonly FieldError[];
  readonly sampling: Sampling;
}

function NewValue({ field, typed, change, errors, sampling }: NewValueProps) {
  const shared = { name: 'new', label: words.new, error: errorOf(errors, 'new') };
  const text = { ...shared, value: typed.text, onChange: (value: string) => change({ text: value }) };
  const { book, place } = sampling;
  switch (field.kind) {
    case 'time':
      return (
        <MomentFields
          name="new"
          value={typed.moment}
          onChange={(moment) => change({ moment })}
          place={place}
          errors={errors}
          timeLabel={words.new}
          withoutFrom
        />
      );
    case 'minutes':
      return <QuantityField {...text} unit="min" kind="whole" />;
    case 'flow':
      return <QuantityField {...text} unit="L/min" />;
    case 'text':
      return <TextField {...text} />;
    case 'pump':
      return (
        <SelectField
          {...text}
          options={[...book.pumps.values()].map(({ id, serial }) => ({ value: id, label: serial }))}
        />
      );
    case 'lot':
      return (
        <SelectField
          {...text}
          options={[...book.lots.values()].map(({ id, lotNumber }) => ({ value: id, label: lotNumber }))}
        />
      );
    case 'worker':
      return (
        <SelectField
          {...text}
          options={[...book.people.values()].map(({ id, name }) => ({ value: id, label: name }))}
        />
      );
  }
}
