/** What is due first on this day, as the page's one action: where it is done, and its words. */
import { type Due, type DueKey, findDue } from '#findings/due.ts';
import { unsentShifts } from '#findings/shiftEnded.ts';
import { en as words } from '#words/shift.ts';
import { airOf } from './daySamples.ts';
import type { ShiftDay } from './useShift.ts';

export interface Step {
  readonly to: string;
  readonly text: string;
}

/** Where a flow check for this sample is made; saved, it leads back to the sample. */
export const flowPath = (
  shiftId: string,
  pumpId: string | null,
  purpose: 'before' | 'after',
  sampleId: string,
): string => `/shift/${shiftId}/flow?pump=${pumpId ?? ''}&purpose=${purpose}&sample=${sampleId}`;

function sampleStep(due: Due, day: ShiftDay): Step | null {
  const { book, place } = day;
  const sample = airOf(day).find(({ id, workdayId }) => id === due.sampleId || workdayId === due.workdayId);
  if (sample === undefined) return null;
  const worker = book.people.get(sample.workerId ?? '')?.name ?? '';
  const page = `/sample/${sample.id}`;
  const after: Step = { to: `${page}/after`, text: words.actions.after(worker) };
  const steps: Partial<Readonly<Record<DueKey, Step>>> = {
    flowBefore: { to: flowPath(place.shift.id, sample.pumpId, 'before', sample.id), text: words.actions.flow },
    fit: { to: `/worker/${sample.id}`, text: words.actions.fit(worker) },
    putOn: { to: page, text: words.actions.putOn(worker) },
    look: { to: page, text: words.actions.look(worker) },
    stop: { to: page, text: words.actions.look(worker) },
    flowAfter: after,
    seal: after,
    lockIn: after,
    regularDay: after,
  };
  return steps[due.key] ?? null;
}

function dayStep(due: Due, shiftId: string): Step | null {
  if (due.key === 'blanks') return { to: `/shift/${shiftId}/blank`, text: words.actions.blank };
  if (due.key === 'conditions') return { to: `/shift/${shiftId}/conditions`, text: words.actions.conditions };
  return due.key === 'sendToLaboratory' ? { to: '/boxes', text: words.actions.box } : null;
}

function prepareStep({ book, place: { shift } }: ShiftDay, wearerId: string | null): Step {
  const fit = `/shift/${shift.id}/fit`;
  if (wearerId === null) return { to: fit, text: words.actions.prepare };
  const name = book.people.get(wearerId)?.name ?? '';
  return {
    to: `${fit}?wearer=${wearerId}`,
    text: name === '' ? words.actions.prepare : words.actions.prepareOne(name),
  };
}

const sendToday: Step = { to: '/send?today=1', text: words.actions.send };

/** Everyone is prepared before the first one goes in; a look that is late comes before all of it. */
const waitsForPreparing = ({ key, overdue }: Due): boolean => !overdue && (key === 'putOn' || key === 'look');

/** What stands first of this day's samples and of the office; null when nothing does. */
function firstDue(day: ShiftDay, isUnsent: boolean, wearerId: string | null): Step | null {
  const { book, place } = day;
  const shiftId = place.shift.id;
  for (const due of findDue(book, place.now)) {
    // The day's file goes before the box is packed: it may be packed days later, by the office.
    if (due.key === 'sendToLaboratory' && isUnsent) return sendToday;
    const own = due.shiftId === null || due.shiftId === shiftId;
    const step = own ? (dayStep(due, shiftId) ?? sampleStep(due, day)) : null;
    if (step !== null) return wearerId !== null && waitsForPreparing(due) ? prepareStep(day, wearerId) : step;
  }
  return null;
}

/**
 * `lastSentAt`: when the last file left this device; null when none did. `wearerId`: who comes next of those who are still to wear a pump
 * in the day as it was made ready; null when nobody is left.
 */
export function nextStep(day: ShiftDay, lastSentAt: string | null, wearerId: string | null): Step {
  const shiftId = day.place.shift.id;
  if (airOf(day).length === 0)
    return day.book.flowChecks.size === 0
      ? { to: `/shift/${shiftId}/flow`, text: words.actions.flow }
      : prepareStep(day, wearerId);
  const isUnsent = unsentShifts(day.book, [shiftId], lastSentAt).length > 0;
  return firstDue(day, isUnsent, wearerId) ?? (isUnsent ? sendToday : { to: '/samples', text: words.actions.samples });
}
