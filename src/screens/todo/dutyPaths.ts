/** Where a duty leads: to the finding that it follows from, and to the page that fulfils it. */

import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import type { Book } from '#records/book.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/todo.ts';

export interface Lead {
  readonly to: string;
  readonly text: string;
}

const enc = encodeURIComponent;

export const dutyPath = ({ id }: Duty): string => `/todo/${enc(id)}`;

const determinationPath = (siteId: string, groupKey: string | null): string =>
  `/determination/${siteId}${groupKey === null ? '' : `?group=${enc(groupKey)}`}`;

/** The finding that it rests on, when it has a page here. */
export function becauseOf(duty: Duty, duties: DutiesOfBook, book: Book): Lead | null {
  const [measurementId] = duty.measurementIds;
  const measurement = measurementId === undefined ? undefined : duties.measurements.get(measurementId);
  if (measurement !== undefined) {
    const day = formatDay(measurement.workOn);
    const name = book.people.get(measurement.workerId ?? '')?.name ?? '';
    if (measurement.from === 'sampled') return { to: `/day/${measurement.id}`, text: words.because.day(name, day) };
    return { to: `/story/${enc(`reported:${measurement.id}`)}`, text: words.because.reported(day) };
  }
  if (duty.siteId !== null && duty.groupKey !== null)
    return { to: determinationPath(duty.siteId, duty.groupKey), text: words.because.group };
  const [workerId] = duty.workerIds;
  const worker = workerId === undefined ? undefined : book.people.get(workerId);
  return worker === undefined ? null : { to: `/person/${worker.id}`, text: words.because.person(worker.name) };
}

/** Where it is fulfilled; the way to note it done stands for everything that is done elsewhere. */
export function fulfilledAt(duty: Duty): Lead {
  const text = words.fulfil[duty.fulfilledBy];
  const [measurementId] = duty.measurementIds;
  const [workerId] = duty.workerIds;
  const here: Lead = { to: dutyPath(duty), text: words.fulfil.note };
  switch (duty.fulfilledBy) {
    case 'notice':
      return measurementId === undefined ? here : { to: `/notice/${enc(measurementId)}`, text };
    case 'determination':
      return duty.siteId === null ? here : { to: determinationPath(duty.siteId, duty.groupKey), text };
    case 'respirator':
      return workerId === undefined ? here : { to: `/person/${workerId}`, text };
    case 'sign':
      return { to: '/papers', text };
    case 'measurement':
      return { to: '/', text };
    case 'roster':
    case 'jobStart':
      return { to: '/', text };
    default:
      return here;
  }
}
