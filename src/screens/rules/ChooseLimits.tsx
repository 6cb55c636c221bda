/** Which sets are shown beside the rule, and the firm's own limits: refused where they are not stricter, kept as a fact where they are. */
import { type ReactNode, useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import type { BookRecord } from '#records/book.ts';
import { limitSetOn } from '#reference/limits.ts';
import { type OwnLimits, ownLimitProblems } from '#reference/ownLimits.ts';
import { deviceZone, happenedNow, now } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/limitsBeside.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { besideOptions } from './besideOptions.ts';
import styles from './rules.module.css';

interface LimitsDraft {
  readonly besideIds: readonly string[];
  readonly level: string;
  readonly pel: string;
}

const draftKey = 'book/limits';
const own = words.own;
const unit = 'µg/m³';

interface ChooseLimitsProps {
  readonly book: BookRecord;
  readonly holderId: string | null;
  readonly beside: ReactNode;
  readonly children: ReactNode;
}

const typed = (value: number | null | undefined): string => (typeof value === 'number' ? String(value) : '');

export function ChooseLimits({ book, holderId, beside, children }: ChooseLimitsProps) {
  const { limits } = book;
  const draft = useDraft<LimitsDraft>(draftKey, {
    besideIds: limits?.besideIds ?? [],
    level: typed(limits?.ownActionLevelUgPerM3),
    pel: typed(limits?.ownPelUgPerM3),
  });
  const writing = useWrite();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const zone = deviceZone();
  // own limits are held against the federal ones: where a state's are lower, those stand anyway
  const { set } = limitSetOn(dayOf(now(), zone), '');
  const { besideIds, level, pel } = draft.value;
  const change = (part: Partial<LimitsDraft>) => {
    draft.set({ ...draft.value, ...part });
    writing.reset();
  };

  const submit = async () => {
    const read = fieldReader(partsWords);
    const wanted: OwnLimits = {
      ownActionLevelUgPerM3: read.quantity('level', own.actionLevel, unit, level, { optional: true, least: 0.001 }),
      ownPelUgPerM3: read.quantity('pel', own.pel, unit, pel, { optional: true, least: 0.001 }),
    };
    if (read.errors.length === 0)
      for (const { field, key, limitUgPerM3 } of ownLimitProblems(wanted, set))
        read.add(field === 'ownPelUgPerM3' ? 'pel' : 'level', own[key](limitUgPerM3));
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const entry = { happened: happenedNow(zone), by: holderId };
    const body = { bookId: book.bookId, besideIds: [...besideIds], ...wanted };
    const written = await writing.run([newFact('limitsChosen.v1', body, entry)], { draftKey });
    if (written !== null) setErrors(notWritten(written));
  };

  return (
    <Page
      heading={words.heading}
      back="/"
      aside={beside}
      action={
        writing.state === 'saved' ? (
          <MainAction to="/">{words.done}</MainAction>
        ) : (
          <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
            {words.save}
          </MainAction>
        )
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      {writing.state === 'saved' && <p role="status">{words.saved}</p>}
      {children}
      <Checklist
        name="beside"
        label={words.beside}
        hint={words.besideHint}
        options={besideOptions(dayOf(now(), zone))}
        value={[...besideIds]}
        onChange={(picked) => change({ besideIds: picked })}
      />
      <section className={styles.sets}>
        <h2>{own.heading}</h2>
        <p>
          {own.intro} {own.stricterStates}
        </p>
        <QuantityField
          name="level"
          label={own.actionLevel}
          unit={unit}
          hint={own.hint(set.actionLevel.value)}
          value={level}
          onChange={(text) => change({ level: text })}
          error={errorOf(errors, 'level')}
        />
        <QuantityField
          name="pel"
          label={own.pel}
          unit={unit}
          hint={own.hint(set.pel.value)}
          value={pel}
          onChange={(text) => change({ pel: text })}
          error={errorOf(errors, 'pel')}
        />
      </section>
    </Page>
  );
}
