/** The box of the practice book and its results: one worker between action level and PEL, the other low with minutes still unknown. */
import type { NewFact } from '#records/fact.ts';
import { practice as words } from '#words/practice.ts';
import type { PracticeIds } from './practiceBook.ts';
import type { PracticeClock } from './practiceClock.ts';

const methodId = 'niosh-7082';

export function practiceBox(ids: PracticeIds, { at, fact }: PracticeClock): NewFact[] {
  return [
    fact(at('16:20'), 'boxPacked.v1', {
      boxId: ids.box,
      siteId: ids.site,
      sampleIds: [ids.morning, ids.afternoon, ids.wholeDay, ids.blankOne, ids.blankTwo],
      laboratoryId: ids.laboratory,
      samplerId: ids.supervisor,
      analysis: words.analysis,
      methodId,
      reportingLimitUg: 2.5,
      includeWallDeposit: true,
      callBeforeReanalysis: true,
      turnaround: words.turnaround,
      workersShownAs: 'identifier',
      remark: null,
    }),
    fact(at('16:40'), 'boxHandedOver.v1', {
      boxId: ids.box,
      to: words.courier,
      trackingNumber: words.tracking,
      sealed: true,
    }),
    fact(at('18:05'), 'boxArrived.v1', { boxId: ids.box, remark: null }),
  ];
}

interface PracticeResult {
  readonly sampleId: string;
  /** null: less than the reporting limit. */
  readonly massUg: number | null;
  readonly volumeL: number | null;
  readonly concentrationUgPerM3: number | null;
}

export function practiceResults(ids: PracticeIds, { at, fact, yesterday }: PracticeClock): NewFact[] {
  const results: readonly PracticeResult[] = [
    { sampleId: ids.morning, massUg: 26.4, volumeL: 658, concentrationUgPerM3: 40.1 },
    { sampleId: ids.afternoon, massUg: 21.2, volumeL: 533, concentrationUgPerM3: 39.8 },
    { sampleId: ids.wholeDay, massUg: 9.2, volumeL: 927, concentrationUgPerM3: 9.9 },
    { sampleId: ids.blankOne, massUg: null, volumeL: null, concentrationUgPerM3: null },
    { sampleId: ids.blankTwo, massUg: null, volumeL: null, concentrationUgPerM3: null },
  ];
  const limitUg = 2.5;
  return results.map(({ sampleId, massUg, volumeL, concentrationUgPerM3 }) =>
    fact(at('23:10'), 'resultReceived.v1', {
      sampleId,
      reportNumber: words.report,
      laboratoryId: ids.laboratory,
      accreditation: words.accreditation,
      methodId,
      receivedOn: yesterday,
      reportedOn: yesterday,
      analysedOn: yesterday,
      mass: massUg === null ? { kind: 'lessThan', reportingLimitUg: limitUg } : { kind: 'measured', massUg },
      reportingLimitUg: limitUg,
      blankCorrected: 'no',
      wallDeposit: 'yes',
      laboratoryVolumeL: volumeL,
      laboratoryConcentrationUgPerM3: concentrationUgPerM3,
      saeFraction: null,
      remark: null,
    }),
  );
}
