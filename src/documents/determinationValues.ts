/**
 * The values of a written initial determination, 29 CFR 1926.62(d)(5): the (d)(3)(i) information, date, location within the worksite,
 * each employee monitored, whom it stands for, and why earlier data may be relied on. Printed, kept in determinationWritten.v1, attached.
 */
import { daysBetween } from '#core/calendar.ts';
import type { Estimate } from '#core/estimate.ts';
import type { DeterminationBlock, DeterminationFinding } from '#findings/duties/determining/determination.ts';
import type { ResemblanceTerm } from '#findings/duties/groups/taskGroup.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { DoubtOnPaper } from '#findings/gear/doubtsOnPaper.ts';
import { keptDoubts } from './gearOnPaper.ts';
import { type Occasion, occasionOf, type PeopleById, type Printing } from './occasion.ts';

export type Alike = 'alike' | 'unlike' | 'notKnown';

/** Why a measurement of another day may be relied on: RelianceRecord holds the answers. */
export interface ReliedOn {
  readonly measurementId: string;
  readonly reliedOn: string;
  readonly answers: Readonly<Record<ResemblanceTerm, Alike>>;
  readonly ownFirm: 'yes' | 'no' | 'notStated';
}

export interface DeterminationInput extends Occasion, Printing {
  readonly outcome: 'negative' | 'positive';
  readonly finding: DeterminationFinding;
  readonly measurements: readonly Measurement[];
  /** Who measured, report number, method, by measurement id, where known. */
  readonly sourceOf?: ReadonlyMap<string, { readonly by: string | null; readonly method: string | null }>;
  readonly reliances: readonly ReliedOn[];
  readonly people: PeopleById;
  readonly siteName: string;
  readonly setting: 'indoors' | 'outdoors';
  /** Where within the worksite. */
  readonly location: string;
  readonly determinedOn: string;
  /** Everyday names of the tasks, in English. */
  readonly tasks: readonly string[];
  readonly jobClassification: string | null;
  readonly monitoredIds: readonly string[];
  readonly standsForIds: readonly string[];
  readonly observations: string | null;
  readonly earlierMeasurements: string | null;
  readonly complaints: string | null;
  readonly writtenBy: string;
  /** Gear that the measurements rest on and that is in doubt (doubtsOnMeasurements). */
  readonly gearDoubts: readonly DoubtOnPaper[];
  readonly shownAs: 'name' | 'identifier';
}

/** All but the paper it is printed on. */
export type DeterminedInput = Omit<DeterminationInput, keyof Printing>;

export interface DeterminationPerson {
  readonly personId: string;
  readonly shown: string;
  readonly jobClassification: string | null;
  readonly employer: string | null;
}

export interface DeterminationMeasurement {
  readonly measurementId: string;
  readonly workOn: string;
  readonly worker: string | null;
  readonly from: Measurement['from'];
  readonly by: string | null;
  readonly method: string | null;
  readonly reportNumbers: readonly string[];
  readonly sampleNumbers: readonly string[];
  readonly sampledMin: number | null;
  readonly twa8UgPerM3: Estimate | null;
  readonly regular: 'yes' | 'no' | null;
}

export interface DeterminationValues extends Occasion {
  readonly determinationFormat: 'determination.v1';
  readonly outcome: 'negative' | 'positive';
  readonly siteName: string;
  readonly setting: 'indoors' | 'outdoors';
  readonly location: string;
  readonly determinedOn: string;
  readonly tasks: readonly string[];
  readonly jobClassification: string | null;
  readonly actionLevelUgPerM3: number | null;
  readonly pelUgPerM3: number | null;
  readonly document: string | null;
  readonly measurements: readonly DeterminationMeasurement[];
  readonly relied: readonly (ReliedOn & { readonly workOn: string | null; readonly ageDays: number | null })[];
  readonly monitored: readonly DeterminationPerson[];
  readonly standsFor: readonly DeterminationPerson[];
  readonly blocks: readonly Pick<DeterminationBlock, 'key' | 'measurementId' | 'params'>[];
  readonly gearDoubts: readonly DoubtOnPaper[];
  readonly observations: string | null;
  readonly earlierMeasurements: string | null;
  readonly complaints: string | null;
  readonly writtenBy: string;
  readonly shownAs: 'name' | 'identifier';
}

const shown = (id: string, { people, shownAs }: DeterminedInput): string => {
  const person = people.get(id);
  return (shownAs === 'identifier' ? person?.identifier : null) ?? person?.name ?? id;
};

const peopleOf = (ids: readonly string[], input: DeterminedInput): DeterminationPerson[] =>
  ids.map((personId) => ({
    personId,
    shown: shown(personId, input),
    jobClassification: input.people.get(personId)?.jobClassification ?? null,
    employer: input.people.get(personId)?.employer ?? null,
  }));

function measured(measurement: Measurement, input: DeterminedInput): DeterminationMeasurement {
  const { finding } = measurement;
  const source = input.sourceOf?.get(measurement.id);
  const sampled = finding?.segments.filter(({ as }) => as === 'sampled');
  return {
    measurementId: measurement.id,
    workOn: measurement.workOn,
    worker: measurement.workerId === null ? null : shown(measurement.workerId, input),
    from: measurement.from,
    by: source?.by ?? null,
    method: source?.method ?? null,
    reportNumbers: measurement.receipts.flatMap(({ reportNumber }) => (reportNumber === null ? [] : [reportNumber])),
    sampleNumbers: finding?.samples.map(({ sampleNumber }) => sampleNumber) ?? [],
    sampledMin: sampled ? sampled.reduce((sum, { durationMin }) => sum + durationMin, 0) : null,
    twa8UgPerM3: measurement.twa8UgPerM3,
    regular: finding?.regular ?? null,
  };
}

function reliedOn(one: ReliedOn, { measurements }: DeterminedInput): DeterminationValues['relied'][number] {
  const workOn = measurements.find(({ id }) => id === one.measurementId)?.workOn ?? null;
  return {
    measurementId: one.measurementId,
    reliedOn: one.reliedOn,
    answers: { ...one.answers },
    ownFirm: one.ownFirm,
    workOn,
    ageDays: workOn === null ? null : daysBetween(workOn, one.reliedOn),
  };
}

export function determinationValues(input: DeterminedInput): DeterminationValues {
  const limits = input.measurements[0]?.limits;
  const set = limits?.set ?? null;
  return {
    determinationFormat: 'determination.v1',
    ...occasionOf(input),
    outcome: input.outcome,
    siteName: input.siteName,
    setting: input.setting,
    location: input.location,
    determinedOn: input.determinedOn,
    tasks: [...input.tasks],
    jobClassification: input.jobClassification,
    actionLevelUgPerM3: set?.actionLevel.value ?? null,
    pelUgPerM3: set?.pel.value ?? null,
    // paragraphs are named only of a rule that is held
    document: limits?.heldComplete ? limits.set.document : null,
    measurements: input.measurements.map((measurement) => measured(measurement, input)),
    relied: input.reliances.map((one) => reliedOn(one, input)),
    monitored: peopleOf(input.monitoredIds, input),
    standsFor: peopleOf(input.standsForIds, input),
    blocks: input.finding.blocks.map(({ key, measurementId, params }) => ({ key, measurementId, params })),
    gearDoubts: keptDoubts(input.gearDoubts),
    observations: input.observations,
    earlierMeasurements: input.earlierMeasurements,
    complaints: input.complaints,
    writtenBy: input.writtenBy,
    shownAs: input.shownAs,
  };
}
