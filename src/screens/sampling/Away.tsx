/** Away from the lead area, with the pump still worn and running: that air counts as sampled, and why they were away is kept. */
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import type { Sampling } from './useSampling.ts';
import { readWhy, type WhyDraft, WhyLines } from './WhyLines.tsx';

const words = en.deeds.away;
const reasons = ['lunch', 'clean', 'errand', 'other'] as const;
const blank: WhyDraft<Exclude<(typeof reasons)[number], 'other'>> = { reason: null, other: '' };

export function Away({ sampling }: { readonly sampling: Sampling }) {
  return (
    <DeedForm
      sampling={sampling}
      name="away"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={blank}
      build={(draft, read, entry) => {
        const reason = readWhy(read, words, draft);
        return [newFact('leadAreaLeft.v1', { sampleId: sampling.sample.id, reason }, entry)];
      }}
    >
      {(draft, change, errors) => (
        <WhyLines words={words} reasons={reasons} value={draft} onChange={change} errors={errors} />
      )}
    </DeedForm>
  );
}
