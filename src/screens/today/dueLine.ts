/** From what is due, as data, to its sentence and the page where it is done. */
import { wallTimeOf } from '#core/calendar.ts';
import type { Due, DueKey } from '#findings/due.ts';
import type { Book } from '#records/book.ts';
import { due as words } from '#words/today.ts';

export interface DueLine {
  readonly key: string;
  readonly sentence: string;
  readonly action: string;
  readonly to: string;
  /** Wall time at the site since when, or at which, it is due; null where no time is set. */
  readonly time: string | null;
  readonly overdue: boolean;
}

type Place = (due: Due, pumpId: string | null) => string;

const flow = (purpose: 'before' | 'after'): Place => {
  return ({ shiftId }, pumpId) =>
    `/shift/${shiftId}/flow?purpose=${purpose}${pumpId === null ? '' : `&pump=${pumpId}`}`;
};
const sample: Place = ({ sampleId }) => `/sample/${sampleId}`;
const after: Place = ({ sampleId }) => `/sample/${sampleId}/after`;

const placeByKey: Readonly<Record<DueKey, Place>> = {
  flowBefore: flow('before'),
  fit: ({ sampleId }) => `/worker/${sampleId}`,
  putOn: sample,
  look: sample,
  stop: sample,
  flowAfter: flow('after'),
  seal: after,
  lockIn: after,
  blanks: ({ shiftId }) => `/shift/${shiftId}/blank`,
  conditions: ({ shiftId }) => `/shift/${shiftId}/conditions`,
  regularDay: ({ workdayId }) => `/day/${workdayId}`,
  sendToLaboratory: ({ boxId }) => (boxId === null ? '/boxes' : `/box/${boxId}`),
  backup: () => '/send',
};

const zoneOf = (due: Due, book: Book): string | null => {
  const shift = due.shiftId === null ? undefined : book.shifts.get(due.shiftId);
  return (shift && book.sites.get(shift.siteId)?.zone) ?? null;
};

export function dueLine(due: Due, book: Book): DueLine {
  const ofSample = due.sampleId === null ? undefined : book.samples.get(due.sampleId);
  const zone = zoneOf(due, book);
  const time = due.dueAt === null || zone === null ? null : wallTimeOf(due.dueAt, zone).time;
  const about = {
    worker: (due.workerId === null ? undefined : book.people.get(due.workerId)?.name) ?? '',
    number: ofSample?.sampleNumber ?? '',
    pump: book.pumps.get(ofSample?.pumpId ?? '')?.serial ?? '',
    params: due.params,
  };
  return {
    key: [due.key, due.sampleId, due.shiftId, due.workdayId, due.boxId].join('~'),
    sentence: words[due.key].sentence(about),
    action: words[due.key].action(about),
    to: placeByKey[due.key](due, ofSample?.pumpId ?? null),
    time,
    overdue: due.overdue,
  };
}
