/** Sites for which no list is made: the state's own rule is not held. Said on top, so that nobody reads silence as nothing to do. */
import type { NotHeld } from '#findings/duties/list/notHeld.ts';
import { Notice } from '#parts/Notice.tsx';
import type { Book } from '#records/book.ts';
import { stateByCode } from '#reference/states.ts';
import { en } from '#words/todo.ts';

const words = en.stateNotHeld;

function sentenceOf({ siteId, stateCode, governs }: NotHeld, book: Book): string {
  const site = book.sites.get(siteId)?.name ?? '';
  if (governs === 'unknownState') return words.unknown(site);
  if (governs === 'beforeHeldText') return words.before(site);
  return words.text(site, stateByCode(stateCode)?.name ?? stateCode);
}

export interface RulesNotHeldProps {
  readonly notHeld: readonly NotHeld[];
  readonly book: Book;
  /** null: every site. */
  readonly siteId: string | null;
}

export function RulesNotHeld({ notHeld, book, siteId }: RulesNotHeldProps) {
  const shown = notHeld.filter((one) => siteId === null || one.siteId === siteId);
  if (shown.length === 0) return null;
  return (
    <Notice>
      <p>
        <strong>{words.heading}</strong>
      </p>
      {shown.map((one) => (
        <p key={one.siteId}>{sentenceOf(one, book)}</p>
      ))}
    </Notice>
  );
}
