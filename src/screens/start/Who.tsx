/**
 * Who holds this device: asked when a book is new and again after twelve hours, with clean hands before the work area. Afterwards the
 * name stands in the header and beside every entry. It blocks nothing: a running pump is reached without it.
 */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { TextField } from '#parts/TextField.tsx';
import { deviceZone, happenedNow, newId } from '#store/device.ts';
import { setHolder } from '#store/holder.ts';
import { useBookMeta, useDraft, useRegisters } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { write } from '#store/write.ts';
import { failedSentence, notWritten } from '#words/saving.ts';
import { en as words } from '#words/start.ts';

interface WhoDraft {
  readonly picked: string | null;
  readonly name: string;
  readonly identifier: string;
  readonly language: 'en' | 'es';
}

const blank: WhoDraft = { picked: null, name: '', identifier: '', language: 'en' };
const draftKey = 'book/who';
const text = words.who;

export function Who() {
  const registers = useRegisters();
  const meta = useBookMeta();
  const draft = useDraft<WhoDraft>(draftKey, blank);
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  // Before the list is there, "someone new" would stand chosen for a moment and be taken away again.
  if (registers === undefined) return <Page heading={text.heading} />;
  const people = registers.people.list;
  const { name, identifier, language } = draft.value;
  const picked = draft.value.picked ?? (people.length === 0 ? addingNew : (meta?.holderPersonId ?? null));
  const change = (part: Partial<WhoDraft>) => draft.set({ ...draft.value, ...part });

  const add = async (): Promise<string | null> => {
    if (name.trim() === '') {
      setErrors([{ field: 'name', text: text.nameMissing }]);
      return null;
    }
    const personId = newId();
    const body = {
      personId,
      name: name.trim(),
      identifier: identifier.trim() || null,
      language,
      jobClassificationId: null,
      employer: null,
    };
    const entry = { happened: happenedNow(deviceZone()), by: meta?.holderPersonId ?? personId };
    const written = await write([newFact('personAdded.v1', body, entry)], { draftKey });
    setErrors(notWritten(written, { identifier: 'identifier', name: 'name' }));
    return written.kind === 'written' ? personId : null;
  };
  const submit = async () => {
    if (picked === null) return setErrors([{ field: 'person', text: text.missing }]);
    setBusy(true);
    const personId = picked === addingNew ? await add() : picked;
    if (personId !== null) {
      const notKept = await setHolder(personId);
      if (notKept === null) {
        draft.clear();
        go('/');
      } else {
        // Added already: the next try picks, and adds nobody twice.
        change({ picked: personId });
        setErrors([{ field: null, text: failedSentence(notKept) }]);
      }
    }
    setBusy(false);
  };

  const chosenName = people.find((person) => person.id === picked)?.name;
  return (
    <Page
      heading={text.heading}
      action={
        <MainAction busy={busy} onClick={() => void submit()}>
          {chosenName === undefined ? text.goOn : text.goOnAs(chosenName)}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{text.intro}</p>
      <PickOrAdd
        name="person"
        label={text.pick}
        options={people.map((person) => ({
          id: person.id,
          label: person.name,
          detail: person.identifier ?? undefined,
        }))}
        value={picked}
        onChange={(id) => change({ picked: id })}
        addText={text.add}
        error={errorOf(errors, 'person')}
      >
        <TextField
          name="name"
          label={text.name}
          value={name}
          onChange={(typed) => change({ picked: addingNew, name: typed })}
          error={errorOf(errors, 'name')}
          autoComplete="name"
        />
        <TextField
          name="identifier"
          label={text.identifier}
          hint={text.identifierHint}
          value={identifier}
          onChange={(typed) => change({ picked: addingNew, identifier: typed })}
          error={errorOf(errors, 'identifier')}
        />
        <Choice
          name="language"
          label={text.language}
          options={[
            { value: 'en', label: text.languages.en },
            { value: 'es', label: text.languages.es },
          ]}
          value={language}
          onChange={(chosen) => change({ picked: addingNew, language: chosen })}
        />
      </PickOrAdd>
    </Page>
  );
}
