/**
 * Positive determinations of the season, each written on the first measurement of its tasks: on the footbridge nothing came after it, in
 * the library later results did, so that one is to be looked at again. The negative ones are left for whoever practises.
 */
import type { DeterminationFinding } from '#findings/duties/determining/determination.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { doubtsOnMeasurements } from '#findings/gear/doubtsOnPaper.ts';
import { peopleOnPaper } from '#findings/peopleOnPaper.ts';
import { newId } from '#store/device.ts';
import { hashOf } from '#store/files.ts';
import { practice } from '#words/practice.ts';
import { season as words } from '#words/practiceSeason.ts';
import { type Around, type Makers, named, type Papers } from './seasonAround.ts';

interface Positive {
  readonly worker: 'rex' | 'second';
  readonly site: 'bridge' | 'site';
  readonly measuredDaysAgo: number;
  readonly writtenDaysAgo: number;
  readonly siteName: string;
  readonly setting: 'indoors' | 'outdoors';
  readonly job: readonly ['steelPainter' | 'painter', string];
  readonly location: string;
  readonly observations: string;
}

const positives: readonly Positive[] = [
  {
    ...{ worker: 'rex', site: 'bridge', measuredDaysAgo: 112, writtenDaysAgo: 104 },
    ...{ siteName: words.bridge, setting: 'outdoors', job: ['steelPainter', words.steelPainter] },
    ...{ location: words.location, observations: words.observations },
  },
  {
    ...{ worker: 'second', site: 'site', measuredDaysAgo: 110, writtenDaysAgo: 102 },
    ...{ siteName: practice.site, setting: 'indoors', job: ['painter', practice.jobs.painter] },
    ...{ location: words.locationInside, observations: words.observationsInside },
  },
];

/** As it was then: on this one measurement, and whom it names. */
const asThen = (found: DeterminationFinding, { id, workerId }: Measurement): DeterminationFinding => ({
  ...found,
  measurementIds: found.measurementIds.filter((one) => one === id),
  relianceIds: [],
  monitoredIds: found.monitoredIds.filter((one) => one === workerId),
});

function onePositive(one: Positive, around: Around, [, determination, note]: Makers): Papers {
  const { book, duties, ids, clock, occasion } = around;
  const { fact, on } = clock;
  const siteId = ids[one.site];
  const first = duties.measurements.get(`${ids[one.worker]}.${on(one.measuredDaysAgo)}`);
  const now = duties.determinations.find((each) => each.siteId === siteId && each.groupKey === first?.groupKey);
  if (!first || !now) return { facts: [], files: [] };
  const found = asThen(now, first);
  const [at, determinedOn] = [clock.at(one.writtenDaysAgo, '17:00'), on(one.writtenDaysAgo)];
  const { monitoredIds, standsForIds, measurementIds } = found;
  const { location, observations, setting, siteName } = one;
  const values = determination.determinationValues({
    ...{ ...occasion, issuedInstant: at, outcome: 'positive', finding: found, measurements: [first], reliances: [] },
    ...{ people: peopleOnPaper(book, [...monitoredIds, ...standsForIds]), siteName, setting, location, determinedOn },
    ...{ tasks: named(first.taskIds).map(({ en }) => en), jobClassification: one.job[1], observations },
    ...{ monitoredIds, standsForIds, earlierMeasurements: null, complaints: words.complaints },
    ...{ writtenBy: practice.people.supervisor, shownAs: 'name' },
    gearDoubts: doubtsOnMeasurements([first], book),
  });
  const { paper } = words;
  const bytes = note.exampleNote(paper.title, [paper.note, paper.determination, location, paper.short]);
  const pdfHash = hashOf(bytes);
  const written = fact(at, 'determinationWritten.v1', {
    ...{ determinationId: newId(), outcome: 'positive', siteId, shiftId: `${siteId}.${on(one.measuredDaysAgo)}` },
    ...{ location, determinedOn, taskIds: [...first.taskIds], jobClassificationId: ids[one.job[0]] },
    ...{ measurementIds: [...measurementIds], relianceIds: [], monitoredIds: [...monitoredIds] },
    ...{ standsForIds: [...standsForIds], observations, earlierMeasurements: null, complaints: words.complaints },
    ...{ determination: JSON.parse(JSON.stringify(values)) as Record<string, unknown>, pdfHash },
    ...{ editions: { ...occasion.editions }, heads: occasion.heads.map((head) => ({ ...head })) },
  });
  return { facts: [written], files: [{ hash: pdfHash, type: 'application/pdf', bytes }] };
}

export const seasonDeterminations = (around: Around, makers: Makers): readonly Papers[] =>
  positives.map((one) => onePositive(one, around, makers));
