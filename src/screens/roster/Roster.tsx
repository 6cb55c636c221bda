/**
 * The supervisor at the gate, before anyone enters, phone in a clean hand: who works here today, and at what. The same as yesterday is
 * one tap and one more to save. Afterwards everyone is written down, with or without a pump.
 */
import { useSearch } from 'wouter';
import { placeOfShift } from '#findings/place.ts';
import { Page } from '#parts/Page.tsx';
import { useRosterBook } from '#store/hooks/useRosterBook.ts';
import { useBookMeta, useNow } from '#store/hooks.ts';
import { en as words } from '#words/roster.ts';
import { RosterEntry } from './RosterEntry.tsx';
import { RosterForm } from './RosterForm.tsx';
import { rosterOf } from './work.ts';

const minute = 60_000;

export function Roster({ shiftId = '' }: { readonly shiftId?: string }) {
  const book = useRosterBook(shiftId);
  const now = useNow(minute);
  const meta = useBookMeta();
  const entryId = new URLSearchParams(useSearch()).get('entry');
  if (book === undefined || meta === undefined) return null;
  const place = book === null ? null : placeOfShift(shiftId, book, now);
  if (book === null || place === null)
    return (
      <Page heading={words.heading} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  const by = meta.holderPersonId;
  if (entryId === null) return <RosterForm book={book} place={place} by={by} />;
  const line = rosterOf(shiftId, book).find(({ worked }) => worked.factId === entryId);
  if (line === undefined)
    return (
      <Page heading={words.heading} back={`/shift/${shiftId}/roster`}>
        <p>{words.entry.gone}</p>
      </Page>
    );
  return <RosterEntry key={entryId} book={book} place={place} by={by} line={line} />;
}
