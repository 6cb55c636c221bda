/** One sentence for every kind of fact about the roster, measurements of others, papers that tell and what was done. See storyFacts.ts. */
import type { Fact, FactKind } from '#records/fact.ts';
import { labelOf } from './fieldNames.ts';
import { formatDay, formatList } from './quantity.ts';
import { type Naming, valueText } from './valueText.ts';

type KindOfDuties =
  | 'workNoted.v1'
  | 'workStruck.v1'
  | 'employmentStated.v1'
  | 'changesAsked.v1'
  | 'representsStated.v1'
  | 'measurementReported.v1'
  | 'measurementReliedOn.v1'
  | 'noticeIssued.v1'
  | 'noticeGiven.v1'
  | 'determinationWritten.v1'
  | 'exposureRecordIssued.v1'
  | 'dutyDone.v1'
  | 'dutyReopened.v1'
  | 'limitsChosen.v1'
  | 'recordsRequested.v1';
type Sentence<K extends FactKind> = (fact: Fact<K>, say: Naming) => string;

const notHere = 'somebody who is not on this device';
const people = (ids: readonly string[], { nameOf }: Naming): string =>
  formatList(ids.map((id) => nameOf(id) ?? notHere));
const tasks = (ids: readonly string[], { nameOf }: Naming): string => formatList(ids.map((id) => nameOf(id) ?? id));
const place = (id: string, { nameOf }: Naming): string =>
  nameOf(id.slice(0, 12)) ?? 'a site that is not on this device';
const dayAt = (shiftId: string, say: Naming): string => `${place(shiftId, say)} on ${formatDay(shiftId.slice(13))}`;
/** A measurement as it is called: of a worker's day, or one that was reported to us. */
const measured = (id: string, say: Naming): string =>
  id.includes('.')
    ? `the measurement of ${people([id.slice(0, 12)], say)} on ${formatDay(id.slice(13))}`
    : 'a measurement that was reported to us';
const after = (text: string | null): string => (text === null || text === '' ? '' : `: ${text}`);
const values = (body: object, keys: readonly string[], say: Naming): string =>
  keys
    .map((key) => `${labelOf(`/${key}`)}: ${valueText(`/${key}`, (body as Record<string, unknown>)[key], say)}`)
    .join('; ');
const made = ({ app, rules, formulas }: { app: string; rules: string; formulas: string }): string =>
  `(app ${app}, rules ${rules}, formulas ${formulas})`;

const howGiven = {
  handedOver: (who: string) => `The notice was handed over to ${who}`,
  readAloud: (who: string) => `The notice was read aloud to ${who}`,
  posted: () => 'The notice was posted for everyone it stands for',
  refusedToSign: (who: string) => `The notice was given to ${who}, who did not want to sign`,
};

export const en: { readonly [K in KindOfDuties]: Sentence<K> } = {
  'workNoted.v1': ({ body }, say) =>
    `At ${place(body.shiftId, say)} for ${tasks(body.taskIds, say)}. ${values(body, ['jobClassificationId', 'respirator'], say)}`,
  'workStruck.v1': () => 'An entry of the roster was struck',
  'employmentStated.v1': ({ body }, say) => `Works here. ${values(body, ['fromOn', 'toOn'], say)}`,
  'changesAsked.v1': ({ body }, say) =>
    `Asked what is new at this job. ${values(body, ['equipment', 'process', 'control', 'personnel', 'newTask'], say)}`,
  'representsStated.v1': ({ body }, say) =>
    `It was put in writing that this measurement stands for ${people(body.workerIds, say)} too`,
  'measurementReported.v1': ({ body }, say) =>
    `A measurement by ${body.fromName} was reported to us${body.reportNumber === null ? '' : `, report ${body.reportNumber}`}. ${values(
      body,
      [
        'from',
        'average',
        'workOn',
        'receivedOn',
        'workerId',
        'siteId',
        'setting',
        'taskIds',
        'jobClassificationId',
        'workedHours',
        'fullShift',
        'ownFirm',
        'accuracy',
      ],
      say,
    )}${after(body.remark)}`,
  'measurementReliedOn.v1': ({ body }, say) =>
    `The job at ${dayAt(body.shiftId, say)} for ${tasks(body.taskIds, say)} rests on ${measured(body.measurementId, say)}. ${values(
      body,
      ['processes', 'material', 'controls', 'practices', 'environment', 'ownFirm', 'jobClassificationId'],
      say,
    )}`,
  'noticeIssued.v1': ({ body }, say) =>
    `A notice of ${measured(body.measurementId, say)}, revision ${body.revision}, was made for ${people(body.workerIds, say)} ${made(body.editions)}. ${values(
      body,
      ['receivedOn', 'form', 'places', 'shownAs', 'languages', 'pelStatement', 'correctiveAction'],
      say,
    )}`,
  'noticeGiven.v1': ({ body }, say) =>
    `${howGiven[body.how](people(body.workerId === null ? [] : [body.workerId], say))}${body.place === null ? '' : `, ${body.place}`}, in ${valueText(
      '/language',
      body.language,
      say,
    )}${body.initials === null || body.initials === '' ? '' : `, initials ${body.initials}`}`,
  'determinationWritten.v1': ({ body }, say) =>
    `A ${body.outcome} determination was written for ${place(body.siteId, say)}, ${body.location}, on ${formatDay(body.determinedOn)} ${made(body.editions)}. ${values(
      body,
      [
        'taskIds',
        'jobClassificationId',
        'monitoredIds',
        'standsForIds',
        'observations',
        'earlierMeasurements',
        'complaints',
      ],
      say,
    )}`,
  'exposureRecordIssued.v1': ({ body }) =>
    `The exposure record of this day, revision ${body.revision}, was handed out to ${body.to} ${made(body.editions)}`,
  'dutyDone.v1': ({ body }, say) =>
    `Done on ${formatDay(body.doneOn)}${body.doneById === null ? '' : ` by ${people([body.doneById], say)}`}${
      body.whereItLies === null ? '' : `. It lies here: ${body.whereItLies}`
    }${after(body.remark)}`,
  'dutyReopened.v1': () => 'It was not done after all',
  'limitsChosen.v1': ({ body }, say) =>
    `Limits were chosen. ${values(body, ['besideIds', 'ownActionLevelUgPerM3', 'ownPelUgPerM3'], say)}`,
  'recordsRequested.v1': ({ body }, say) =>
    `${body.by} asked on ${formatDay(body.askedOn)} to see records${
      body.personId === null ? '' : ` of ${people([body.personId], say)}`
    }, as ${valueText('/askedAs', body.as, say)}${after(body.remark)}`,
};
