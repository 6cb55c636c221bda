/** The pump off the worker for a while: whether it ran on, and where the worker was meanwhile, decide what those minutes are. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import type { Sampling } from './useSampling.ts';
import { readWhy, type WhyDraft, WhyLines } from './WhyLines.tsx';

const words = en.deeds.off;
const reasons = ['lunch', 'wash', 'other'] as const;
interface OffDraft extends WhyDraft<Exclude<(typeof reasons)[number], 'other'>> {
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
        const why = readWhy(read, words, { reason, other });
        const stillRunning = read.chosen('running', words.running, running) === 'yes';
        const awayFromLead = read.chosen('lead', words.lead, lead) === 'away';
        const body = { sampleId: sampling.sample.id, stillRunning, awayFromLead, reason: why };
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
          <WhyLines words={words} reasons={reasons} value={{ reason, other }} onChange={change} errors={errors} />
        </>
      )}
    </DeedForm>
  );
}
