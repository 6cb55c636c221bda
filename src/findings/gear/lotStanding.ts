/** How a lot of cassettes stands: how long it lasts, what was used of it, and whether its field blanks keep up. */
import type { Book, LotRecord, SampleRecord } from '#records/book.ts';
import { blanksNeeded } from '../blanks.ts';
import { dueOf, headOf } from './headStanding.ts';
import { indexOf } from './restsOn.ts';
import type { LotStanding } from './standings.ts';

interface Counts {
  usedCount: number;
  blanksCount: number;
}
const isUsed = ({ sampleKind, putOn, stopped }: SampleRecord): boolean =>
  sampleKind === 'air' && (putOn !== null || stopped !== null);

function count(samples: Iterable<SampleRecord>): Counts {
  const found = { usedCount: 0, blanksCount: 0 };
  for (const sample of samples) {
    if (sample.sampleKind === 'blank') found.blanksCount += 1;
    else if (isUsed(sample)) found.usedCount += 1;
  }
  return found;
}

/** A tenth of the samples, at least two: the rule that boxes are packed by. */
const needed = (samplesCount: number): number => blanksNeeded(samplesCount, 'tenPercent').count;

export function byLot(book: Book): ReadonlyMap<string, readonly SampleRecord[]> {
  const found = new Map<string, SampleRecord[]>();
  for (const sample of book.samples.values()) {
    const list = found.get(sample.lotId);
    if (list) list.push(sample);
    else found.set(sample.lotId, [sample]);
  }
  return found;
}

function boxesOf(samples: readonly SampleRecord[], book: Book): LotStanding['boxes'] {
  const { boxesBySample } = indexOf(book);
  const found = new Map<string, SampleRecord[]>();
  for (const sample of samples)
    for (const { id } of boxesBySample.get(sample.id) ?? []) found.set(id, [...(found.get(id) ?? []), sample]);
  return [...found].map(([boxId, own]) => {
    const samplesCount = own.filter(({ sampleKind }) => sampleKind === 'air').length;
    const blanksCount = own.length - samplesCount;
    return { boxId, samplesCount, blanksCount, blanksNeededCount: needed(samplesCount) };
  });
}

export function lotStanding(lot: LotRecord, samples: readonly SampleRecord[], book: Book, today: string): LotStanding {
  const counts = count(samples);
  const due = dueOf(lot.expiresOn, today);
  return {
    ...headOf('lot', lot, today),
    media: lot.media,
    expiresOn: lot.expiresOn,
    expiry: due === 'overdue' ? 'passed' : due,
    ...counts,
    blanksNeededCount: needed(counts.usedCount),
    boxes: boxesOf(samples, book),
  };
}
