/** What both flow checks of the paper share: flow meter, what was in line, and the lot of the cassettes. */

import { certificateInForce } from '#findings/gear/certificateInForce.ts';
import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { LotLines } from '#parts/LotLines.tsx';
import { MeterLines } from '#parts/MeterLines.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { en as flow } from '#words/flow.ts';
import { en as gear } from '#words/gear.ts';
import { besideChoice } from '#words/gearChoice.ts';
import { en as words } from '#words/keyIn.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import styles from './paperForm.module.css';

const inLineKeys = ['representativeCassette', 'sampleCassette', 'nothing'] as const;

export function Gear({ draft, onChange, errors, registers, place }: LinesOfForm) {
  return (
    <section className={styles.part}>
      <h2>{words.gear}</h2>
      <PickOrAdd
        name="meter"
        label={gear.meter.pick}
        options={registers.meters.list.map((meter) => ({
          id: meter.id,
          label: meter.serial,
          detail: besideChoice(
            isDoubtedOn(meter, place.today),
            gear.meter.notes(meter.meterKind, certificateInForce(meter, place.today).dueOn),
          ),
        }))}
        value={draft.meterId}
        onChange={(meterId) => onChange({ meterId })}
        addText={gear.meter.add}
        error={errorOf(errors, 'meter')}
      >
        <MeterLines
          value={draft.meter}
          onChange={(meter) => onChange({ meter, meterId: addingNew })}
          errors={errors}
          today={place.today}
        />
      </PickOrAdd>
      <PickOrAdd
        name="lot"
        label={gear.lot.pick}
        options={registers.lots.list.map((lot) => ({
          id: lot.id,
          label: lot.lotNumber,
          detail: besideChoice(isDoubtedOn(lot, place.today), lot.media),
        }))}
        value={draft.lotId}
        onChange={(lotId) => onChange({ lotId })}
        addText={gear.lot.add}
        error={errorOf(errors, 'lot')}
      >
        <LotLines
          value={draft.lot}
          onChange={(lot) => onChange({ lot, lotId: addingNew })}
          errors={errors}
          today={place.today}
        />
      </PickOrAdd>
      <Choice
        name="inLine"
        label={words.inLine}
        options={inLineKeys.map((value) => ({ value, label: flow.inLineOptions[value] }))}
        value={draft.inLine}
        onChange={(inLine) => onChange({ inLine })}
      />
    </section>
  );
}
