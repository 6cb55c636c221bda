/** What was noted as done was not done after all: opened again with the reason, and both stay in its story. */
import { useState } from 'react';
import type { Duty } from '#findings/duties/list/duty.ts';
import { ConfirmBox } from '#parts/ConfirmBox.tsx';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/todo.ts';

const words = en.one;

export function Reopen({ duty, book }: { readonly duty: Duty; readonly book: Book }) {
  const [asking, setAsking] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const meta = useBookMeta();
  const writing = useWrite();
  const reopen = async (why: string) => {
    const zone = book.sites.get(duty.siteId ?? '')?.zone ?? deviceZone();
    const entry = { happened: happenedNow(zone), by: meta?.holderPersonId ?? null, why };
    const written = await writing.run([newFact('dutyReopened.v1', { dutyId: duty.id }, entry)]);
    if (written === null) return;
    setErrors(notWritten(written));
    setAsking(false);
  };
  return (
    <div>
      <ErrorSummary errors={errors} />
      <QuietAction onClick={() => setAsking(true)}>{words.reopen}</QuietAction>
      <ConfirmBox
        open={asking}
        heading={words.reopenHeading}
        reasonLabel={words.reopenWhy}
        confirmText={words.reopenSave}
        busy={writing.state === 'saving'}
        onConfirm={(why) => void reopen(why)}
        onCancel={() => setAsking(false)}
      >
        <p>{words.reopenText}</p>
      </ConfirmBox>
    </div>
  );
}
