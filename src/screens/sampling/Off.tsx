/** The pump off the worker for a while: whether it ran on, and where the worker was meanwhile, decide what those minutes are. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import type { Sampling } from './useSampling.ts';

const words = en.deeds.off;
const reasons = ['lunch', 'wash', 'other'] as const;
interface OffDraft {
  readonly reason: (typeof reasons)[number] | null;
  readonly other: string;
  readonly running: 'yes' | 'no' | null;
  readonly lead: 'away' | 'in' | null;
}
const blank: OffDraft = { reason: null, other: '', running: null, lead: null };

export function Off({ sampling }: { readonly sampling: Sampling }) {
  return (
    <DeedForm
      sampling={sampling}
      name="off"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={blank}
      build={({ reason, other, running, lead }, read, entry) => {
        const chosen = read.chosen('reason', words.reason, reason);
        const typed = chosen === 'other' ? read.text('other', words.other, other) : null;
        const stillRunning = read.chosen('running', words.running, running) === 'yes';
        const awayFromLead = read.chosen('lead', words.lead, lead) === 'away';
        const text = chosen === 'other' ? (typed ?? '') : words.reasons[chosen ?? 'other'];
        const body = { sampleId: sampling.sample.id, stillRunning, awayFromLead, reason: text };
        return [newFact('pumpTakenOff.v1', body, entry)];
      }}
    >
      {({ reason, other, running, lead }, change, errors) => (
        <>
          <Choice
            name="running"
            label={words.running}
            options={[
              { value: 'yes', label: words.runningYes },
              { value: 'no', label: words.runningNo },
            ]}
            value={running}
            onChange={(value) => change({ running: value })}
            error={errorOf(errors, 'running')}
          />
          <Choice
            name="lead"
            label={words.lead}
            options={[
              { value: 'away', label: words.leadAway },
              { value: 'in', label: words.leadIn },
            ]}
            value={lead}
            onChange={(value) => change({ lead: value })}
            error={errorOf(errors, 'lead')}
          />
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
