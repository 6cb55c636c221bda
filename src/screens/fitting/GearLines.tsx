/** Pump, lot and job classification of the worker who is prepared. */

import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { LotLines } from '#parts/LotLines.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { PumpLines } from '#parts/PumpLines.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book, LotRecord } from '#records/book.ts';
import { en as words } from '#words/fitting.ts';
import { en as gear } from '#words/gear.ts';
import { besideChoice } from '#words/gearChoice.ts';
import type { FitDraft } from './fitDraft.ts';
import { pumpDetail, pumpsInOrder } from './gearStands.ts';

export interface GearLinesProps {
  readonly draft: FitDraft;
  readonly onChange: (part: Partial<FitDraft>) => void;
  readonly book: Book;
  readonly errors: readonly FieldError[];
  readonly today: string;
}

const lotDetail = ({ expiresOn, media }: LotRecord, today: string): string =>
  expiresOn !== null && expiresOn < today ? words.lotExpired(expiresOn) : media;

export function GearLines({ draft, onChange, book, errors, today }: GearLinesProps) {
  return (
    <>
      <PickOrAdd
        name="pump"
        label={words.pump}
        options={pumpsInOrder(book).map((id) => ({
          id,
          label: book.pumps.get(id)?.serial ?? '',
          detail: besideChoice(isDoubtedOn(book.pumps.get(id), today), pumpDetail(id, book)),
        }))}
        value={draft.pumpId}
        onChange={(pumpId) => onChange({ pumpId })}
        addText={gear.pump.add}
        error={errorOf(errors, 'pump')}
      >
        <PumpLines value={draft.pump} onChange={(pump) => onChange({ pump, pumpId: addingNew })} errors={errors} />
      </PickOrAdd>
      <PickOrAdd
        name="lot"
        label={words.lot}
        options={[...book.lots.values()].map((lot) => ({
          id: lot.id,
          label: lot.lotNumber,
          detail: besideChoice(isDoubtedOn(lot, today), lotDetail(lot, today)),
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
      <PickOrAdd
        name="job"
        label={words.job}
        options={[...book.jobClassifications.values()].map(({ id, name }) => ({ id, label: name }))}
        value={draft.jobId}
        onChange={(jobId) => onChange({ jobId })}
        addText={gear.job.add}
      >
        <TextField
          name="job-name"
          label={gear.job.name}
          hint={gear.job.optional}
          value={draft.jobName}
          onChange={(jobName) => onChange({ jobName, jobId: addingNew })}
          error={errorOf(errors, 'job-name')}
        />
      </PickOrAdd>
    </>
  );
}
