/** One place of a plan: another day for it, or why it did not come about. It stays to do either way. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Choice } from '#parts/Choice.tsx';
import { DateField } from '#parts/DateField.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book, PlanRecord } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { en, missedKinds } from '#words/planScreen.ts';
import { notWritten } from '#words/saving.ts';
import { placeIn } from './places.ts';
import { emptySlot, readSlot, type SlotDraft } from './slotDraft.ts';

const words = en.slot;

export interface SlotFormProps {
  readonly plan: PlanRecord;
  readonly book: Book;
  readonly today: string;
  /** Worker and day, as in the address. */
  readonly place: string;
}

export function SlotForm({ plan, book, today, place }: SlotFormProps) {
  const back = `/plan/${plan.id}`;
  const draftKey = `plan:${plan.id}/place/${place}`;
  const draft = useDraft<SlotDraft>(draftKey, emptySlot);
  const meta = useBookMeta();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const slot = plan.slots[placeIn(plan, place)];
  if (slot === undefined)
    return (
      <Page heading={en.heading} back={back}>
        <p>{words.gone}</p>
      </Page>
    );
  const typed = draft.value;
  const change = (part: Partial<SlotDraft>) => draft.set({ ...typed, ...part });
  const submit = async () => {
    const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null };
    const { errors: found, facts } = readSlot(typed, { plan, place, today, entry });
    setErrors(found);
    if (found.length > 0) return;
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { workOn: 'newDay', slots: 'newDay' }));
    if (written.kind === 'written') go(back, { replace: true });
  };
  return (
    <Page
      heading={words.heading(book.people.get(slot.workerId)?.name ?? en.page.someone)}
      over={en.page.place(book.people.get(slot.workerId)?.name ?? en.page.someone, slot.workOn)}
      back={back}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.stays}</p>
      <Choice
        name="what"
        label={words.what}
        options={(['missed', 'move'] as const).map((value) => ({ value, label: words.kinds[value] }))}
        value={typed.what}
        onChange={(what) => change({ what })}
        error={errorOf(errors, 'what')}
      />
      {typed.what === 'missed' && (
        <>
          <Choice
            name="because"
            label={words.because}
            options={missedKinds.map((value) => ({ value, label: words.missed[value] }))}
            value={typed.because}
            onChange={(because) => change({ because })}
            error={errorOf(errors, 'because')}
          />
          <TextField
            name="remark"
            label={words.remark}
            value={typed.remark}
            onChange={(remark) => change({ remark })}
            error={errorOf(errors, 'remark')}
          />
        </>
      )}
      {typed.what === 'move' && (
        <DateField
          name="newDay"
          label={words.newDay}
          hint={words.newDayHint}
          value={typed.newDay}
          onChange={(newDay) => change({ newDay })}
          today={today}
          error={errorOf(errors, 'newDay')}
        />
      )}
    </Page>
  );
}
