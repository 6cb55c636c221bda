/** Corrective action: asked exactly when the result is at or above the PEL, or may be. In English, and in Spanish if somebody can. */
import { errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { TextField } from '#parts/TextField.tsx';
import { en } from '#words/noticeScreen.ts';
import type { NoticeText } from './noticeDraft.ts';

const words = en.corrective;

export interface CorrectiveProps {
  readonly text: NoticeText;
  readonly onChange: (part: Partial<NoticeText>) => void;
  readonly errors: readonly FieldError[];
}

export function Corrective({ text, onChange, errors }: CorrectiveProps) {
  return (
    <>
      <TextField
        name="corrective"
        label={words.label}
        hint={words.hint}
        rows={3}
        value={text.corrective}
        onChange={(corrective) => onChange({ corrective })}
        error={errorOf(errors, 'corrective')}
      />
      {text.languages.includes('es') && (
        <TextField
          name="correctiveEs"
          label={words.labelEs}
          hint={words.hintEs}
          rows={3}
          lang="es"
          value={text.correctiveEs}
          onChange={(correctiveEs) => onChange({ correctiveEs })}
          error={errorOf(errors, 'correctiveEs')}
        />
      )}
    </>
  );
}
