/** The moment the box leaves the firm's hands: to whom, under which tracking number, sealed or not. */
import { useState } from 'react';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { BoxRecord } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/box.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import styles from './box.module.css';
import type { Answer } from './boxText.ts';
import { whenOf } from './when.ts';

const words = en.box.handOver;
const blank: { readonly to: string; readonly tracking: string; readonly sealed: Answer | null } = {
  to: '',
  tracking: '',
  sealed: null,
};

export interface HandOverProps {
  readonly box: BoxRecord;
  readonly zone: string;
  readonly by: string | null;
}

export function HandOver({ box, zone, by }: HandOverProps) {
  const draftKey = `box:${box.id}/handOver`;
  const draft = useDraft(draftKey, blank);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const typed = draft.value;
  const submit = async () => {
    const read = fieldReader(partsWords);
    const to = read.text('to', words.to, typed.to);
    const trackingNumber = read.text('tracking', words.tracking, typed.tracking, { optional: true });
    const sealed = read.chosen('sealed', words.sealed, typed.sealed);
    setErrors(read.errors);
    if (to === null || sealed === null || read.errors.length > 0) return;
    const body = { boxId: box.id, to, trackingNumber, sealed: sealed === 'yes' };
    const fact = newFact('boxHandedOver.v1', body, { happened: happenedNow(zone), by });
    const written = await writing.run([fact], { draftKey });
    if (written !== null) setErrors(notWritten(written, { to: 'to', trackingNumber: 'tracking' }));
  };
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <ErrorSummary errors={errors} />
      <TextField
        name="to"
        label={words.to}
        hint={words.toHint}
        value={typed.to}
        onChange={(to) => draft.set({ ...typed, to })}
        error={errorOf(errors, 'to')}
      />
      <TextField
        name="tracking"
        label={words.tracking}
        kind="code"
        value={typed.tracking}
        onChange={(tracking) => draft.set({ ...typed, tracking })}
        error={errorOf(errors, 'tracking')}
      />
      <Choice
        name="sealed"
        label={words.sealed}
        options={[
          { value: 'yes' as Answer, label: en.pack.answers.yes },
          { value: 'no' as Answer, label: en.pack.answers.no },
        ]}
        value={typed.sealed}
        onChange={(sealed) => draft.set({ ...typed, sealed })}
        error={errorOf(errors, 'sealed')}
      />
      <div>
        <QuietAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </QuietAction>
      </div>
    </section>
  );
}

/** Where the box is since it left. */
export function HandedOver({ box, zone, by }: HandOverProps) {
  const writing = useWrite();
  const { handedOver, arrivedAt } = box;
  if (handedOver === null) return null;
  const arrive = () => {
    const body = { boxId: box.id, remark: null };
    void writing.run([newFact('boxArrived.v1', body, { happened: happenedNow(zone), by })]);
  };
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <p>{words.done(handedOver.to, whenOf(handedOver.at, zone))}</p>
      {handedOver.trackingNumber && <p>{words.withTracking(handedOver.trackingNumber)}</p>}
      <p>{handedOver.sealed ? words.isSealed : words.notSealed}</p>
      {arrivedAt !== null && <p>{en.box.arrivedOn(whenOf(arrivedAt, zone))}</p>}
      <div className={styles.choices}>
        {arrivedAt === null && (
          <QuietAction busy={writing.state === 'saving'} onClick={arrive}>
            {en.box.arrived}
          </QuietAction>
        )}
        <QuietAction to="/results">{en.box.results}</QuietAction>
      </div>
    </section>
  );
}
