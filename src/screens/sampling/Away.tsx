/** Away from the lead area, with the pump still worn and running: that air counts as sampled, and why they were away is kept. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import type { Sampling } from './useSampling.ts';

const words = en.deeds.away;
const reasons = ['lunch', 'clean', 'errand', 'other'] as const;
interface AwayDraft {
  readonly reason: (typeof reasons)[number] | null;
  readonly other: string;
}
const blank: AwayDraft = { reason: null, other: '' };

export function Away({ sampling }: { readonly sampling: Sampling }) {
  return (
    <DeedForm
      sampling={sampling}
      name="away"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={blank}
      build={({ reason, other }, read, entry) => {
        const chosen = read.chosen('reason', words.reason, reason);
        const typed = chosen === 'other' ? read.text('other', words.other, other) : null;
        const text = chosen === 'other' ? (typed ?? '') : words.reasons[chosen ?? 'other'];
        return [newFact('leadAreaLeft.v1', { sampleId: sampling.sample.id, reason: text }, entry)];
      }}
    >
      {({ reason, other }, change, errors) => (
        <>
          <Choice
            name="reason"
            label={words.reason}
            options={reasons.map((value) => ({ value, label: words.reasons[value] }))}
            value={reason}
            onChange={(value) => change({ reason: value })}
            error={errorOf(errors, 'reason')}
          />
          {reason === 'other' && (
            <TextField
              name="other"
              label={words.other}
              value={other}
              onChange={(text) => change({ other: text })}
              error={errorOf(errors, 'other')}
            />
          )}
        </>
      )}
    </DeedForm>
  );
}
