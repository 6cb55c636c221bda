/** On the worker, as the paper tells it: put on, each look, stopped, and the pump's own minutes. */
import { errorOf } from '#parts/ErrorSummary.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { en as after } from '#words/after.ts';
import { en as words } from '#words/keyIn.ts';
import { type LookHow, type LookText, noTime } from './keyInDraft.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import { PaperTime } from './PaperTime.tsx';
import styles from './paperForm.module.css';

const hows: readonly LookHow[] = ['good', 'notRunning', 'notInPlace'];
/** As many as the paper has lines for. */
const shownUnasked = 2;
const mostLooks = 12;
const blank: LookText = { at: noTime, how: 'good' };

export function Worn({ draft, onChange, errors, place }: LinesOfForm) {
  const time = { day: draft.day, place, errors };
  const looks = [...draft.looks, ...Array<LookText>(Math.max(0, shownUnasked - draft.looks.length)).fill(blank)];
  const changeLook = (at: number, part: Partial<LookText>) =>
    onChange({ looks: looks.map((look, i) => (i === at ? { ...look, ...part } : look)) });
  return (
    <section className={styles.part}>
      <h2>{words.worn}</h2>
      <PaperTime
        {...time}
        name="putOn"
        label={words.putOn}
        value={draft.putOn}
        onChange={(putOn) => onChange({ putOn })}
      />
      {looks.map((look, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: looks have no other name than their place
        <div key={i} className={styles.part}>
          <PaperTime
            {...time}
            name={`look-${i}`}
            label={words.look(i + 1)}
            value={look.at}
            onChange={(at) => changeLook(i, { at })}
          />
          {look.at.time.trim() !== '' && (
            <SelectField
              name={`look-${i}-how`}
              label={words.lookHow(i + 1)}
              options={hows.map((value) => ({ value, label: words.lookHows[value] }))}
              value={look.how}
              onChange={(how) => changeLook(i, { how: how as LookHow })}
            />
          )}
        </div>
      ))}
      {looks.length < mostLooks && (
        <div>
          <QuietAction onClick={() => onChange({ looks: [...looks, blank] })}>{words.moreLooks}</QuietAction>
        </div>
      )}
      <PaperTime
        {...time}
        name="stopped"
        label={words.stopped}
        value={draft.stopped}
        onChange={(stopped) => onChange({ stopped })}
      />
      <QuantityField
        name="pumpMin"
        label={after.pumpMin.label}
        hint={after.pumpMin.hint}
        unit="min"
        kind="whole"
        value={draft.pumpMin}
        onChange={(pumpMin) => onChange({ pumpMin })}
        error={errorOf(errors, 'pumpMin')}
      />
    </section>
  );
}
