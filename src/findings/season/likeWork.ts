/** What samples of these tasks alone were found to be: each with its sample and its bounds, and the spread of them all. */
import { between, type Estimate, exactly, lowerOf, upperOf } from '#core/estimate.ts';
import { recorded } from '#core/formula.ts';
import { geometricSd } from '#core/geometricSd.ts';
import type { Book, SampleRecord } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import type { Measurement } from '../duties/measuring/measurement.ts';
import type { SampleFinding } from '../sampleFinding.ts';
import type { DayAheadInput, LikeSample, PieceAhead } from './dayAheadFinding.ts';

const tasksKey = (taskIds: readonly string[]): string => [...new Set(taskIds)].sort().join('+');

/** Nothing stands against the figure: not even what would only keep *below* from being said. */
const isSound = ({ quality, blocksBelow }: SampleFinding): boolean => quality === 'good' && blocksBelow.length === 0;

function likeSample(finding: SampleFinding, sample: SampleRecord): LikeSample | null {
  const working = finding.protectiveConcentration ?? finding.judged;
  if (!working || sample.workdayId === null) return null;
  const { id: sampleId, sampleNumber, workdayId, workOn, workerId } = sample;
  return {
    sampleId,
    sampleNumber,
    workdayId,
    workOn,
    workerId,
    concentrationUgPerM3: working.estimate,
    working,
    doubtful: !isSound(finding) || working.estimate.kind === 'atLeast',
  };
}

/** What others measured of these tasks: an average over the day, which the air of the task's own minutes need not have been below. */
function likeReported(one: Measurement): LikeSample | null {
  const { id, finding, twa8UgPerM3, workOn, workerId, because } = one;
  if (finding !== null || twa8UgPerM3 === null) return null;
  return {
    ...{ sampleId: id, sampleNumber: '', workdayId: id, workOn, workerId, reported: true, doubtful: true },
    concentrationUgPerM3: twa8UgPerM3,
    working: recorded('averageReported', 'µg/m³', twa8UgPerM3, because),
  };
}

/** Whether it was of another setting; where the site is not in the book nobody knows, and it may be like work. */
const isElsewhere = (setting: string | null, there: string | undefined): boolean =>
  setting !== null && there !== undefined && there !== setting;

/** By the tasks of a sample, oldest first. */
export function samplesByTasks(
  book: Book,
  duties: DutiesOfBook,
  setting: NonNullable<DayAheadInput['setting']> | null = null,
): (taskIds: readonly string[]) => readonly LikeSample[] {
  const byTasks = new Map<string, LikeSample[]>();
  const add = (taskIds: readonly string[], like: LikeSample | null): void => {
    const key = tasksKey(taskIds);
    if (like) byTasks.set(key, [...(byTasks.get(key) ?? []), like]);
  };
  for (const one of duties.measurements.values()) {
    if (!isElsewhere(setting, one.groupKey.split('|')[0])) add(one.taskIds, likeReported(one));
    for (const found of one.finding?.samples ?? []) {
      const sample = book.samples.get(found.sampleId);
      const there = sample && book.sites.get(sample.siteId)?.setting;
      if (!sample || isElsewhere(setting, there)) continue;
      const like = likeSample(found, sample);
      // of a site that nobody knows it may raise the figure, and bounds nothing
      add(sample.taskIds, like && setting !== null && there === undefined ? { ...like, doubtful: true } : like);
    }
  }
  const order = (a: LikeSample, b: LikeSample): number =>
    a.workOn.localeCompare(b.workOn) || a.sampleNumber.localeCompare(b.sampleNumber);
  return (taskIds) => [...(byTasks.get(tasksKey(taskIds)) ?? [])].sort(order);
}

/** The most that one shows; of what is only *at least*, that. */
const shown = (estimate: Estimate): number => (estimate.kind === 'atLeast' ? estimate.lower : upperOf(estimate));

/** The highest of all: doubt may raise it. */
export const highestShown = (samples: readonly LikeSample[]): number =>
  samples.reduce((top, { concentrationUgPerM3 }) => Math.max(top, shown(concentrationUgPerM3)), 0);

/** The highest that was seen, as the least that protection must reach; null where nothing was. */
export function highestSeen(samples: readonly LikeSample[]): Estimate | null {
  if (samples.length === 0) return null;
  const highest = highestShown(samples);
  return isOpenAt(samples, highest) ? { kind: 'atLeast', lower: highest } : exactly(highest);
}
const isOpenAt = (samples: readonly LikeSample[], highest: number): boolean =>
  samples.some(({ concentrationUgPerM3: one }) => one.kind === 'atLeast' && one.lower === highest);

/** One that is only *at least* lies above this: nothing bounds the work from above. */
export const isOpenAbove = (samples: readonly LikeSample[], highest: number): boolean =>
  samples.some(({ concentrationUgPerM3: one }) => one.kind === 'atLeast' && one.lower > highest);

/** null without a sound one: those in doubt bound nothing. */
export function spreadOf(samples: readonly LikeSample[]): PieceAhead['spread'] {
  const sound = samples.filter(({ doubtful }) => !doubtful);
  if (sound.length === 0) return null;
  const uppers = sound.map(({ concentrationUgPerM3 }) => upperOf(concentrationUgPerM3));
  const bounded = samples.filter(({ concentrationUgPerM3 }) => concentrationUgPerM3.kind !== 'atLeast');
  const highest = highestShown(bounded);
  const terms = uppers.map((one) => recorded('upperEnd', 'µg/m³', exactly(one), []));
  return {
    soundCount: sound.length,
    lowestUgPerM3: Math.min(...sound.map(({ concentrationUgPerM3 }) => lowerOf(concentrationUgPerM3))),
    highestUgPerM3: isOpenAbove(samples, highest) ? null : highest,
    geometricSd: sound.length >= 3 && uppers.every((one) => one > 0) ? geometricSd.of({ C: terms }) : null,
  };
}

export const spreadEstimate = ({ lowestUgPerM3, highestUgPerM3 }: NonNullable<PieceAhead['spread']>): Estimate =>
  highestUgPerM3 === null
    ? { kind: 'atLeast', lower: lowestUgPerM3 }
    : highestUgPerM3 === lowestUgPerM3
      ? exactly(lowestUgPerM3)
      : between(lowestUgPerM3, highestUgPerM3);
