/**
 * The supervisor, before anyone enters, with clean hands: who wears which pump, for which task. Afterwards the cassette has a number to
 * write on it, everyone knows what is presumed and what must be worn until measured, and the phone goes to the worker.
 */
import { useSearch } from 'wouter';
import { placeOfShift } from '#findings/place.ts';
import { Page } from '#parts/Page.tsx';
import { useNow, useShiftBook } from '#store/hooks.ts';
import { en as words } from '#words/fitting.ts';
import { FitForm } from './FitForm.tsx';
import { Prepared } from './Prepared.tsx';

const minute = 60_000;

export function Fit({ shiftId = '' }: { readonly shiftId?: string }) {
  const book = useShiftBook(shiftId);
  const now = useNow(minute);
  const asked = new URLSearchParams(useSearch());
  const preparedId = asked.get('prepared');
  if (book === undefined) return null;
  const place = book === null ? null : placeOfShift(shiftId, book, now);
  if (book === null || place === null)
    return (
      <Page heading={words.heading} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  const prepared = preparedId === null ? undefined : book.samples.get(preparedId);
  return prepared === undefined ? (
    <FitForm book={book} place={place} wearerId={asked.get('wearer')} />
  ) : (
    <Prepared book={book} sample={prepared} />
  );
}
