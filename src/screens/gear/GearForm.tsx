/** What every form about a pump, a flow meter or a lot shares: draft, errors, one write, and the way back. Refused, what was typed stays. */
import { type ReactNode, useState } from 'react';
import { useLocation } from 'wouter';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { NewFact } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import type { Entry } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { type GearHere, pathOf } from './gearHere.ts';

export interface GearFormProps<D> {
  readonly here: GearHere;
  /** Names the draft. */
  readonly name: string;
  readonly heading: string;
  readonly action: string;
  /** A quiet line over the heading; whose it is where none is said. */
  readonly over?: string | undefined;
  /** Stands in the first column; the fields then stand beside it, or below it on a phone. */
  readonly about?: ReactNode;
  readonly blank: D;
  /** Names of a fact's values that stand in a field of another name. */
  readonly fieldByName?: Readonly<Record<string, string>>;
  /** Where to go once it is written; its own page where none is said. */
  readonly next?: string | undefined;
  readonly onWritten?: (() => void) | undefined;
  /** null, with a sentence at each field, when something stands in the way. */
  readonly build: (typed: D, read: FieldReader, entry: Entry) => NewFact | null;
  readonly children: (typed: D, change: (part: Partial<D>) => void, errors: readonly FieldError[]) => ReactNode;
}

export function GearForm<D extends object>(props: GearFormProps<D>) {
  const { here, name, heading, action, blank, fieldByName, build, children, about } = props;
  const draftKey = `${here.record.key}/${name}`;
  const draft = useDraft<D>(draftKey, blank);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const submit = async () => {
    const read = fieldReader(partsWords);
    const fact = build(draft.value, read, { happened: happenedNow(here.zone), by: here.by });
    setErrors(read.errors);
    if (fact === null || read.errors.length > 0) return;
    const written = await writing.run([fact], { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, fieldByName));
    if (written.kind !== 'written') return;
    props.onWritten?.();
    go(props.next ?? pathOf(here));
  };
  const fields = children(draft.value, (part) => draft.set({ ...draft.value, ...part }), errors);
  return (
    <Page
      heading={heading}
      over={props.over ?? here.title}
      back={pathOf(here)}
      backText={here.title}
      aside={about === undefined ? undefined : fields}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {action}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      {about ?? fields}
    </Page>
  );
}
