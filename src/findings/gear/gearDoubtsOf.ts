/** Which doubts about gear a paper, a measurement or a sample rests on. */
import type { Book, GearDoubt, SampleRecord } from '#records/book.ts';
import { effectOf, type GearKind, type GearRecord, gearNumberOf, touchesDays } from './doubtsOf.ts';
import { gearOfSample } from './restsOn.ts';
import type { GearDoubtOf, GearPaper } from './touched.ts';

export const doubtOf = (gear: GearKind, record: GearRecord, doubt: GearDoubt): GearDoubtOf => ({
  ...{ gear, gearId: record.id, gearNumber: gearNumberOf(record), doubt, effect: effectOf(doubt) },
});

function ofMeasurements(ids: readonly string[], book: Book): readonly SampleRecord[] {
  const wanted = new Set(ids);
  return [...book.samples.values()].filter(({ workdayId }) => workdayId !== null && wanted.has(workdayId));
}

const samplesIn = (ids: readonly string[], book: Book): readonly SampleRecord[] =>
  ids.flatMap((id) => book.samples.get(id) ?? []);

function ofDetermination(id: string, book: Book): readonly SampleRecord[] {
  const written = book.determinations.get(id)?.written;
  const relied = (written?.relianceIds ?? []).flatMap((one) => book.reliances.get(one)?.measurementId ?? []);
  return ofMeasurements([...(written?.measurementIds ?? []), ...relied], book);
}

/** The samples that it rests on, as far as the book at hand knows them. */
function samplesOf(paper: GearPaper, book: Book): readonly SampleRecord[] {
  switch (paper.kind) {
    case 'sample':
      return samplesIn([paper.id], book);
    case 'box':
      return samplesIn(book.boxes.get(paper.id)?.packed.sampleIds ?? [], book);
    case 'notice':
      return ofMeasurements([book.notices.get(paper.id)?.issued.measurementId ?? ''], book);
    case 'determination':
      return ofDetermination(paper.id, book);
    case 'measurements':
      return ofMeasurements(paper.ids, book);
    default:
      return ofMeasurements([paper.id], book);
  }
}

/** Every one, settled or not, once each, by the day on which it was found; `isDoubted` tells those that prove nothing low. */
export function gearDoubtsOfPaper(paper: GearPaper, book: Book): readonly GearDoubtOf[] {
  const found = new Map<string, GearDoubtOf>();
  for (const sample of samplesOf(paper, book))
    for (const { gear, record, days } of gearOfSample(sample, book))
      for (const doubt of record?.doubts ?? [])
        if (record && touchesDays(doubt, days.fromOn, days.toOn))
          found.set(`${gear} ${record.id} ${doubt.doubtId}`, doubtOf(gear, record, doubt));
  const order = ({ doubt, gearId }: GearDoubtOf): string => `${doubt.foundOn} ${gearId} ${doubt.doubtId}`;
  return [...found.values()].sort((a, b) => (order(a) < order(b) ? -1 : 1));
}
