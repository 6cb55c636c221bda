/** One part of the page after leaving: its own draft, its own errors, its own *saved*. */
import { useState } from 'react';
import { wallTimeOf } from '#core/calendar.ts';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import type { NewFact } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import type { Entry } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import type { Sampling } from './useSampling.ts';

export function useSection<D extends object>(
  { sample, place, by }: Sampling,
  name: string,
  blank: D,
  fieldByName: Readonly<Record<string, string>> = {},
) {
  const draftKey = `sample:${sample.id}/after/${name}`;
  const draft = useDraft<D>(draftKey, blank);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  /** Reads and writes in one; answers whether it is written. */
  const save = async (build: (typed: D, read: FieldReader, entry: Entry) => readonly NewFact[]): Promise<boolean> => {
    const read = fieldReader(partsWords);
    const facts = build(draft.value, read, { happened: happenedNow(place.zone), by });
    setErrors(read.errors);
    if (read.errors.length > 0) return false;
    const written = await writing.run(facts, { draftKey });
    if (written === null) return false;
    if (written.kind !== 'written') {
      setErrors(notWritten(written, fieldByName));
      return false;
    }
    draft.clear();
    return true;
  };
  return {
    typed: draft.value,
    change: (part: Partial<D>) => draft.set({ ...draft.value, ...part }),
    errors,
    save,
    busy: writing.state === 'saving',
    state: writing.state,
    savedAt: writing.savedAt === null ? undefined : wallTimeOf(writing.savedAt, place.zone).time,
  };
}
