/**
 * The office, when somebody asks to see records: who asked, as what, whose records, on which day. Afterwards the list says until when
 * they are to be shown, and everybody who asked so far stands below.
 */
import { useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { FactBody } from '#records/fact.ts';
import { deviceZone, happenedNow, newId, now } from '#store/device.ts';
import { useRequests } from '#store/hooks/useRequests.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft, useRegisters } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { formatDay } from '#words/quantity.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/todo.ts';

type As = FactBody<'recordsRequested.v1'>['as'];

const words = en.request;
const draftKey = 'book/asked';
const noPerson = '-';
const as = Object.entries(words.asChoices).map(([value, label]) => ({ value: value as As, label }));
const blank = { on: '', by: '', as: null as As | null, personId: '', remark: '' };

export function Asked() {
  const today = dayOf(now(), deviceZone());
  const registers = useRegisters();
  const requests = useRequests();
  const meta = useBookMeta();
  const draft = useDraft(draftKey, blank);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  if (registers === undefined || requests === undefined) return <Page heading={words.heading} back="/todo" />;
  const typed = { ...draft.value, on: draft.value.on || today };
  const change = (part: Partial<typeof typed>) => draft.set({ ...typed, ...part });

  const submit = async () => {
    const read = fieldReader(partsWords);
    const by = read.text('by', words.by, typed.by);
    const askedAs = read.chosen('as', words.as, typed.as);
    const askedOn = read.day('on', words.askedOn, typed.on, today, { past: true });
    const personId = read.chosen('whose', words.person, typed.personId);
    const remark = read.text('remark', words.remark, typed.remark, { optional: true, most: 2000 });
    setErrors(read.errors);
    if (by === null || askedAs === null || askedOn === null || personId === null || read.errors.length > 0) return;
    const body = {
      requestId: newId(),
      askedOn,
      by,
      personId: personId === noPerson ? null : personId,
      as: askedAs,
      remark,
    };
    const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null };
    const written = await writing.run([newFact('recordsRequested.v1', body, entry)], { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { askedOn: 'on', by: 'by', remark: 'remark' }));
    if (written.kind === 'written') draft.clear();
  };

  return (
    <Page
      heading={words.heading}
      back="/todo"
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
      aside={
        <Lines heading={words.listed} whenEmpty={words.none}>
          {requests.map(({ id, by, askedOn, as: askedAs }) => (
            <Line key={id} to={`/story/${encodeURIComponent(`request:${id}`)}`} detail={words.asChoices[askedAs]}>
              {words.line(by, formatDay(askedOn))}
            </Line>
          ))}
        </Lines>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <TextField
        name="by"
        label={words.by}
        value={typed.by}
        onChange={(by) => change({ by })}
        error={errorOf(errors, 'by')}
      />
      <Choice
        name="as"
        label={words.as}
        options={as}
        value={typed.as}
        onChange={(value) => change({ as: value })}
        error={errorOf(errors, 'as')}
      />
      <SelectField
        name="whose"
        label={words.person}
        options={[
          { value: noPerson, label: words.noPerson },
          ...registers.people.list.map(({ id, name }) => ({ value: id, label: name })),
        ]}
        value={typed.personId}
        onChange={(personId) => change({ personId })}
        error={errorOf(errors, 'whose')}
      />
      <DateField
        name="on"
        label={words.askedOn}
        today={today}
        value={typed.on}
        onChange={(on) => change({ on })}
        error={errorOf(errors, 'on')}
      />
      <TextField
        name="remark"
        label={words.remark}
        rows={2}
        value={typed.remark}
        onChange={(remark) => change({ remark })}
        error={errorOf(errors, 'remark')}
      />
    </Page>
  );
}
