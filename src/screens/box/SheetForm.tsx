/** Before a sheet is made: on which paper, and from the second revision on what changed and why. */
import { Choice } from '#parts/Choice.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { Notice } from '#parts/Notice.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en } from '#words/box.ts';
import type { Making } from './useMaking.ts';

const words = en.box;
const papers = (['letter', 'a4'] as const).map((value) => ({ value, label: words.papers[value] }));

export function SheetForm({ making, asksWhy }: { readonly making: Making; readonly asksWhy: boolean }) {
  const { draft, errors } = making;
  return (
    <>
      <Choice
        name="paper"
        label={words.paper}
        options={papers}
        value={draft.value.paper}
        onChange={(paper) => draft.set({ ...draft.value, paper })}
      />
      {asksWhy && (
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
    </>
  );
}

/** The record went on since the sheet was made. */
export function Differs({ sentences }: { readonly sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <Notice kind="alert">
      <p>{words.differs}</p>
      <ul>
        {sentences.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </Notice>
  );
}
