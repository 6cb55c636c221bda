/** Under every page: how the book is kept, and what else is in it. */
import { useLocation } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { hrefOf } from '#parts/href.ts';
import { deviceZone, now } from '#store/device.ts';
import { useBookCounts, useBookMeta, useBookState } from '#store/hooks.ts';
import { formatDayFrom } from '#words/quantity.ts';
import { en as words } from '#words/shell.ts';
import styles from './shell.module.css';

/** Pages of a book: nothing to see without one. */
const ofBook: readonly string[] = ['/lists', '/groups'];

const also = [
  ['/lists', words.lists],
  ['/groups', words.groups],
  ['/wear', words.wear],
  ['/rules', words.rules],
  ['/checked', words.checked],
  ['/about', words.about],
] as const;

export function Foot() {
  const state = useBookState();
  const [location] = useLocation();
  // The phone is in the worker's hands there: how the book is kept is nothing to them.
  if (location.startsWith('/worker/')) return null;
  return (
    <footer className={styles.footer}>
      {state.kind === 'open' && <Kept />}
      <nav aria-label={words.more}>
        <ul className={styles.also}>
          {also
            .filter(([path]) => state.kind === 'open' || !ofBook.includes(path))
            .map(([path, text]) => (
              <li key={path}>
                <a className={styles.alsoLink} href={hrefOf(path)}>
                  {text}
                </a>
              </li>
            ))}
        </ul>
      </nav>
    </footer>
  );
}

function Kept() {
  const state = useBookState();
  const meta = useBookMeta();
  if (meta === undefined || state.kind !== 'open') return null;
  return (
    <div>
      {meta.practice && <p>{words.exampleMeaning}</p>}
      {state.rebuilding && <p role="status">{words.book.rebuilding(state.rebuilding.done, state.rebuilding.total)}</p>}
      {state.unreadable.length > 0 && <p>{words.book.unreadable(state.unreadable.length)}</p>}
      {meta.lastBackupAt === null ? <p>{words.backup.never}</p> : <SinceBackup lastBackupAt={meta.lastBackupAt} />}
      <a className={styles.alsoLink} href={hrefOf('/keep')}>
        {words.backup.make}
      </a>
    </div>
  );
}

/** How old the last backup is, in days of this device's calendar. */
function SinceBackup({ lastBackupAt }: { readonly lastBackupAt: string }) {
  const counts = useBookCounts();
  if (counts === undefined) return null;
  const { factsSinceBackup } = counts;
  const zone = deviceZone();
  const when = formatDayFrom(dayOf(now(), zone), dayOf(lastBackupAt, zone));
  return <p>{factsSinceBackup > 0 ? words.backup.old(when, factsSinceBackup) : words.backup.fresh(when)}</p>;
}
