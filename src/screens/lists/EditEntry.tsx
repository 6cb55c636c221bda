/** One entry of a register, new or put right: its lines, the reason where one is needed, and what was struck through before. */
import { type ReactNode, useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { AnyRecord, PersonRecord } from '#records/book.ts';
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import { deviceZone, happenedNow, newId, now } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { type Registers, useBookMeta, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { labelOf } from '#words/fieldNames.ts';
import { en as words } from '#words/lists.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { valueText } from '#words/valueText.ts';
import { changesOf, factsOf, needsReason } from './changes.ts';
import { Employment } from './Employment.tsx';
import { EntryPictures } from './EntryPictures.tsx';
import type { Editing } from './Lists.tsx';
import { entries } from './registers.ts';

export interface EditEntryProps {
  readonly editing: Editing;
  readonly registers: Registers;
  readonly aside: ReactNode;
  readonly onDone: () => void;
}

interface EditDraft {
  readonly text: unknown;
  readonly why: string;
}

export function EditEntry({ editing, registers, aside, onDone }: EditEntryProps) {
  const entry = entries[editing.kind];
  const record = entry.list(registers).find(({ id }) => id === editing.id) ?? null;
  const meta = useBookMeta();
  const { known } = editing;
  const draftKey = `${editing.kind}:${editing.id ?? known?.id ?? 'new'}/lists`;
  const asked = known === undefined ? {} : { name: known.name, identifier: known.identifier ?? '' };
  const blank = { ...(entry.empty(deviceZone()) as object), ...asked };
  const initial = { text: record === null ? blank : entry.textOf(record), why: '' };
  const draft = useDraft<EditDraft>(draftKey, initial);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const today = dayOf(now(), deviceZone());

  const factsToWrite = (body: Readonly<Record<string, unknown>>): readonly NewFact[] | FieldError => {
    const occasion = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? null };
    if (record === null) {
      const whole = {
        ...entry.unasked,
        ...body,
        [entry.idName]: known?.id ?? newId(),
      } as unknown as FactBody<FactKind>;
      return [newFact(entry.added, whole, occasion)];
    }
    const changes = changesOf(record, body);
    if (changes.length === 0) return { field: null, text: words.nothingChanged };
    const why = draft.value.why.trim();
    if (needsReason(changes) && why === '') return { field: 'why', text: words.whyMissing };
    return factsOf(record, changes, { ...occasion, why: why || null });
  };
  const submit = async () => {
    const read = fieldReader(partsWords);
    const body = entry.read(read, draft.value.text, today);
    if (body === null || read.errors.length > 0) return setErrors(read.errors);
    const facts = factsToWrite(body);
    if ('text' in facts) return setErrors([facts]);
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written));
    if (written.kind === 'written') onDone();
  };

  return (
    <Page
      heading={record === null ? words.registers[editing.kind].add : words.correct(entry.title(record))}
      aside={aside}
      action={
        <>
          <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
            {words.save}
          </MainAction>
          <QuietAction
            onClick={() => {
              draft.clear();
              onDone();
            }}
          >
            {words.leave}
          </QuietAction>
        </>
      }
    >
      <ErrorSummary errors={errors} />
      {record !== null && <p>{words.correctIntro}</p>}
      <entry.Lines
        value={draft.value.text}
        onChange={(text) => draft.set({ ...draft.value, text })}
        errors={errors}
        today={today}
      />
      {record !== null && (
        <TextField
          name="why"
          label={words.why}
          hint={words.whyHint}
          value={draft.value.why}
          onChange={(why) => draft.set({ ...draft.value, why })}
          error={errorOf(errors, 'why')}
        />
      )}
      {record !== null && editing.kind === 'person' && <Employment person={record as PersonRecord} today={today} />}
      {record !== null && (
        <EntryPictures kind={editing.kind} record={record} title={entry.title(record)} registers={registers} />
      )}
      {record !== null && <Struck record={record} registers={registers} />}
      {record !== null && (
        <Lines>
          <Line to={`/story/${encodeURIComponent(record.key)}`}>{words.story}</Line>
        </Lines>
      )}
    </Page>
  );
}

function Struck({ record, registers }: { readonly record: AnyRecord; readonly registers: Registers }) {
  const naming = { nameOf: (id: string) => registers.jobClassifications.byId.get(id)?.name, zone: deviceZone() };
  if (record.strikes.length === 0) return null;
  return (
    <Lines heading={words.struckHeading}>
      {record.strikes.map(({ correctionId, path, old, why }) => (
        <Line key={correctionId}>
          <s>{words.struck(labelOf(path), valueText(path, old, naming), why)}</s>
        </Line>
      ))}
    </Lines>
  );
}
