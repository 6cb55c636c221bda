/** What the forms of a day share: the draft, writing it down, and sentences when it may not be. */
import { useState } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { NewFact } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { type Draft, useBookMeta, useDraft } from '#store/hooks.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { notWritten } from '#words/saving.ts';
import type { DayOn } from './dayOn.ts';

export interface DayFormState<T> {
  readonly draft: Draft<T>;
  readonly errors: readonly FieldError[];
  readonly setErrors: (errors: readonly FieldError[]) => void;
  readonly busy: boolean;
  readonly entry: (why?: string | null) => Entry;
  /** Writes and goes on; with nothing to write it only goes on. */
  readonly save: (facts: readonly NewFact[], fieldByName?: Readonly<Record<string, string>>) => Promise<void>;
  /** Throws what was typed away and goes back. */
  readonly leave: () => void;
}

export function useDayForm<T>(day: DayOn, name: string, initial: T, onDone: () => void): DayFormState<T> {
  const draftKey = `workday:${day.workdayId}/${name}`;
  const draft = useDraft<T>(draftKey, initial);
  const meta = useBookMeta();
  const writing = useWrite();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const leave = () => {
    draft.clear();
    onDone();
  };
  return {
    draft,
    errors,
    setErrors,
    busy: writing.state === 'saving',
    entry: (why = null) => ({ happened: happenedNow(day.zone), by: meta?.holderPersonId ?? null, why }),
    save: async (facts, fieldByName = {}) => {
      if (facts.length === 0) return leave();
      const written = await writing.run(facts, { draftKey });
      if (written === null) return;
      setErrors(notWritten(written, fieldByName));
      if (written.kind === 'written') onDone();
    },
    leave,
  };
}

/** A correction of one value of a fact of this day; none when nothing changed. */
export function corrected(
  day: DayOn,
  replaces: string,
  path: string,
  values: { readonly old: unknown; readonly new: unknown },
  entry: Entry,
): NewFact[] {
  if (JSON.stringify(values.old) === JSON.stringify(values.new)) return [];
  const body = { replaces, path, old: values.old as never, new: values.new as never, supersedes: null };
  return [newFact('valueCorrected.v1', body, { ...entry, about: [`workday:${day.workdayId}`] })];
}
