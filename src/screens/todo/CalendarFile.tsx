/** All days of the list as a file for the firm's own calendar: made on the tap, handed out as every file is. Nobody is named unless wished. */
import { useState } from 'react';
import type { ShownAs } from '#findings/duties/list/calendar.ts';
import type { Duty } from '#findings/duties/list/duty.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import type { Book } from '#records/book.ts';
import { now } from '#store/device.ts';
import { useMadeFile } from '#store/hooks/useMadeFile.ts';
import { en } from '#words/todo.ts';
import { calendarText } from './calendarText.ts';
import styles from './todo.module.css';

const words = en.calendar;
const ways = (['none', 'identifiers', 'names'] as const).map((value) => ({ value, label: words.shownAs[value] }));

export interface CalendarFileProps {
  readonly today: string;
  readonly list: readonly Duty[];
  readonly book: Book;
}

export function CalendarFile({ today, list, book }: CalendarFileProps) {
  const [shownAs, setShownAs] = useState<ShownAs>('none');
  const file = useMadeFile({
    name: words.fileName(today),
    type: 'text/calendar',
    of: JSON.stringify([today, shownAs, list.map(({ id, dueOn }) => [id, dueOn])]),
    make: () => calendarText({ duties: list, book, madeAt: now(), shownAs }),
  });
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <p>{words.text}</p>
      <SelectField
        name="calendarNames"
        label={words.names}
        options={ways}
        value={shownAs}
        onChange={(value) => setShownAs(value as ShownAs)}
      />
      <div>
        <QuietAction busy={file.state === 'making'} onClick={() => void file.handOut()}>
          {file.state === 'making' ? words.making : words.action}
        </QuietAction>
      </div>
      <HandedOut state={file.state} outcome={file.outcome} />
    </section>
  );
}
