/** Wet, dropped, overloaded: high stays high, low proves nothing. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import { RemarkLine, readRemark } from './RemarkLine.tsx';
import type { Sampling } from './useSampling.ts';

const words = en.deeds.mishap;
const mishaps = ['wet', 'dropped', 'overloaded', 'inletUp', 'opened', 'other'] as const;
interface MishapDraft {
  readonly mishap: (typeof mishaps)[number] | null;
  readonly remark: string;
}
const blank: MishapDraft = { mishap: null, remark: '' };

export function Mishap({ sampling }: { readonly sampling: Sampling }) {
  return (
    <DeedForm
      sampling={sampling}
      name="mishap"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={blank}
      build={({ mishap, remark }, read, entry) => {
        const body = {
          sampleId: sampling.sample.id,
          mishap: read.chosen('mishap', words.mishap, mishap) ?? 'other',
          remark: readRemark(read, words.remark, remark),
        };
        return [newFact('mishapNoted.v1', body, entry)];
      }}
    >
      {({ mishap, remark }, change, errors) => (
        <>
          <Choice
            name="mishap"
            label={words.mishap}
            hint={words.means}
            options={mishaps.map((value) => ({ value, label: words.mishaps[value] }))}
            value={mishap}
            onChange={(value) => change({ mishap: value })}
            error={errorOf(errors, 'mishap')}
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
