/** Acts that need a reason and no other time: void, stopped by mistake, a remark, a decision on the flow. */
import type { ReactNode } from 'react';
import { checksOfSample } from '#findings/checks.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import type { Sampling } from './useSampling.ts';

const words = en.deeds;

interface ReasonFormProps {
  readonly sampling: Sampling;
  readonly name: string;
  readonly heading: string;
  readonly action: string;
  readonly label: string;
  readonly intro?: ReactNode;
  readonly build: (why: string, entry: Entry) => NewFact;
}

function ReasonForm({ sampling, name, heading, action, label, intro, build }: ReasonFormProps) {
  return (
    <DeedForm
      sampling={sampling}
      name={name}
      heading={heading}
      action={action}
      when="now"
      blank={{ why: '' }}
      fieldByName={{ why: 'why', text: 'why' }}
      build={({ why }, read, entry) => {
        if (why.trim() === '') read.add('why', words.whyMissing);
        return [build(read.text('why', label, why, { optional: true, most: 2000 }) ?? '', entry)];
      }}
    >
      {({ why }, change, errors) => (
        <>
          {intro && <p>{intro}</p>}
          <TextField
            name="why"
            label={label}
            rows={3}
            value={why}
            onChange={(text) => change({ why: text })}
            error={errorOf(errors, 'why')}
          />
        </>
      )}
    </DeedForm>
  );
}

export function Voiding({ sampling }: { readonly sampling: Sampling }) {
  const { heading, action, why, text } = words.voiding;
  return (
    <ReasonForm
      sampling={sampling}
      name="void"
      heading={heading}
      action={action}
      label={why}
      intro={text}
      build={(reason, entry) => newFact('sampleVoided.v1', { sampleId: sampling.sample.id }, { ...entry, why: reason })}
    />
  );
}

export function Mistake({ sampling }: { readonly sampling: Sampling }) {
  const { heading, action, why, text } = words.mistake;
  const { id, stopped } = sampling.sample;
  return (
    <ReasonForm
      sampling={sampling}
      name="mistake"
      heading={heading}
      action={action}
      label={why}
      intro={text}
      build={(reason, entry) =>
        newFact('stoppedByMistake.v1', { sampleId: id, stopFactId: stopped?.factId ?? '' }, { ...entry, why: reason })
      }
    />
  );
}

export function Remark({ sampling }: { readonly sampling: Sampling }) {
  const { heading, action, text } = words.remark;
  return (
    <ReasonForm
      sampling={sampling}
      name="remark"
      heading={heading}
      action={action}
      label={text}
      build={(remark, entry) => newFact('remarkMade.v1', { sampleId: sampling.sample.id, text: remark }, entry)}
    />
  );
}

type Use = 'average' | 'lower';
interface DecideDraft {
  readonly use: Use | null;
  readonly why: string;
}
const blank: DecideDraft = { use: null, why: '' };

export function DecideFlow({ sampling }: { readonly sampling: Sampling }) {
  const { heading, action, text, use: useLabel, uses, why: whyLabel } = words.decide;
  return (
    <DeedForm
      sampling={sampling}
      name="decide"
      heading={heading}
      action={action}
      when="now"
      blank={blank}
      fieldByName={{ why: 'why' }}
      next={() => `/sample/${sampling.sample.id}/after`}
      build={({ use, why }, read, entry) => {
        const chosen = read.chosen('use', useLabel, use) ?? 'lower';
        if (why.trim() === '') read.add('why', words.whyMissing);
        const reason = read.text('why', whyLabel, why, { optional: true, most: 2000 });
        const { sample, book } = sampling;
        const { before, after, beforeByOthers, afterByOthers } = checksOfSample(sample, book);
        const known = [before, after, ...beforeByOthers, ...afterByOthers].flatMap(
          (check) => check?.checkedFactId ?? [],
        );
        const body = { sampleId: sample.id, use: chosen, knew: known.slice(0, 50) };
        return [newFact('flowDecided.v1', body, { ...entry, why: reason })];
      }}
    >
      {({ use, why }, change, errors) => (
        <>
          <p>{text}</p>
          <Choice
            name="use"
            label={useLabel}
            options={(['lower', 'average'] as const).map((value) => ({ value, label: uses[value] }))}
            value={use}
            onChange={(value) => change({ use: value })}
            error={errorOf(errors, 'use')}
          />
          <TextField
            name="why"
            label={whyLabel}
            rows={3}
            value={why}
            onChange={(typed) => change({ why: typed })}
            error={errorOf(errors, 'why')}
          />
        </>
      )}
    </DeedForm>
  );
}
