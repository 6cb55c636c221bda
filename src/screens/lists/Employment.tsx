/** From when to when a person works here: beside the entry of the person, saved by itself. Both days may stay open. */
import { useState } from 'react';
import { DateField } from '#parts/DateField.tsx';
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { Notice } from '#parts/Notice.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { PersonRecord } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/roster.ts';
import { notWritten } from '#words/saving.ts';
import styles from './lists.module.css';

const words = en.employment;

interface EmploymentDraft {
  readonly from: string;
  readonly to: string;
}

export function Employment({ person, today }: { readonly person: PersonRecord; readonly today: string }) {
  const meta = useBookMeta();
  const stands = person.employed ?? null;
  const draftKey = `${person.key}/employment`;
  const draft = useDraft<EmploymentDraft>(draftKey, { from: stands?.fromOn ?? '', to: stands?.toOn ?? '' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const typed = draft.value;

  const submit = async () => {
    const read = fieldReader(partsWords);
    const optional = { optional: true } as const;
    const fromOn = read.day('employed-from', words.from, typed.from, today, optional);
    const toOn = read.day('employed-to', words.to, typed.to, today, optional);
    if (read.errors.length === 0 && fromOn === null && toOn === null) read.add('employed-from', words.nothing);
    if (fromOn !== null && toOn !== null && toOn < fromOn) read.add('employed-to', words.backwards);
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null };
    const fact = newFact('employmentStated.v1', { personId: person.id, fromOn, toOn }, entry);
    const written = await writing.run([fact], { draftKey });
    if (written !== null) setErrors(notWritten(written, { fromOn: 'employed-from', toOn: 'employed-to' }));
  };
  const general = errors.filter(({ field }) => field === null);

  return (
    <section className={styles.register}>
      <h2>{words.heading}</h2>
      <p>{stands === null ? words.intro : words.stands(stands.fromOn, stands.toOn)}</p>
      {writing.state === 'saved' && errors.length === 0 && <Notice>{words.saved}</Notice>}
      {general.length > 0 && <Notice kind="alert">{general.map(({ text }) => text).join(' ')}</Notice>}
      <DateField
        name="employed-from"
        label={words.from}
        value={typed.from}
        today={today}
        onChange={(from) => draft.set({ ...typed, from })}
        error={errorOf(errors, 'employed-from')}
      />
      <DateField
        name="employed-to"
        label={words.to}
        hint={words.toHint}
        value={typed.to}
        today={today}
        onChange={(to) => draft.set({ ...typed, to })}
        error={errorOf(errors, 'employed-to')}
      />
      <div>
        <QuietAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </QuietAction>
      </div>
    </section>
  );
}
