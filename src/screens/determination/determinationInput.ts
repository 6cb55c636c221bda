/** From the finding and what was typed to what the paper is made from. */
import type { DeterminationInput } from '#documents/determinationValues.ts';
import type { Occasion } from '#documents/occasion.ts';
import { doubtsOnMeasurements } from '#findings/gear/doubtsOnPaper.ts';
import { peopleOnPaper } from '#findings/peopleOnPaper.ts';
import { methodById } from '#reference/methods.ts';
import { type DeterminationHere, taskNames } from './determinationHere.ts';
import type { ReadDetermination } from './useWriting.ts';

type Asked = Omit<DeterminationInput, keyof Occasion | 'paper' | 'fonts'>;

/** Who measured and by which method, where the record tells. */
function sourcesOf({ book, measurements }: DeterminationHere): NonNullable<DeterminationInput['sourceOf']> {
  return new Map(
    measurements.map(({ id, finding }) => {
      const reported = book.reported.get(id);
      const methods = (finding?.samples ?? []).flatMap(
        ({ sampleId }) => book.samples.get(sampleId)?.results.at(-1)?.methodId ?? [],
      );
      const method = methodById(methods[0] ?? '')?.title ?? null;
      return [id, { by: reported?.fromName ?? null, method }] as const;
    }),
  );
}

export function determinationInput(here: DeterminationHere, read: ReadDetermination): Asked {
  const { book, finding, site, group } = here;
  return {
    outcome: read.outcome,
    finding,
    measurements: here.measurements,
    sourceOf: sourcesOf(here),
    reliances: finding.relianceIds
      .map((id) => book.reliances.get(id))
      .filter((one) => one !== undefined)
      .map(({ measurementId, shiftId, processes, material, controls, practices, environment, ownFirm }) => ({
        measurementId,
        reliedOn: shiftId.slice(shiftId.indexOf('.') + 1),
        answers: { processes, material, controls, practices, environment },
        ownFirm,
      })),
    people: peopleOnPaper(book, new Set([...finding.monitoredIds, ...finding.standsForIds])),
    siteName: site.name,
    setting: group.setting,
    location: read.location,
    determinedOn: read.determinedOn,
    tasks: taskNames(group.taskIds),
    jobClassification: book.jobClassifications.get(group.jobClassificationId ?? '')?.name ?? null,
    monitoredIds: finding.monitoredIds,
    standsForIds: finding.standsForIds,
    observations: read.observations,
    earlierMeasurements: read.earlier,
    complaints: read.complaints,
    writtenBy: read.writtenBy,
    gearDoubts: doubtsOnMeasurements(here.measurements, book),
    shownAs: read.shownAs,
  };
}
