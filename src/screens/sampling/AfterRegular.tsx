/** Was it a regular day? *No* leaves every figure right, and keeps it from supporting anything less careful. */
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { Saved } from '#parts/Saved.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/after.ts';
import styles from './sampling.module.css';
import type { Sampling } from './useSampling.ts';
import { useSection } from './useSection.ts';

const words = en.regular;
interface RegularDraft {
  readonly regular: 'yes' | 'no' | null;
  readonly reason: string;
}
const blank: RegularDraft = { regular: null, reason: '' };

export function AfterRegular({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book } = sampling;
  const workdayId = sample.workdayId ?? '';
  const stands = book.workdays.get(workdayId)?.regular ?? null;
  const section = useSection(sampling, 'regular', blank, { reason: 'reason', why: 'reason' });
  const { regular, reason } = section.typed;
  const save = () =>
    section.save((typed, read, entry) => {
      const answer = read.chosen('regular', words.label, typed.regular) ?? 'yes';
      if (answer === 'no' && typed.reason.trim() === '') read.add('reason', words.reasonMissing);
      const why = answer === 'no' ? read.text('reason', words.reason, typed.reason, { optional: true }) : null;
      return [newFact('dayDescribed.v1', { workdayId, regular: answer, reason: why }, entry)];
    });
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      {section.state !== 'idle' && <Saved state={section.state} at={section.savedAt} />}
      {stands !== null ? (
        <p>{words.stands(stands.regular === 'yes', stands.reason)}</p>
      ) : (
        <>
          <ErrorSummary errors={section.errors} />
          <Choice
            name="regular"
            label={words.label}
            hint={words.hint}
            options={[
              { value: 'yes', label: words.yes },
              { value: 'no', label: words.no },
            ]}
            value={regular}
            onChange={(value) => section.change({ regular: value })}
            error={errorOf(section.errors, 'regular')}
          />
          {regular === 'no' && (
            <TextField
              name="reason"
              label={words.reason}
              value={reason}
              onChange={(text) => section.change({ reason: text })}
              error={errorOf(section.errors, 'reason')}
            />
          )}
          <div>
            <QuietAction busy={section.busy} onClick={() => void save()}>
              {words.action}
            </QuietAction>
          </div>
        </>
      )}
    </section>
  );
}
