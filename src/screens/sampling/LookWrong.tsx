/** A look that found something wrong: the pump stands still, or the filter is not where it belongs. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import { RemarkLine, readRemark } from './RemarkLine.tsx';
import type { Sampling } from './useSampling.ts';

const words = en.deeds.look;
type Answer = 'yes' | 'no' | null;
interface LookDraft {
  readonly running: Answer;
  readonly inPlace: Answer;
  readonly remark: string;
}
const blank: LookDraft = { running: null, inPlace: null, remark: '' };

export function LookWrong({ sampling }: { readonly sampling: Sampling }) {
  return (
    <DeedForm
      sampling={sampling}
      name="look"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={blank}
      build={({ running, inPlace, remark }, read, entry) => {
        const body = {
          sampleId: sampling.sample.id,
          running: read.chosen('running', words.running, running) === 'yes',
          inPlace: read.chosen('inPlace', words.inPlace, inPlace) === 'yes',
          remark: readRemark(read, words.remark, remark),
        };
        return [newFact('pumpLookedAt.v1', body, entry)];
      }}
    >
      {({ running, inPlace, remark }, change, errors) => (
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
            name="inPlace"
            label={words.inPlace}
            options={[
              { value: 'yes', label: words.inPlaceYes },
              { value: 'no', label: words.inPlaceNo },
            ]}
            value={inPlace}
            onChange={(value) => change({ inPlace: value })}
            error={errorOf(errors, 'inPlace')}
          />
          <RemarkLine
            label={words.remark}
            value={remark}
            onChange={(text) => change({ remark: text })}
            errors={errors}
          />
        </>
      )}
    </DeedForm>
  );
}
