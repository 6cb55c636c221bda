/**
 * The values of a written initial determination, 29 CFR 1926.62(d)(5): the (d)(3)(i) information, date, location within the worksite,
 * each employee monitored, whom it stands for, and why earlier data may be relied on. Printed, kept in determinationWritten.v1, attached.
 */
import type { Estimate } from '#core/estimate.ts';
import type { DeterminationBlock, DeterminationFinding } from '#findings/duties/determination.ts';
import type { Measurement } from '#findings/duties/measurement.ts';
import type { ResemblanceTerm } from '#findings/duties/taskGroup.ts';
import type { Occasion, PeopleById, Printing } from './occasion.ts';

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
  readonly shownAs: 'name' | 'identifier';
}

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
  readonly observations: string | null;
  readonly earlierMeasurements: string | null;
  readonly complaints: string | null;
  readonly writtenBy: string;
  readonly shownAs: 'name' | 'identifier';
}
