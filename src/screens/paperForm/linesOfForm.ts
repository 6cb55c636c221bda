/** What every group of lines of the form is handed. */
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { MomentPlace } from '#parts/parseMoment.ts';
import type { Registers } from '#store/hooks.ts';
import type { KeyInDraft } from './keyInDraft.ts';
import type { Held } from './readKeyIn.ts';

export interface LinesOfForm {
  readonly draft: KeyInDraft;
  readonly onChange: (part: Partial<KeyInDraft>) => void;
  readonly errors: readonly FieldError[];
  readonly registers: Registers;
  readonly place: MomentPlace;
  readonly held: Held;
}
