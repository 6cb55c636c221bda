/** A pump fault: what was found, and the pump's own minutes, which tell when it stopped. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import { pumpMinRange } from './pumpMinutes.ts';
import { RemarkLine, readRemark } from './RemarkLine.tsx';
import type { Sampling } from './useSampling.ts';

const words = en.deeds.fault;
const faults = ['stopped', 'tubingOff', 'flowDropped', 'other'] as const;
interface FaultDraft {
  readonly fault: (typeof faults)[number] | null;
  readonly pumpMin: string;
  readonly remark: string;
}
const blank: FaultDraft = { fault: null, pumpMin: '', remark: '' };

export function Fault({ sampling }: { readonly sampling: Sampling }) {
  return (
    <DeedForm
      sampling={sampling}
      name="fault"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={blank}
      build={({ fault, pumpMin, remark }, read, entry) => {
        const body = {
          sampleId: sampling.sample.id,
          fault: read.chosen('fault', words.fault, fault) ?? 'other',
          pumpMin: read.quantity('pumpMin', words.pumpMin, 'min', pumpMin, pumpMinRange),
          remark: readRemark(read, words.remark, remark),
        };
        return [newFact('pumpFaulted.v1', body, entry)];
      }}
    >
      {({ fault, pumpMin, remark }, change, errors) => (
        <>
          <Choice
            name="fault"
            label={words.fault}
            options={faults.map((value) => ({ value, label: words.faults[value] }))}
            value={fault}
            onChange={(value) => change({ fault: value })}
            error={errorOf(errors, 'fault')}
          />
          <QuantityField
            name="pumpMin"
            label={words.pumpMin}
            hint={words.pumpMinHint}
            unit="min"
            kind="whole"
            value={pumpMin}
            onChange={(text) => change({ pumpMin: text })}
            error={errorOf(errors, 'pumpMin')}
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
