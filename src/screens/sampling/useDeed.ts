/** Saving one deed: its moment (tapped, typed or now), the facts it makes, and what stands in the way. */
import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { isInstant, offsetMinAt } from '#core/calendar.ts';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { type MomentDraft, parseMoment } from '#parts/parseMoment.ts';
import type { Happened, NewFact } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import type { Entry } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import type { Sampling } from './useSampling.ts';

export interface Deed<D> {
  readonly sampling: Sampling;
  /** `tap`: the tap that led here, or typed; `typed`: always typed; `now`: when it is saved. */
  readonly when: 'tap' | 'typed' | 'now';
  /** Reads the form and builds the facts; they are dropped when the reader gathered errors. */
  readonly build: (typed: D, read: FieldReader, entry: Entry) => readonly NewFact[];
  /** Where saving leads; the page of the sample unless said. */
  readonly next?: ((facts: readonly NewFact[]) => string) | undefined;
  readonly fieldByName?: Readonly<Record<string, string>> | undefined;
}

/** The tap that led here stands in the address, so that a reload does not lose it. */
export function useTappedAt(zone: string): Happened {
  const at = new URLSearchParams(useSearch()).get('at');
  const [opened] = useState(() => happenedNow(zone));
  return at !== null && isInstant(at) && at <= opened.at ? { ...opened, at, offsetMin: offsetMinAt(at, zone) } : opened;
}

export function useDeed<D>(deed: Deed<D>, draftKey: string, typed: D, moment: MomentDraft | null) {
  const { sampling, when, build, next, fieldByName } = deed;
  const { place, by, sample } = sampling;
  const tapped = useTappedAt(place.zone);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [, go] = useLocation();
  const writing = useWrite();

  const momentOf = (): { readonly happened: Happened; readonly errors: readonly FieldError[] } => {
    const otherwise = when === 'now' ? happenedNow(place.zone) : tapped;
    if (moment === null) return { happened: otherwise, errors: [] };
    const parsed = parseMoment('moment', moment, place);
    return parsed.kind === 'value'
      ? { happened: parsed.happened, errors: [] }
      : { happened: otherwise, errors: parsed.errors };
  };
  const save = async (facts: readonly NewFact[]): Promise<void> => {
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    const fields = moment === null ? fieldByName : { at: 'moment-time', ...fieldByName };
    if (written.kind !== 'written') return setErrors(notWritten(written, fields));
    go(next ? next(facts) : `/sample/${sample.id}`, { replace: true });
  };
  const submit = (): void => {
    const read = fieldReader(partsWords);
    const said = momentOf();
    const facts = build(typed, read, { happened: said.happened, by });
    const found = [...said.errors, ...read.errors];
    setErrors(found);
    if (found.length === 0) void save(facts);
  };
  return { submit, errors, tapped, busy: writing.state === 'saving' };
}
