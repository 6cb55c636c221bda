/**
 * The supervisor when a job starts, before anyone enters: five questions on what is new. What it means is said at once, in plain words;
 * afterwards measuring again stands under what is to do, where it is owed.
 */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { type ChangeKey, changeKeys, type Said, en as words } from '#words/jobStart.ts';
import { formatDay } from '#words/quantity.ts';
import { notWritten } from '#words/saving.ts';
import { type JobStartDraft, readJobStart, saidOf } from './jobStartDraft.ts';
import { type JobDay, useJobDay } from './useJobDay.ts';
import { WhatItMeans } from './WhatItMeans.tsx';

export function JobStart({ shiftId = '' }: { readonly shiftId?: string }) {
  const day = useJobDay(shiftId);
  if (day === undefined) return null;
  if (day === null)
    return (
      <Page heading={words.heading} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  return <JobStartForm key={day.place.shift.changes?.factId ?? 'new'} day={day} />;
}

const answers: readonly Said[] = ['no', 'yes', 'notKnown'];

function JobStartForm({ day }: { readonly day: JobDay }) {
  const { shift, site, zone } = day.place;
  const stands = shift.changes ?? null;
  const draftKey = `shift:${shift.id}/jobStart`;
  const draft = useDraft<JobStartDraft>(draftKey, { said: saidOf(stands), why: '' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const { said, why } = draft.value;
  const answer = (key: ChangeKey, value: Said) => draft.set({ ...draft.value, said: { ...said, [key]: value } });

  const submit = async () => {
    const read = readJobStart(draft.value, shift, { happened: happenedNow(zone), by: day.by });
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const written = await writing.run(read.facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { why: 'why' }));
    if (written.kind === 'written') go(`/shift/${shift.id}`);
  };

  return (
    <Page
      heading={words.heading}
      over={`${site.name}, ${formatDay(shift.workOn, 'en', 'weekday')}`}
      back={`/shift/${shift.id}`}
      aside={
        <>
          <WhatItMeans said={said} />
          <Lines>
            <Line to={`/shift/${shift.id}/rely`} detail={words.relyDetail}>
              {words.rely}
            </Line>
          </Lines>
        </>
      }
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {stands === null ? words.save : words.correct}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{stands === null ? words.intro : words.stands}</p>
      {changeKeys.map((key) => (
        <Choice
          key={key}
          name={key}
          label={words.questions[key]}
          options={answers.map((value) => ({ value, label: words.answers[value] }))}
          value={said[key] ?? null}
          onChange={(value) => answer(key, value)}
          error={errorOf(errors, key)}
        />
      ))}
      {stands !== null && (
        <TextField
          name="why"
          label={words.why}
          rows={2}
          value={why}
          onChange={(text) => draft.set({ ...draft.value, why: text })}
          error={errorOf(errors, 'why')}
        />
      )}
    </Page>
  );
}
