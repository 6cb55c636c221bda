/** The form in the order of the paper. Everything is one write: either all of it stands in the book, or nothing and it is said why. */
import { useState } from 'react';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { MomentPlace } from '#parts/parseMoment.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import type { Draft, Registers } from '#store/hooks.ts';
import type { Written } from '#store/write.ts';
import { en as words } from '#words/keyIn.ts';
import { notWritten } from '#words/saving.ts';
import { Fitting } from './Fitting.tsx';
import { FlowSide } from './FlowSide.tsx';
import { Gear } from './Gear.tsx';
import type { KeyedInForm } from './KeyedIn.tsx';
import { type KeyInDraft, nextForm } from './keyInDraft.ts';
import { keyInFacts, type PlacedFact } from './keyInFacts.ts';
import type { LinesOfForm } from './linesOfForm.ts';
import { type Held, readKeyIn } from './readKeyIn.ts';
import { Seal } from './Seal.tsx';
import { SiteDay } from './SiteDay.tsx';
import { WorkerCassette } from './WorkerCassette.tsx';
import { DayAsItWas, WorkOfDay } from './WorkOfDay.tsx';
import { Worn } from './Worn.tsx';

export interface KeyInFormProps {
  readonly draft: Draft<KeyInDraft>;
  readonly registers: Registers;
  readonly place: MomentPlace;
  readonly held: Held & { readonly shift: boolean };
  readonly by: string | null;
  readonly onSaved: (form: KeyedInForm) => void;
}

const draftKey = 'book/keyIn';

/** Each refusal stands at the field whose fact was refused. */
function refusedAt(written: Written, facts: readonly PlacedFact[]): readonly FieldError[] {
  if (written.kind !== 'refused') return notWritten(written);
  return written.refusals.flatMap((refusal) => {
    const placed = facts[Number.parseInt(refusal.fields[0] ?? '', 10)];
    return notWritten({ kind: 'refused', refusals: [refusal] }).map(({ text }) => ({
      field: placed?.field ?? null,
      text,
    }));
  });
}

export function KeyInForm({ draft, registers, place, held, by, onSaved }: KeyInFormProps) {
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const typed = draft.value;
  const lines: LinesOfForm = {
    draft: typed,
    onChange: (part) => draft.set({ ...typed, ...part }),
    errors,
    registers,
    place,
    held,
  };

  const submit = async () => {
    const read = readKeyIn(typed, held, place);
    setErrors(read.errors);
    const language = registers.people.byId.get(typed.workerId ?? '')?.language ?? typed.worker.language;
    const made = keyInFacts(read, { draft: typed, held, by, language, now: happenedNow(place.zone) });
    if (made === null) return;
    const written = await writing.run(
      made.facts.map(({ fact }) => fact),
      { draftKey },
    );
    if (written === null) return;
    if (written.kind !== 'written') return setErrors(refusedAt(written, made.facts));
    const worker = read.worker?.name ?? registers.people.byId.get(typed.workerId ?? '')?.name ?? '';
    const sampleNumber = written.sampleNumbers[0] ?? read.sampleNumber;
    const { sampleId, shiftId, workdayId } = made;
    draft.set(nextForm(typed, made));
    onSaved({ worker, sampleId, shiftId, workdayId, sampleNumber, isNew: read.sampleNumber === '' });
  };

  return (
    <Page
      heading={words.heading}
      back="/"
      aside={
        <>
          <Worn {...lines} />
          <FlowSide {...lines} side="after" />
          <Seal {...lines} />
          <DayAsItWas {...lines} />
        </>
      }
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <SiteDay {...lines} />
      <Gear {...lines} />
      <FlowSide {...lines} side="before" />
      <WorkerCassette {...lines} />
      <WorkOfDay {...lines} />
      <Fitting {...lines} />
    </Page>
  );
}
