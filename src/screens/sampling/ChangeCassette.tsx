/** A cassette change: the old one stops at the tap, a new one is prepared for the same worker, pump and tasks, and is fitted next. */
import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { emptyLot, LotLines, readLot } from '#parts/LotLines.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { en as gear } from '#words/gear.ts';
import { besideChoice } from '#words/gearChoice.ts';
import { en } from '#words/sampling.ts';
import { DeedForm } from './DeedForm.tsx';
import { pumpMinRange } from './pumpMinutes.ts';
import type { Sampling } from './useSampling.ts';

const words = en.deeds.change;

/** Where the number of the new cassette stands, to be written on it before it is fitted. */
function numberOf(facts: readonly NewFact[]): string {
  const prepared = facts.find((fact) => fact.kind === 'samplePrepared.v1');
  if (prepared?.kind !== 'samplePrepared.v1') return '/';
  return `/shift/${prepared.body.shiftId}/fit?prepared=${prepared.body.sampleId}`;
}

export function ChangeCassette({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, place } = sampling;
  return (
    <DeedForm
      sampling={sampling}
      name="change"
      heading={words.heading}
      action={words.action}
      when="tap"
      blank={{ pumpMin: '', lotId: sample.lotId, lot: emptyLot }}
      next={numberOf}
      build={({ pumpMin, lotId, lot }, read, entry) => {
        const shown = read.quantity('pumpMin', words.pumpMin, 'min', pumpMin, pumpMinRange);
        const added = lotId === addingNew ? readLot(read, lot, place.today) : null;
        const newLotId = added === null ? lotId : newId();
        const { shiftId, workerId, pumpId, taskIds, jobClassificationId } = sample;
        const body = {
          sampleId: newId(),
          sampleNumber: nextFreeNumber,
          shiftId,
          workerId: workerId ?? '',
          pumpId: pumpId ?? '',
          lotId: newLotId,
          taskIds: [...taskIds],
          jobClassificationId,
          follows: sample.id,
        };
        return [
          newFact('pumpStopped.v1', { sampleId: sample.id, pumpMin: shown }, entry),
          ...(added === null ? [] : [newFact('lotAdded.v1', { lotId: newLotId, ...added }, entry)]),
          newFact('samplePrepared.v1', body, entry),
        ];
      }}
    >
      {({ pumpMin, lotId, lot }, change, errors) => (
        <>
          <p>{words.intro}</p>
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
          <PickOrAdd
            name="lot"
            label={words.lot}
            options={[...book.lots.values()].map((each) => ({
              id: each.id,
              label: each.lotNumber,
              detail: besideChoice(isDoubtedOn(each, place.today), each.media),
            }))}
            value={lotId}
            onChange={(id) => change({ lotId: id })}
            addText={gear.lot.add}
          >
            <LotLines
              value={lot}
              onChange={(text) => change({ lot: text, lotId: addingNew })}
              errors={errors}
              today={place.today}
            />
          </PickOrAdd>
        </>
      )}
    </DeedForm>
  );
}
