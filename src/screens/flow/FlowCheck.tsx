/**
 * The supervisor, with clean hands, at the van or the change area: a pump, the flow meter and a cassette in line before them. Pump after
 * pump, in any order, before it is known who wears which. Afterwards each reading is kept as read, and what is wrong was said at once.
 */
import { useSearch } from 'wouter';
import { placeOfShift } from '#findings/place.ts';
import { Page } from '#parts/Page.tsx';
import { useNow, useShiftBook } from '#store/hooks.ts';
import { purposes, en as words } from '#words/flow.ts';
import { FlowForm } from './FlowForm.tsx';
import type { Purpose } from './flowDraft.ts';

const isPurpose = (text: string | null): text is Purpose => (purposes as readonly (string | null)[]).includes(text);
const minute = 60_000;

export function FlowCheck({ shiftId = '' }: { readonly shiftId?: string }) {
  const book = useShiftBook(shiftId);
  const now = useNow(minute);
  const asked = new URLSearchParams(useSearch());
  if (book === undefined) return null;
  const place = book === null ? null : placeOfShift(shiftId, book, now);
  if (book === null || place === null)
    return (
      <Page heading={words.heading.before} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  const purpose = asked.get('purpose');
  return (
    <FlowForm
      book={book}
      place={place}
      pumpId={asked.get('pump')}
      purpose={isPurpose(purpose) ? purpose : null}
      sampleId={asked.get('sample')}
    />
  );
}
