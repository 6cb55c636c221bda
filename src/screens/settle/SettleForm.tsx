/**
 * The frame of every page on which one matter is settled: what is in dispute, the choice, a reason that must be given, and one action.
 * While a file is half taken in nothing is decided here. What is refused leaves everything typed where it is.
 */
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { NewFact } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import type { Entry } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { recordName } from '#words/recordNames.ts';
import { notWritten } from '#words/saving.ts';
import { en as words } from '#words/settle.ts';
import type { Settling } from './settling.ts';

interface Reasoned {
  readonly why: string;
}

export interface SettleFormProps<D extends Reasoned> {
  readonly settling: Settling;
  readonly heading: string;
  readonly action: string;
  readonly blank: D;
  /** What judges until it is settled, and why. */
  readonly meanwhile: string;
  readonly build: (typed: D, read: FieldReader, entry: Entry) => readonly NewFact[];
  readonly fieldByName?: Readonly<Record<string, string>>;
  readonly aside?: ReactNode;
  /** Stands over the action, before the reason. */
  readonly children: (typed: D, change: (part: Partial<D>) => void, errors: readonly FieldError[]) => ReactNode;
}

export function SettleForm<D extends Reasoned>(props: SettleFormProps<D>) {
  const { settling, heading, action, blank, meanwhile, aside, children } = props;
  const { matter, book } = settling;
  const draftKey = `book/settle/${matter.key}`;
  const draft = useDraft<D>(draftKey, blank);
  const { submit, errors, busy } = useSettle(props, draftKey, draft.value);
  const change = (part: Partial<D>): void => draft.set({ ...draft.value, ...part });
  const decidable = book.takingIn !== true;
  return (
    <Page
      heading={heading}
      back="/settle"
      backText={words.back}
      aside={aside}
      action={
        decidable && (
          <MainAction busy={busy} onClick={submit}>
            {action}
          </MainAction>
        )
      }
    >
      <ErrorSummary errors={errors} />
      {!decidable && <Notice kind="alert">{words.takingIn}</Notice>}
      <Lines>
        {matter.recordKeys.map((key) => (
          <Line key={key} to={`/story/${encodeURIComponent(key)}`} end={words.story}>
            {recordName(key, book)}
          </Line>
        ))}
      </Lines>
      <p>{meanwhile}.</p>
      {children(draft.value, change, errors)}
      {decidable && (
        <TextField
          name="why"
          label={words.why}
          hint={words.whyHint}
          rows={2}
          value={draft.value.why}
          onChange={(why) => draft.set({ ...draft.value, why })}
          error={errorOf(errors, 'why')}
        />
      )}
    </Page>
  );
}

function useSettle<D extends Reasoned>(props: SettleFormProps<D>, draftKey: string, typed: D) {
  const { settling, build, fieldByName } = props;
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [, go] = useLocation();
  const writing = useWrite();
  const save = async (facts: readonly NewFact[]): Promise<void> => {
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    if (written.kind === 'written') go('/settle', { replace: true });
    else setErrors(notWritten(written, { why: 'why', ...fieldByName }));
  };
  const submit = (): void => {
    const read = fieldReader(partsWords);
    const empty = typed.why.trim() === '';
    const why = empty ? null : read.text('why', words.why, typed.why, { most: 2000 });
    const facts = build(typed, read, { happened: happenedNow(settling.zone), by: settling.by, why });
    if (empty) read.add('why', words.whyMissing);
    setErrors(read.errors);
    if (read.errors.length === 0) void save(facts);
  };
  return { submit, errors, busy: writing.state === 'saving' };
}
