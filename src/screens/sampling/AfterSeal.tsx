/** Sealed and labelled in one tap; where it is locked in, and by whom, at once or later. */
import { wallTimeOf } from '#core/calendar.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { Saved } from '#parts/Saved.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/after.ts';
import styles from './sampling.module.css';
import type { Sampling } from './useSampling.ts';
import { useSection } from './useSection.ts';

const words = en.seal;

/** The place where this crew's cassettes were locked in last stands there already. */
function lastPlace({ book }: Sampling): string {
  const sealed = [...book.samples.values()].flatMap((sample) => sample.sealed ?? []);
  return sealed.sort((a, b) => a.at.localeCompare(b.at)).findLast(({ lockedIn }) => lockedIn !== null)?.lockedIn ?? '';
}

export function AfterSeal({ sampling }: { readonly sampling: Sampling }) {
  const { sample, book, place, by } = sampling;
  const { sealed } = sample;
  const section = useSection(
    sampling,
    'seal',
    { labelled: ['labelled'] as readonly 'labelled'[], lockedIn: lastPlace(sampling), lockedById: by ?? '' },
    { lockedIn: 'lockedIn', lockedById: 'lockedById' },
  );
  const { labelled, lockedIn, lockedById } = section.typed;
  const done = sealed !== null && sealed.lockedIn !== null;
  const save = () =>
    section.save((typed, read, entry) => {
      const place = read.text('lockedIn', words.lockedIn, typed.lockedIn, { optional: sealed === null });
      const who = place === null || typed.lockedById === '' ? null : typed.lockedById;
      const isLabelled = sealed?.labelled === true || typed.labelled.length > 0;
      const body = { sampleId: sample.id, labelled: isLabelled, lockedIn: place, lockedById: who };
      return [newFact('cassetteSealed.v1', body, entry)];
    });
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      {section.state !== 'idle' && <Saved state={section.state} at={section.savedAt} />}
      {sealed === null ? (
        <p>{words.intro}</p>
      ) : (
        <p>{words.stands(wallTimeOf(sealed.at, place.zone).time, sealed.labelled)}</p>
      )}
      {done ? (
        <p>{words.lockedStands(sealed.lockedIn ?? '', book.people.get(sealed.lockedById ?? '')?.name ?? '')}</p>
      ) : (
        <>
          <ErrorSummary errors={section.errors} />
          {sealed === null && (
            <Checklist
              name="labelled"
              label={sample.sampleNumber}
              options={[{ value: 'labelled', label: words.labelled }]}
              value={[...labelled]}
              onChange={(value) => section.change({ labelled: value })}
            />
          )}
          <TextField
            name="lockedIn"
            label={words.lockedIn}
            hint={words.lockedInHint}
            value={lockedIn}
            onChange={(text) => section.change({ lockedIn: text })}
            error={errorOf(section.errors, 'lockedIn')}
          />
          <SelectField
            name="lockedById"
            label={words.lockedBy}
            options={[...book.people.values()].map(({ id, name }) => ({ value: id, label: name }))}
            value={lockedById}
            onChange={(id) => section.change({ lockedById: id })}
            error={errorOf(section.errors, 'lockedById')}
          />
          <div>
            <QuietAction busy={section.busy} onClick={() => void save()}>
              {sealed === null ? words.action : words.lockAction}
            </QuietAction>
          </div>
        </>
      )}
    </section>
  );
}
