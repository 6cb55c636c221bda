/** What is still missing for the day, what the rule asks before it, and in the morning what differs from the evening. */

import { dutyNames } from '#findings/duties/list/calendar.ts';
import type { Tomorrow } from '#findings/season/tomorrow.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book, DayPlanRecord } from '#records/book.ts';
import { byWhen, whatToDo } from '#words/duties.ts';
import { tomorrowCautionText } from '#words/tomorrowCautions.ts';
import { en as words } from '#words/tomorrowScreen.ts';
import { en as sheet } from '#words/tomorrowSheet.ts';
import { changesSince } from './changes.ts';
import type { DayDraft } from './dayDraft.ts';
import styles from './tomorrow.module.css';

export function StillMissing({ day, book }: { readonly day: Tomorrow; readonly book: Book }) {
  const nameOf = (id: string): string => book.people.get(id)?.name ?? '';
  const texts = [...new Set(day.cautions.map((caution) => tomorrowCautionText(caution, nameOf)))];
  const names = dutyNames(book, 'names');
  return (
    <>
      <section className={styles.part}>
        <h2>{words.cautions}</h2>
        {texts.length === 0 ? (
          <p>{words.cautionsNone}</p>
        ) : (
          <ul className={styles.plain}>
            {texts.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        )}
      </section>
      {day.duties.length > 0 && (
        <Lines heading={sheet.duties}>
          {day.duties.map((duty) => (
            <Line key={duty.id} to={`/todo/${encodeURIComponent(duty.id)}`} detail={byWhen(duty)}>
              {whatToDo(duty, names)}
            </Line>
          ))}
        </Lines>
      )}
    </>
  );
}

export interface ChangesProps {
  readonly prepared: NonNullable<DayPlanRecord['prepared']>;
  readonly draft: DayDraft;
  readonly shiftId: string;
  readonly book: Book;
}

export function Changes({ prepared, draft, shiftId, book }: ChangesProps) {
  const texts = changesSince(prepared, draft, shiftId, book);
  if (texts.length === 0) return <p role="status">{words.changes.none}</p>;
  return (
    <section role="status">
      <h2>{words.changes.heading}</h2>
      <ul className={styles.plain}>
        {texts.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  );
}
