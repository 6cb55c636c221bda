/** Saving a flow check: reads the form, writes the facts in one go, and makes the draft ready for the next pump. */
import type { Place } from '#findings/place.ts';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { parseMoment } from '#parts/parseMoment.ts';
import type { Book } from '#records/book.ts';
import { keyOf } from '#records/common.ts';
import type { Happened } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import type { Draft } from '#store/hooks.ts';
import type { Entry } from '#store/newFact.ts';
import { en as words } from '#words/flow.ts';
import { formatEstimate } from '#words/quantity.ts';
import { notWritten } from '#words/saving.ts';
import { type FlowDraft, readFlow } from './flowDraft.ts';
import { flowFacts } from './flowFacts.ts';
import { liveFlow } from './soFar.ts';

export interface SavedFlow {
  readonly errors: readonly FieldError[];
  /** What was saved, in a sentence. */
  readonly text: string;
  /** Of the check that is in the book now: what a picture of the reading is about. */
  readonly check?: { readonly key: string; readonly pump: string; readonly entry: Entry };
}

interface Saving {
  readonly book: Book;
  readonly place: Place;
  readonly draft: Draft<FlowDraft>;
  readonly draftKey: string;
  readonly by: string | null;
}

const fieldByName = { at: 'moment-time', serial: 'pump-serial', lotNumber: 'lot-number' };

export function useSaveFlow({ book, place, draft, draftKey, by }: Saving) {
  const writing = useWrite();
  const typed = draft.value;
  const parsed = typed.moment === null ? null : parseMoment('moment', typed.moment, place);
  const happened = (): Happened => (parsed?.kind === 'value' ? parsed.happened : happenedNow(place.zone));

  const run = async (): Promise<SavedFlow | null> => {
    const read = readFlow(typed, book.meters, place.today);
    const errors = [...read.errors, ...(parsed?.kind === 'errors' ? parsed.errors : [])];
    if (errors.length > 0) return { errors, text: '' };
    const at = happened();
    const made = flowFacts(typed, read, place.shift.id, { happened: at, by });
    const flow = liveFlow(typed, place.shift.id, book, at, place.today)?.flow ?? null;
    const written = await writing.run(made.facts, { draftKey });
    if (written === null) return null;
    if (written.kind !== 'written') return { errors: notWritten(written, fieldByName), text: '' };
    const { meterId } = made;
    draft.set({
      ...typed,
      pumpId: null,
      pump: { serial: '', model: '' },
      meterId,
      lotId: made.lotId ?? typed.lotId,
      readings: [],
      remark: '',
      moment: null,
    });
    const pump = read.pump?.serial ?? book.pumps.get(made.pumpId)?.serial ?? '';
    return {
      errors: [],
      text: words.saved(pump, flow === null ? words.noFlow : formatEstimate(flow.estimate, flow.unit)),
      check: { key: keyOf('flowCheck', made.flowCheckId), pump, entry: { happened: happenedNow(place.zone), by } },
    };
  };
  return { run, happened, busy: writing.state === 'saving' };
}
