/** What must be done before a device may be wiped: pumps that run, and what is being typed, each said and led to. */
import { useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { ConfirmBox } from '#parts/ConfirmBox.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { type BooksHere, discardDrafts } from '#store/beforeWiping.ts';
import { deviceZone, now } from '#store/device.ts';
import { bookState } from '#store/session.ts';
import { formatDayFrom } from '#words/quantity.ts';
import { en } from '#words/storage.ts';

const words = en.wipe;

/** The page a draft belongs to, by its name. */
export function pageOfDraft(name: string): { readonly what: string; readonly to: string } {
  const own: Readonly<Record<string, { what: string; to: string }>> = {
    'book/who': { what: words.drafts.who, to: '/who' },
    'book/openShift': { what: words.drafts.openShift, to: '/' },
    'book/results': { what: words.drafts.results, to: '/results' },
    'book/pack': { what: words.drafts.pack, to: '/pack' },
  };
  if (Object.hasOwn(own, name)) return own[name] ?? { what: words.drafts.other, to: '/' };
  if (name.endsWith('/lists')) return { what: words.drafts.lists, to: '/lists' };
  const [, kind = '', id = ''] = /^(sample|shift|workday|box):([^/]+)/.exec(name) ?? [];
  if (kind === 'sample') return { what: words.drafts.sample, to: `/sample/${id}` };
  if (kind === 'shift') return { what: words.drafts.shift, to: `/shift/${id}` };
  if (kind === 'workday') return { what: words.drafts.workday, to: `/day/${id}` };
  if (kind === 'box') return { what: words.drafts.box, to: `/box/${id}` };
  return { what: words.drafts.other, to: '/' };
}

export function InTheWay({ books, onChange }: { readonly books: BooksHere; readonly onChange: () => void }) {
  const { runningCount, drafts, listsIncomplete } = books.inTheWay;
  const [asking, setAsking] = useState(false);
  const zone = deviceZone();
  const state = bookState();
  // A page of the other book cannot be gone to from here.
  const isOpen = state.kind === 'open' && state.which === books.which;
  const discard = async () => {
    if (books.which !== null) await discardDrafts(books.which);
    setAsking(false);
    onChange();
  };
  return (
    <>
      <Lines heading={words.inTheWay}>
        {[
          ...(runningCount > 0
            ? [
                <Line key="running" to={isOpen ? '/' : undefined} detail={words.runningDetail}>
                  {words.running(runningCount)}
                </Line>,
              ]
            : []),
          ...(listsIncomplete ? [<Line key="lists">{words.lists}</Line>] : []),
          ...drafts.map(({ name, savedAt }) => {
            const { what, to } = pageOfDraft(name);
            return (
              <Line key={`${name} ${savedAt}`} to={isOpen ? to : undefined}>
                {words.draft(what, formatDayFrom(dayOf(now(), zone), dayOf(savedAt, zone)))}
              </Line>
            );
          }),
        ]}
      </Lines>
      {drafts.length > 0 && (
        <div>
          <QuietAction onClick={() => setAsking(true)}>{words.discard}</QuietAction>
        </div>
      )}
      <ConfirmBox
        open={asking}
        heading={words.discardHeading}
        confirmText={words.discard}
        onConfirm={() => void discard()}
        onCancel={() => setAsking(false)}
      >
        <p>{words.discardText}</p>
      </ConfirmBox>
    </>
  );
}
