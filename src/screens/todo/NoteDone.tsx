/** Noting a duty as done: the day, who did it, where the paper lies. Of medical ones only that, never a value. */
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import type { Duty } from '#findings/duties/list/duty.ts';
import { DateField } from '#parts/DateField.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { looksMedical } from '#records/medicalValue.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { whereItLies } from '#words/duties.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/todo.ts';
import { isMedical } from './medical.ts';
import { whatToDo } from './whatToDo.ts';

const words = en.one;
/** Stands for nobody in the picker. */
const nobody = '-';

export interface NoteDoneProps {
  readonly duty: Duty;
  readonly book: Book;
  readonly today: string;
  readonly over: string;
  readonly children: ReactNode;
}

interface Typed {
  readonly on: string;
  readonly byId: string;
  readonly place: string;
  readonly remark: string;
}

/** The body of the fact; null, with a sentence at each field, when something stands in the way. */
function readDone(read: FieldReader, typed: Typed, duty: Duty, today: string): FactBody<'dutyDone.v1'> | null {
  const late = duty.overdue;
  const doneOn = read.day('on', words.doneOn, typed.on, today, { past: true });
  const whereItLies = read.text('place', words.place, typed.place, { optional: true });
  const remarkLabel = late ? words.lateRemark : words.remark;
  const remark = read.text('remark', remarkLabel, typed.remark, { optional: !late, most: 2000 });
  const texts = { place: whereItLies, remark };
  if (isMedical(duty.kind))
    for (const [field, text] of Object.entries(texts))
      if (text !== null && looksMedical(text)) read.add(field, words.medicalFound);
  if (doneOn === null || read.errors.length > 0) return null;
  return { dutyId: duty.id, doneOn, doneById: typed.byId === nobody ? null : typed.byId, whereItLies, remark };
}

export function NoteDone({ duty, book, today, over, children }: NoteDoneProps) {
  const meta = useBookMeta();
  const draftKey = `duty:${duty.id}/done`;
  const draft = useDraft(draftKey, { on: today, byId: '', place: '', remark: '' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const typed = draft.value;
  const byId = typed.byId || (meta?.holderPersonId ?? nobody);
  const medical = isMedical(duty.kind);
  const isOverdue = duty.overdue;
  const zone = book.sites.get(duty.siteId ?? '')?.zone ?? deviceZone();

  const submit = async () => {
    const read = fieldReader(partsWords);
    const body = readDone(read, { ...typed, byId }, duty, today);
    setErrors(read.errors);
    if (body === null) return;
    const fact = newFact('dutyDone.v1', body, { happened: happenedNow(zone), by: meta?.holderPersonId ?? null });
    const written = await writing.run([fact], { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { doneOn: 'on', whereItLies: 'place', remark: 'remark' }));
    if (written.kind === 'written') go('/todo');
  };

  return (
    <Page
      heading={whatToDo(duty, book)}
      over={over}
      back="/todo"
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      {children}
      <h2>{words.whatDone}</h2>
      {medical && <Notice>{words.medical}</Notice>}
      <DateField
        name="on"
        label={words.doneOn}
        today={today}
        value={typed.on}
        onChange={(on) => draft.set({ ...typed, on })}
        error={errorOf(errors, 'on')}
      />
      <SelectField
        name="by"
        label={words.who}
        options={[
          ...[...book.people.values()].map(({ id, name }) => ({ value: id, label: name })),
          { value: nobody, label: words.nobody },
        ]}
        value={byId}
        onChange={(id) => draft.set({ ...typed, byId: id })}
      />
      <TextField
        name="place"
        label={whereItLies(duty) ?? words.place}
        hint={medical ? words.placeHint : words.placeHintPlain}
        value={typed.place}
        onChange={(place) => draft.set({ ...typed, place })}
        error={errorOf(errors, 'place')}
      />
      <TextField
        name="remark"
        label={isOverdue ? words.lateRemark : words.remark}
        rows={2}
        value={typed.remark}
        onChange={(remark) => draft.set({ ...typed, remark })}
        error={errorOf(errors, 'remark')}
      />
    </Page>
  );
}
