/** Temperature and station pressure at the check: only asked where a float in a tube reads differently with them. */

import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/flow.ts';
import { asksForAir, type FlowDraft, meterKindOf } from './flowDraft.ts';

export interface AirLinesProps {
  readonly draft: FlowDraft;
  readonly onChange: (part: Partial<FlowDraft>) => void;
  readonly book: Book;
  readonly altitudeM: number | null;
  readonly errors: readonly FieldError[];
}

export function AirLines({ draft, onChange, book, altitudeM, errors }: AirLinesProps) {
  if (!asksForAir(meterKindOf(draft, book.meters))) return null;
  return (
    <>
      <QuantityField
        name="temperature"
        label={words.temperature}
        hint={words.temperatureHint}
        unit="°C"
        kind="signed"
        value={draft.temperature}
        onChange={(temperature) => onChange({ temperature })}
        error={errorOf(errors, 'temperature')}
      />
      <QuantityField
        name="pressure"
        label={words.pressure}
        hint={
          <>
            {altitudeM === null ? words.pressureUnknown : words.pressureFromAltitude(altitudeM)} {words.pressureHint}
          </>
        }
        unit="kPa"
        value={draft.pressure}
        onChange={(pressure) => onChange({ pressure })}
        error={errorOf(errors, 'pressure')}
      />
    </>
  );
}
