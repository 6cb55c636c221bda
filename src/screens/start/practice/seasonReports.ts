/** What others measured, a job that rests on an earlier measurement, a revised report, and somebody who asked to see records. */
import type { Book } from '#records/book.ts';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds } from './seasonIds.ts';
import { gunsShrouded, restingShift, sanding, sashes } from './seasonPlan.ts';

const workMin = 480;
/** Of the first of the sashes: 32.64 µg instead of 31.68, so 34 µg/m³ instead of 33. */
const revisedUg = 32.64;
const sashesDaysAgo = 81;

export function seasonReports(ids: SeasonIds, { at, fact, on }: SeasonClock): NewFact[] {
  const alike = {
    processes: 'alike',
    material: 'alike',
    controls: 'alike',
    practices: 'alike',
    environment: 'alike',
  } as const;
  return [
    // last year's, by a consultant, of our own crew
    fact(at(118, '09:00'), 'measurementReported.v1', {
      reportedId: ids.consultants,
      from: 'consultant',
      fromName: words.consultant,
      ...{ reportNumber: words.consultantReport, workerId: ids.first, siteId: null },
      setting: 'indoors',
      ...{ workOn: on(300), receivedOn: on(118), taskIds: [...sashes], jobClassificationId: ids.restorer },
      average: { kind: 'measured', twa8UgPerM3: 26 },
      workedHours: workMin / 60,
      fullShift: 'yes',
      ownFirm: 'yes',
      accuracy: 'yes',
      remark: words.consultantRemark,
    }),
    // an inspector's, beside our own of that day
    fact(at(30, '09:00'), 'measurementReported.v1', {
      reportedId: ids.inspectors,
      from: 'inspector',
      fromName: words.inspector,
      ...{ reportNumber: words.inspectorReport, workerId: ids.rex, siteId: ids.bridge },
      setting: 'outdoors',
      ...{ workOn: on(42), receivedOn: on(30), taskIds: [...gunsShrouded], jobClassificationId: ids.steelPainter },
      average: { kind: 'measured', twa8UgPerM3: 43 },
      workedHours: workMin / 60,
      fullShift: 'yes',
      ownFirm: 'yes',
      accuracy: 'yes',
      remark: null,
    }),
    fact(at(restingShift.daysAgo, '06:30'), 'measurementReliedOn.v1', {
      ...{ relianceId: ids.reliance, measurementId: `${ids.dora}.${on(74)}` },
      shiftId: `${ids.readingRoom}.${on(restingShift.daysAgo)}`,
      ...{ taskIds: [...sanding], jobClassificationId: ids.painter, ...alike, ownFirm: 'yes' },
    }),
    fact(at(4, '12:00'), 'recordsRequested.v1', {
      ...{ requestId: newId(), askedOn: on(4), by: words.people.maya, personId: ids.maya, as: 'worker', remark: null },
    }),
  ];
}

/** The laboratory revises a result that was told long ago: it starts a clock of its own and asks for a notice of its own. */
export function seasonRevised(book: Book, ids: SeasonIds, { at, fact, on }: SeasonClock): NewFact[] {
  const workdayId = `${ids.first}.${on(sashesDaysAgo)}`;
  const sample = [...book.samples.values()].find((one) => one.workdayId === workdayId);
  const before = sample?.results.at(-1);
  if (!sample || !before) return [];
  return [
    fact(at(3, '10:00'), 'resultReceived.v1', {
      ...{ sampleId: sample.id, reportNumber: words.revised(before.reportNumber), laboratoryId: ids.laboratory },
      ...{ accreditation: before.accreditation, methodId: before.methodId },
      ...{ receivedOn: on(3), reportedOn: on(4), analysedOn: before.analysedOn },
      ...{ mass: { kind: 'measured', massUg: revisedUg }, reportingLimitUg: before.reportingLimitUg },
      ...{ blankCorrected: 'yes', wallDeposit: 'yes', laboratoryVolumeL: null, laboratoryConcentrationUgPerM3: null },
      ...{ saeFraction: null, remark: words.revisedRemark },
    }),
  ];
}
