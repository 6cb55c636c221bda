/** Giving up a plan, with the reason. What the rule asks is not touched by it. */
import { useState } from 'react';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { PlanRecord } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/planScreen.ts';
import { notWritten } from '#words/saving.ts';
import styles from './plan.module.css';

const words = en.page;

export function DropPlan({ plan }: { readonly plan: PlanRecord }) {
  const draftKey = `plan:${plan.id}/drop`;
  const draft = useDraft<{ readonly why: string }>(draftKey, { why: '' });
  const meta = useBookMeta();
  const [asking, setAsking] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  if (plan.dropped !== null) return null;
  if (!asking)
    return (
      <div>
        <QuietAction onClick={() => setAsking(true)}>{words.drop}</QuietAction>
      </div>
    );
  const submit = async () => {
    const why = draft.value.why.trim();
    if (why === '') return setErrors([{ field: 'why', text: words.dropMissing }]);
    const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null, why };
    const body = { planId: plan.id, knew: [plan.plannedFactId] };
    const written = await writing.run([newFact('planDropped.v1', body, entry)], { draftKey });
    if (written !== null) setErrors(notWritten(written, { why: 'why' }));
  };
  return (
    <section className={styles.part}>
      <h2>{words.drop}</h2>
      <ErrorSummary errors={errors} />
      <TextField
        name="why"
        label={words.dropWhy}
        hint={words.dropHint}
        rows={2}
        value={draft.value.why}
        onChange={(why) => draft.set({ why })}
        error={errorOf(errors, 'why')}
      />
      <div>
        <QuietAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.dropDo}
        </QuietAction>
      </div>
      <div>
        <QuietAction onClick={() => setAsking(false)}>{words.keep}</QuietAction>
      </div>
    </section>
  );
}
