/** Of the exposure record: each sample with its cassette, times, flows, laboratory and figure. None is hidden, void ones neither. */
import type { Term } from '#core/formula.ts';
import type { SampleFinding } from '#findings/sampleFinding.ts';
import type { SampleRecord } from '#records/book.ts';
import { en as exposure } from '#words/exposure.ts';
import { en } from '#words/exposureRecord.ts';
import { formatEstimate, formatList, formatQuantity } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { en as story } from '#words/story.ts';
import { valueText } from '#words/valueText.ts';
import { momentOf } from './exposureDay.ts';
import type { PrintedField, PrintedSection, Recording } from './exposureRecordValues.ts';

const { sample: words } = en;

/** As many digits as the reader needs to repeat the sum. */
const exact = (term: Term | null): string =>
  term === null ? en.notKnown : formatEstimate(term.estimate, term.unit, { digits: 'working' });

const flowAt = (recording: Recording, term: Term | null, checkId: string | undefined): string => {
  const check = recording.book.flowChecks.get(checkId ?? '');
  if (term === null || !check) return en.notKnown;
  return words.flowIs(exact(term), momentOf(recording, check.happened.at));
};

function worn(recording: Recording, sample: SampleRecord, found: SampleFinding): PrintedField[] {
  const { putOn, stopped, sealed } = sample;
  const away = sample.leadAreaAway.map(({ fromAt, toAt, reason }) => {
    const to = toAt === null ? en.notKnown : momentOf(recording, toAt);
    return `${exposure.minutes.span(momentOf(recording, fromAt), to)}: ${reason}`;
  });
  return [
    [words.putOn, putOn ? momentOf(recording, putOn.at) : en.notKnown],
    [words.stopped, stopped ? momentOf(recording, stopped.at) : en.notKnown],
    [words.worn, exact(found.wornMin)],
    [words.pumpMin, exact(found.pumpRunMin)],
    ...(away.length > 0 ? [[words.away, away.join('; ')] as PrintedField] : []),
    [words.flowBefore, flowAt(recording, found.flowBefore, found.checkBefore?.flowCheckId)],
    [words.flowAfter, flowAt(recording, found.flowAfter, found.checkAfter?.flowCheckId)],
    [words.change, exact(found.flowChange)],
    [words.average, exact(found.averageFlow)],
    ...(found.lowerFlow !== null && found.lowerFlow !== found.averageFlow
      ? [[words.lower, exact(found.lowerFlow)] as PrintedField]
      : []),
    [words.volume, exact(found.volume)],
    [
      words.sealed,
      sealed ? words.sealedIs(momentOf(recording, sealed.at), sealed.labelled, sealed.lockedIn) : en.notKnown,
    ],
  ];
}

type Result = SampleRecord['results'][number];

const massOf = ({ mass }: Result): string =>
  mass.kind === 'measured'
    ? formatQuantity(mass.massUg, 'µg', { digits: 'working' })
    : valueText('/mass', mass, { nameOf: () => undefined, zone: 'UTC' });

function laboratoryOf(result: Result, { naming }: Recording): string {
  const { laboratoryId, accreditation } = result;
  const name = laboratoryId === null ? en.notKnown : (naming.nameOf(laboratoryId) ?? en.notKnown);
  return words.accredited(name, accreditation ?? en.notKnown);
}

/** One report: figure, and what says how exact it is. */
function reported(result: Result, recording: Recording): PrintedField[] {
  const { methodId, reportingLimitUg, saeFraction, laboratoryVolumeL, laboratoryConcentrationUgPerM3 } = result;
  const optional: [string, string | null][] = [
    [words.error, saeFraction === null ? null : formatQuantity(saeFraction * 100, '%')],
    [words.ownVolume, laboratoryVolumeL === null ? null : formatQuantity(laboratoryVolumeL, 'L')],
    [
      words.ownFigure,
      laboratoryConcentrationUgPerM3 === null ? null : formatQuantity(laboratoryConcentrationUgPerM3, 'µg/m³'),
    ],
  ];
  return [
    [
      words.result(result.reportNumber),
      words.resultIs(massOf(result), result.receivedOn, result.reportedOn, result.analysedOn),
    ],
    [words.laboratory, laboratoryOf(result, recording)],
    [words.method, methodId === null ? en.notKnown : (recording.naming.nameOf(methodId) ?? methodId)],
    [words.reportingLimit, reportingLimitUg === null ? en.notKnown : formatQuantity(reportingLimitUg, 'µg')],
    [words.blanks, words.answers[result.blankCorrected]],
    [words.wall, words.answers[result.wallDeposit]],
    ...optional.flatMap(([label, value]) => (value === null ? [] : [[label, value] as PrintedField])),
  ];
}

function fittingText({ fitting }: SampleRecord, { naming }: Recording): string {
  if (fitting === null) return en.notKnown;
  return `${story.fitted[fitting.mode](fitting.initials)}; ${valueText('/points', fitting.points, naming)}`;
}

function sectionOf(found: SampleFinding, recording: Recording): PrintedSection {
  const { book } = recording;
  const sample = book.samples.get(found.sampleId);
  if (!sample)
    return { heading: words.heading(found.sampleNumber), fields: [], lines: found.reasons.map(reasonSentence) };
  const lot = book.lots.get(sample.lotId);
  const pump = book.pumps.get(sample.pumpId ?? '');
  const happened = [...sample.mishaps.map(({ mishap }) => story.mishap[mishap]), ...sample.remarks];
  const shown: PrintedField =
    found.concentration === null && found.judged !== null
      ? [words.judged, exact(found.judged)]
      : [words.concentration, exact(found.concentration)];
  return {
    heading: words.heading(sample.sampleNumber),
    fields: [
      [words.quality, exposure.quality[found.quality]],
      [words.cassette, lot ? words.cassetteIs(lot.lotNumber, lot.media) : en.notKnown],
      [words.pump, pump ? formatList([pump.serial, ...(pump.model === null ? [] : [pump.model])]) : en.notKnown],
      [words.fitted, fittingText(sample, recording)],
      ...worn(recording, sample, found),
      ...(happened.length > 0 ? [[words.happened, happened.join('; ')] as PrintedField] : []),
      ...(sample.results.length === 0
        ? [[words.noResult, words.notIn] as PrintedField]
        : sample.results.flatMap((result) => reported(result, recording))),
      shown,
    ],
    lines: found.reasons.map(reasonSentence),
  };
}

export const sampleSections = (recording: Recording): PrintedSection[] =>
  recording.finding.samples.map((found) => sectionOf(found, recording));
