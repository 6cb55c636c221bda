/** A flow check as it stands on the paper, before or after; or that the paper has none. */
import { Checklist } from '#parts/Checklist.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { FloatReadings } from '#parts/FloatReadings.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { en as flowWords } from '#words/flow.ts';
import { en as words } from '#words/keyIn.ts';
import type { FlowText } from './keyInDraft.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import { PaperTime } from './PaperTime.tsx';
import styles from './paperForm.module.css';
import { asksForAir } from './readKeyIn.ts';

export function FlowSide({ side, ...form }: LinesOfForm & { readonly side: 'before' | 'after' }) {
  const { draft, onChange, errors, held, place } = form;
  const flow = draft[side];
  const change = (part: Partial<FlowText>) => onChange({ [side]: { ...flow, ...part } });
  const meterKind = draft.meter.meterKind !== null && held.meterKind === null ? draft.meter.meterKind : held.meterKind;
  return (
    <section className={styles.part}>
      <h2>{words[side]}</h2>
      {!flow.none && (
        <>
          <PaperTime
            name={side}
            label={words.checkedAt[side]}
            value={flow.at}
            onChange={(at) => change({ at })}
            day={draft.day}
            place={place}
            errors={errors}
          />
          <FloatReadings
            name={`${side}-reading`}
            readings={flow.readings}
            onChange={(readings) => change({ readings })}
            errors={errors}
          />
          {asksForAir(meterKind) && <Air side={side} flow={flow} onChange={change} errors={errors} />}
        </>
      )}
      <Checklist
        name={`${side}-none`}
        label=""
        hint={words.noneHint}
        options={[{ value: 'none', label: words.none[side] }]}
        value={flow.none ? ['none'] : []}
        onChange={(picked) => change({ none: picked.length > 0 })}
      />
    </section>
  );
}

interface AirProps extends Pick<LinesOfForm, 'errors'> {
  readonly side: 'before' | 'after';
  readonly flow: FlowText;
  readonly onChange: (part: Partial<FlowText>) => void;
}

function Air({ side, flow, onChange, errors }: AirProps) {
  return (
    <>
      <QuantityField
        name={`${side}-temperature`}
        label={flowWords.temperature}
        unit="°C"
        kind="signed"
        value={flow.temperature}
        onChange={(temperature) => onChange({ temperature })}
        error={errorOf(errors, `${side}-temperature`)}
      />
      <QuantityField
        name={`${side}-pressure`}
        label={flowWords.pressure}
        hint={flowWords.pressureHint}
        unit="kPa"
        value={flow.pressure}
        onChange={(pressure) => onChange({ pressure })}
        error={errorOf(errors, `${side}-pressure`)}
      />
    </>
  );
}
