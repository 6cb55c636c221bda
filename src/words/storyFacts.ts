/** One sentence for every kind of fact there is: the story of a record leaves none of them out. Read by office and inspector. */
import type { Fact, FactKind } from '#records/fact.ts';
import { labelOf } from './fieldNames.ts';
import { formatDay, formatList, formatMinutes, formatQuantity } from './quantity.ts';
import { en as story } from './story.ts';
import { en as ofDuties } from './storyOfDuties.ts';
import { en as ofSeason } from './storyOfSeason.ts';
import { type Naming, valueText } from './valueText.ts';

export interface Telling extends Naming {
  /** What a candidate of a dispute says, as it is said; undefined when it is not among the facts told. */
  readonly saidBy: (factId: string, path: string) => string | undefined;
}

type Sentence<K extends FactKind> = (fact: Fact<K>, say: Telling) => string;

const named = (id: string | null, { nameOf }: Naming): string => (id === null ? '' : (nameOf(id) ?? story.notHere));
const after = (text: string | null): string => (text === null || text === '' ? '' : `: ${text}`);
const withRemark = (sentence: string, remark: string | null): string => `${sentence}${after(remark)}`;
const values = (body: object, keys: readonly string[], say: Telling): string =>
  keys
    .map((key) => `${labelOf(`/${key}`)}: ${valueText(`/${key}`, (body as Record<string, unknown>)[key], say)}`)
    .join('; ');

/** A kind without a sentence here does not compile. */
export const en: { readonly [K in FactKind]: Sentence<K> } = {
  ...ofDuties,
  ...ofSeason,
  'bookOpened.v1': ({ body }) => `The book of ${body.firmName} was opened${body.practice ? ', for practice' : ''}`,
  'siteAdded.v1': ({ body }, say) =>
    `The site ${body.name} was written down. ${values(body, ['stateCode', 'setting', 'altitudeM', 'zone'], say)}`,
  'personAdded.v1': ({ body }, say) =>
    `${body.name} was written down. ${values(body, ['identifier', 'language', 'jobClassificationId', 'employer'], say)}`,
  'jobClassificationAdded.v1': ({ body }) => `The job classification ${body.name} was written down`,
  'pumpAdded.v1': ({ body }, say) => `Pump ${body.serial} was written down. ${values(body, ['model'], say)}`,
  'meterAdded.v1': ({ body }, say) =>
    `Flow meter ${body.serial} was written down. ${values(
      body,
      ['meterKind', 'certificateOn', 'dueOn', 'calibrationTemperatureC', 'calibrationPressureKPa', 'pairs'],
      say,
    )}`,
  'lotAdded.v1': ({ body }, say) =>
    `The lot ${body.lotNumber} was written down. ${values(body, ['media', 'expiresOn'], say)}`,
  'laboratoryAdded.v1': ({ body }, say) =>
    `The laboratory ${body.name} was written down. ${values(body, ['address', 'accreditation'], say)}`,
  'nameChanged.v1': ({ body }) => `It is called ${body.name} from now on`,
  'noteMade.v1': ({ body }) => `Note: ${body.text}`,
  'shiftOpened.v1': ({ body }, say) =>
    `The shift of ${formatDay(body.workOn)} at ${named(body.siteId, say)} was opened`,
  'flowChecked.v1': ({ body }, say) =>
    withRemark(
      `Flow ${body.purpose} of pump ${named(body.pumpId, say)} checked with flow meter ${named(body.meterId, say)}. ${values(
        body,
        ['readings', 'inLine', 'lotId', 'temperatureC', 'pressureKPa'],
        say,
      )}`,
      body.remark,
    ),
  'conditionsNoted.v1': ({ body }, say) =>
    withRemark(
      `Conditions of the day. ${values(
        body,
        ['tool', 'method', 'dustCollection', 'containment', 'ventilation', 'weather', 'paintLead', 'area'],
        say,
      )}`,
      body.remark,
    ),
  'samplePrepared.v1': ({ body }, say) =>
    `Cassette ${body.sampleNumber} was prepared for ${named(body.workerId, say)}: pump ${named(body.pumpId, say)}, lot ${named(body.lotId, say)}, for ${formatList(
      body.taskIds.map((id) => say.nameOf(id) ?? id),
    )}${body.jobClassificationId === null ? '' : `, as ${named(body.jobClassificationId, say)}`}${
      body.follows === null ? '' : `. It follows cassette ${named(body.follows, say)}`
    }`,
  'fittingChecked.v1': ({ body }, say) =>
    `The fitting was gone through in ${valueText('/language', body.language, say)}: ${valueText('/mode', body.mode, say)}${
      body.initials === null ? '' : `, initials ${body.initials}`
    }; ${valueText('/points', body.points, say)}${body.observationOffered ? '; the right to watch was offered' : '; the right to watch was not offered'}`,
  'pumpPutOn.v1': () => story.putOn,
  'pumpLookedAt.v1': ({ body }) => withRemark(story.looked(body.running, body.inPlace), body.remark),
  'leadAreaLeft.v1': ({ body }) => story.away(body.reason),
  'leadAreaEntered.v1': () => story.backInLead,
  'pumpTakenOff.v1': ({ body }) =>
    `${story.off(body.stillRunning, body.reason)}${body.awayFromLead ? '; away from the lead area meanwhile' : ''}`,
  'pumpPutBackOn.v1': () => story.backOn,
  'pumpFaulted.v1': ({ body }) =>
    withRemark(
      `${story.fault[body.fault]}${body.pumpMin === null ? '' : `; the pump showed ${formatMinutes(body.pumpMin)}`}`,
      body.remark,
    ),
  'mishapNoted.v1': ({ body }) => withRemark(story.mishap[body.mishap], body.remark),
  'pumpStopped.v1': ({ body }) => story.stopped(body.pumpMin),
  'stoppedByMistake.v1': () => 'The stop was a mistake: the pump ran on',
  'cassetteSealed.v1': ({ body }, say) =>
    `${story.sealed(body.labelled, body.lockedIn)}${body.lockedById === null ? '' : `, by ${named(body.lockedById, say)}`}`,
  'blankOpened.v1': ({ body }, say) =>
    `Field blank ${body.sampleNumber} of lot ${named(body.lotId, say)} was opened and closed again: ${body.openedWhere}`,
  'flowDecided.v1': ({ body }, say) => `Decided: ${valueText('/use', body.use, say)} counts`,
  'sampleVoided.v1': () => 'The sample was marked void',
  'remarkMade.v1': ({ body }) => story.remark(body.text),
  'clockSetBackNoticed.v1': ({ body }) => `${story.setBack}, by ${formatMinutes(body.setBackMin)}`,
  'workHoursStated.v1': ({ body }, say) => `Worked ${valueText('/pieces', body.pieces, say)}`,
  'otherWorkAsked.v1': ({ body }, say) =>
    `Asked about other work that day. ${values(body, ['callOut', 'secondSite', 'secondEmployer'], say)}`,
  'minutesExplained.v1': ({ body }, say) =>
    `${valueText('/fromAt', body.fromAt, say)} to ${valueText('/toAt', body.toAt, say)}: ${valueText('/as', body.as, say)}${
      body.sampleId === null ? '' : `, cassette ${named(body.sampleId, say)}`
    }${after(body.reason)}`,
  'dayDescribed.v1': ({ body }) =>
    `${body.regular === 'yes' ? 'A regular day' : 'Not a regular day'}${after(body.reason)}`,
  'resultReceived.v1': ({ body }, say) =>
    withRemark(
      `${story.result(body.reportNumber)}. ${values(
        body,
        [
          'mass',
          'reportingLimitUg',
          'laboratoryId',
          'methodId',
          'accreditation',
          'receivedOn',
          'reportedOn',
          'analysedOn',
          'blankCorrected',
          'wallDeposit',
          'laboratoryVolumeL',
          'laboratoryConcentrationUgPerM3',
          'saeFraction',
        ],
        say,
      )}`,
      body.remark,
    ),
  'boxPacked.v1': ({ body }, say) =>
    withRemark(
      `The box for ${named(body.laboratoryId, say)} was packed at ${named(body.siteId, say)} with ${formatList(
        body.sampleIds.map((id) => named(id, say)),
      )}. ${values(
        body,
        [
          'samplerId',
          'analysis',
          'methodId',
          'reportingLimitUg',
          'includeWallDeposit',
          'callBeforeReanalysis',
          'turnaround',
          'workersShownAs',
        ],
        say,
      )}`,
      body.remark,
    ),
  'custodySheetIssued.v1': ({ body }) =>
    `Custody sheet, revision ${body.revision}, was made (app ${body.editions.app}, rules ${body.editions.rules}, formulas ${body.editions.formulas})`,
  'boxHandedOver.v1': ({ body }) =>
    `Handed over to ${body.to}, ${body.sealed ? 'sealed' : 'not sealed'}${body.trackingNumber === null ? '' : `, tracking number ${body.trackingNumber}`}`,
  'boxArrived.v1': ({ body }) => withRemark('The box arrived', body.remark),
  'valueCorrected.v1': ({ body }, say) =>
    story.corrected(labelOf(body.path), valueText(body.path, body.old, say), valueText(body.path, body.new, say)),
  'correctionSettled.v1': ({ body }, say) => story.settled(labelOf(body.path), say.saidBy(body.chosen, body.path)),
  'photoTaken.v1': ({ body }) =>
    `A picture was taken of ${story.photoOf[body.of]} (${formatQuantity(Math.ceil(body.bytesCount / 1024), '')} KB)`,
  'voidReviewed.v1': ({ body }) => (body.stands ? story.voidStands : story.voidLifted),
  'sheetDifferenceKept.v1': ({ body }) =>
    `Revision ${body.revision} of the custody sheet differs from the record, and was left as it is`,
  'missingEntriesAccepted.v1': ({ body }) =>
    `${body.toCount - body.fromCount + 1} entries of a lost device were accepted as lost`,
};
