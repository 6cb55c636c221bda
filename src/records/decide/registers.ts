/** People, places and gear are entered once; their names may change. */

import { subjectOf } from '../about.ts';
import type { AnyRecord } from '../book.ts';
import type { NewFact } from '../fact.ts';
import type { Ask } from './ask.ts';

function entered(ask: Ask): void {
  const key = subjectOf(ask.fact);
  if (key !== null && ask.view.record(key)) ask.refuse('alreadyInBook', ['about/0'], { key });
}

/** The records named in `about`; a refusal for each that is not in this book. */
export function knownRecords(ask: Ask): readonly AnyRecord[] {
  return ask.fact.about.flatMap((key, at) => {
    const record = ask.view.record(key);
    if (!record) ask.refuse('recordUnknown', [`about/${at}`], { key });
    return record ? [record] : [];
  });
}

/** The name fact that stands now: a new name says that it knew of it. */
export function nameSuperseding(ask: Ask): NewFact {
  const [record] = knownRecords(ask);
  const { fact } = ask;
  if (fact.kind !== 'nameChanged.v1' || !record) return fact;
  const supersedes = record.strikes.findLast(({ path }) => path === '/name')?.correctionId ?? null;
  return { ...fact, body: { ...fact.body, supersedes } };
}

export const registerCases = {
  'bookOpened.v1': entered,
  'siteAdded.v1': entered,
  'personAdded.v1': entered,
  'jobClassificationAdded.v1': entered,
  'pumpAdded.v1': entered,
  'meterAdded.v1': entered,
  'lotAdded.v1': entered,
  'laboratoryAdded.v1': entered,
  'noteMade.v1': (ask: Ask<'noteMade.v1'>) => void knownRecords(ask as Ask),
};
