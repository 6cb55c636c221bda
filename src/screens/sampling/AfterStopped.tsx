/** Stopped: one tap, written at once. The pump's own minutes are read off afterwards and stand beside it as a witness. */
import { useLocation } from 'wouter';
import { wallTimeOf } from '#core/calendar.ts';
import { findSample } from '#findings/sample.ts';
import { ErrorSummary, errorOf } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { Saved } from '#parts/Saved.tsx';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/after.ts';
import { formatEstimate, formatMinutes } from '#words/quantity.ts';
import { pumpMinRange } from './pumpMinutes.ts';
import styles from './sampling.module.css';
import { plainFact } from './TypedDeed.tsx';
import type { Sampling } from './useSampling.ts';
import { useSection } from './useSection.ts';

export function AfterStopped({ sampling }: { readonly sampling: Sampling }) {
  const { sample, place, book } = sampling;
  const section = useSection(sampling, 'stopped', {});
  const [, go] = useLocation();
  const { stopped } = sample;
  if (stopped === null)
    return (
      <section className={styles.section}>
        <h2>{words.stopped.heading}</h2>
        <p>{words.stopped.not}</p>
        <ErrorSummary errors={section.errors} />
        <MainAction
          busy={section.busy}
          onClick={() => void section.save((_, __, entry) => [plainFact('stop', sample.id, entry)])}
        >
          {words.stopped.now}
        </MainAction>
        <div>
          <QuietAction onClick={() => go(`/sample/${sample.id}?do=stop`)}>{words.stopped.other}</QuietAction>
        </div>
      </section>
    );
  const { wornMin } = findSample(sample.id, book);
  const time = wallTimeOf(stopped.at, place.zone).time;
  const minutes =
    wornMin === null
      ? ''
      : wornMin.estimate.kind === 'exact'
        ? formatMinutes(wornMin.estimate.value)
        : formatEstimate(wornMin.estimate, wornMin.unit);
  return (
    <section className={styles.section}>
      <h2>{words.stopped.heading}</h2>
      <p>{words.stopped.at(time, minutes)}</p>
      {stopped.pumpMin === null ? (
        <PumpMinutes sampling={sampling} stopFactId={stopped.factId} />
      ) : (
        <p>{words.pumpMin.stands(formatMinutes(stopped.pumpMin))}</p>
      )}
      {sample.sealed === null && (
        <div>
          <QuietAction to={`/sample/${sample.id}?do=mistake`}>{words.stopped.mistake}</QuietAction>
        </div>
      )}
    </section>
  );
}

/** The stop was one tap and is a fact already: what its display showed is added to it, with that as the reason. */
function PumpMinutes({ sampling, stopFactId }: { readonly sampling: Sampling; readonly stopFactId: string }) {
  const section = useSection(sampling, 'pumpMin', { text: '' }, { new: 'pumpMin' });
  return (
    <>
      <ErrorSummary errors={section.errors} />
      <QuantityField
        name="pumpMin"
        label={words.pumpMin.label}
        hint={words.pumpMin.hint}
        unit="min"
        kind="whole"
        value={section.typed.text}
        onChange={(text) => section.change({ text })}
        error={errorOf(section.errors, 'pumpMin')}
      />
      <div>
        <QuietAction
          busy={section.busy}
          onClick={() =>
            void section.save(({ text }, read, entry) => {
              const pumpMin = read.quantity('pumpMin', words.pumpMin.label, 'min', text, {
                ...pumpMinRange,
                optional: false,
              });
              const body = { replaces: stopFactId, path: '/pumpMin', old: null, new: pumpMin, supersedes: null };
              const about = [sampling.sample.key];
              return [newFact('valueCorrected.v1', body, { ...entry, why: words.pumpMin.why, about })];
            })
          }
        >
          {words.pumpMin.action}
        </QuietAction>
      </div>
      {section.state !== 'idle' && <Saved state={section.state} at={section.savedAt} />}
    </>
  );
}
