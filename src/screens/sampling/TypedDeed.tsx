/** What is otherwise one tap, with a time typed from a watch or paper: put on, looked at, back, stopped. */

import { errorOf } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as after } from '#words/after.ts';
import { en as words } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import { pumpMinRange } from './pumpMinutes.ts';
import type { Sampling } from './useSampling.ts';

export const typedDeeds = ['putOn', 'looked', 'backOn', 'backInLead', 'stop'] as const;
export type TypedDeedKey = (typeof typedDeeds)[number];

/** The fact of a deed that needs nothing but its moment. */
export function plainFact(key: TypedDeedKey, sampleId: string, entry: Entry, pumpMin: number | null = null): NewFact {
  switch (key) {
    case 'putOn':
      return newFact('pumpPutOn.v1', { sampleId }, entry);
    case 'looked':
      return newFact('pumpLookedAt.v1', { sampleId, running: true, inPlace: true, remark: null }, entry);
    case 'backOn':
      return newFact('pumpPutBackOn.v1', { sampleId }, entry);
    case 'backInLead':
      return newFact('leadAreaEntered.v1', { sampleId }, entry);
    case 'stop':
      return newFact('pumpStopped.v1', { sampleId, pumpMin }, entry);
  }
}

export function TypedDeed({ sampling, deed }: { readonly sampling: Sampling; readonly deed: TypedDeedKey }) {
  const sampleId = sampling.sample.id;
  const { heading, action } = words.deeds[deed];
  return (
    <DeedForm
      sampling={sampling}
      name={`typed/${deed}`}
      heading={heading}
      action={action}
      when="typed"
      blank={{ pumpMin: '' }}
      fieldByName={{ pumpMin: 'pumpMin' }}
      next={deed === 'stop' ? () => `/sample/${sampleId}/after` : undefined}
      build={({ pumpMin }, read, entry) => [
        plainFact(deed, sampleId, entry, read.quantity('pumpMin', after.pumpMin.label, 'min', pumpMin, pumpMinRange)),
      ]}
    >
      {({ pumpMin }, change, errors) =>
        deed === 'stop' && (
          <QuantityField
            name="pumpMin"
            label={after.pumpMin.label}
            hint={after.pumpMin.hint}
            unit="min"
            kind="whole"
            value={pumpMin}
            onChange={(text) => change({ pumpMin: text })}
            error={errorOf(errors, 'pumpMin')}
          />
        )
      }
    </DeedForm>
  );
}
