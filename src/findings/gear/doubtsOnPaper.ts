/**
 * What a paper that is made now says of the gear that it rests on: doubts that are open, or that were settled as staying doubtful. Papers
 * made earlier are never made again; their pages tell.
 */
import type { Book } from '#records/book.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import { effectOf, type GearKind } from './doubtsOf.ts';
import { gearDoubtsOfPaper } from './gearDoubtsOf.ts';
import type { GearDoubtOf, GearPaper } from './touched.ts';

/** Plain JSON: it is kept with the values of the paper. */
export interface DoubtOnPaper {
  readonly gear: GearKind;
  readonly gearNumber: string;
  readonly foundOn: string;
  /** What was found, in the words of whoever said so. */
  readonly found: string;
  readonly effect: 'open' | 'staysDoubtful';
  /** Why it stays doubtful; null while nobody has decided. */
  readonly why: string | null;
}

/** On a custody sheet: the cassettes that rest on it, by their numbers. */
export interface DoubtOnSheet extends DoubtOnPaper {
  readonly sampleNumbers: readonly string[];
}

function onPaper({ gear, gearNumber, doubt }: GearDoubtOf): DoubtOnPaper | null {
  const effect = effectOf(doubt);
  if (effect !== 'open' && effect !== 'staysDoubtful') return null;
  const why = effect === 'open' ? null : (doubt.settled?.why ?? null);
  return { gear, gearNumber, foundOn: doubt.foundOn, found: doubt.found, effect, why };
}

/** By the day on which it was found; empty where nothing that it rests on is in doubt. */
export const doubtsOnPaper = (paper: GearPaper, book: Book): readonly DoubtOnPaper[] =>
  gearDoubtsOfPaper(paper, book).flatMap((one) => onPaper(one) ?? []);

/** The days that a measurement is judged on: its own, and the higher one of the same worker and day that judges it. */
const judgedOn = ({ id, judgedById }: Measurement): readonly string[] =>
  judgedById === undefined ? [id] : [id, judgedById];

/** Of everything that these measurements are judged on. */
export const doubtsOnMeasurements = (measurements: readonly Measurement[], book: Book): readonly DoubtOnPaper[] =>
  doubtsOnPaper({ kind: 'measurements', ids: measurements.flatMap(judgedOn) }, book);

/** Of a box: each doubt with the cassettes that rest on it, in the order in which they were packed. */
export function doubtsOnSheet(boxId: string, book: Book): readonly DoubtOnSheet[] {
  const ids = book.boxes.get(boxId)?.packed.sampleIds ?? [];
  const ofSamples = ids.flatMap((id) => {
    const sampleNumber = book.samples.get(id)?.sampleNumber ?? id;
    return gearDoubtsOfPaper({ kind: 'sample', id }, book).map(({ doubt }) => ({ doubt, sampleNumber }));
  });
  return gearDoubtsOfPaper({ kind: 'box', id: boxId }, book).flatMap((one) => {
    const said = onPaper(one);
    const resting = ofSamples.filter(({ doubt }) => doubt === one.doubt);
    return said ? [{ ...said, sampleNumbers: resting.map(({ sampleNumber }) => sampleNumber) }] : [];
  });
}
