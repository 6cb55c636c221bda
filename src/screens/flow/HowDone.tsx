/** Flow meter, lot and what is in line: one sentence while they stay as they were, all the lines when they change. */
import { useState } from 'react';
import { certificateInForce } from '#findings/gear/certificateInForce.ts';
import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import { Choice } from '#parts/Choice.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { LotLines } from '#parts/LotLines.tsx';
import { MeterLines } from '#parts/MeterLines.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/flow.ts';
import { en as gear } from '#words/gear.ts';
import { besideChoice } from '#words/gearChoice.ts';
import type { FlowDraft } from './flowDraft.ts';

export interface HowDoneProps {
  readonly draft: FlowDraft;
  readonly onChange: (part: Partial<FlowDraft>) => void;
  readonly book: Book;
  readonly errors: readonly FieldError[];
  readonly today: string;
}

const inLineKeys = ['representativeCassette', 'sampleCassette', 'nothing'] as const;

export function HowDone(props: HowDoneProps) {
  const { draft, book, errors, today } = props;
  const [open, setOpen] = useState(false);
  // What stands there without anybody's choice is looked at once: the first check of the day keeps its lines open.
  const [isGiven] = useState(draft.meterId !== null && book.flowChecks.size === 0);
  const meter = book.meters.get(draft.meterId ?? '');
  const lot = book.lots.get(draft.lotId ?? '');
  const settled = meter !== undefined && (lot !== undefined || draft.inLine === 'nothing');
  const hasError = errors.some(({ field }) => /^(meter|lot|inLine)/.test(field ?? ''));
  // What was found bad is never passed over in one sentence.
  const isBad = isDoubtedOn(meter, today) || (draft.inLine !== 'nothing' && isDoubtedOn(lot, today));
  if (!settled || isBad || open || hasError || (isGiven && book.flowChecks.size === 0)) return <AllLines {...props} />;
  const meterText = `${gear.meter.kinds[meter.meterKind]} ${meter.serial}`;
  return (
    <section>
      <h2>{words.howDone}</h2>
      <p>{words.howDoneText(meterText, words.inLineShort(draft.inLine, lot?.lotNumber ?? null))}</p>
      <QuietAction onClick={() => setOpen(true)}>{words.change}</QuietAction>
    </section>
  );
}

function AllLines({ draft, onChange, book, errors, today }: HowDoneProps) {
  return (
    <>
      <PickOrAdd
        name="meter"
        label={gear.meter.pick}
        options={[...book.meters.values()].map((meter) => ({
          id: meter.id,
          label: meter.serial,
          detail: besideChoice(
            isDoubtedOn(meter, today),
            gear.meter.notes(meter.meterKind, certificateInForce(meter, today).dueOn),
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
          today={today}
        />
      </PickOrAdd>
      <Choice
        name="inLine"
        label={words.inLine}
        options={inLineKeys.map((value) => ({ value, label: words.inLineOptions[value] }))}
        value={draft.inLine}
        onChange={(inLine) => onChange({ inLine })}
      />
      {draft.inLine !== 'nothing' && (
        <PickOrAdd
          name="lot"
          label={gear.lot.pick}
          options={[...book.lots.values()].map((lot) => ({
            id: lot.id,
            label: lot.lotNumber,
            detail: besideChoice(isDoubtedOn(lot, today), lot.media),
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
            today={today}
          />
        </PickOrAdd>
      )}
    </>
  );
}
