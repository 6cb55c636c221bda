/** Making a revision from the page of a box: which paper, why, and what stands in the way. */
import { useState } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { Book, BoxRecord } from '#records/book.ts';
import { type Draft, useDraft } from '#store/hooks.ts';
import { en } from '#words/box.ts';
import { notWritten } from '#words/saving.ts';
import { gapSentence } from './gapSentence.ts';
import { type Made, makeSheet, type Paper } from './makeSheet.ts';

export interface SheetText {
  readonly paper: Paper;
  readonly why: string;
}

export interface Making {
  readonly draft: Draft<SheetText>;
  readonly errors: readonly FieldError[];
  readonly busy: boolean;
  readonly make: () => Promise<void>;
}

export interface Where {
  readonly zone: string;
  readonly by: string | null;
}

export function useMaking(box: BoxRecord, book: Book, where: Where): Making {
  const issue = box.issues.at(-1);
  const draftKey = `box:${box.id}/sheet`;
  const draft = useDraft<SheetText>(draftKey, { paper: issue?.paper ?? 'letter', why: '' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [busy, setBusy] = useState(false);
  const make = async () => {
    const { paper } = draft.value;
    const why = issue === undefined ? null : draft.value.why.trim();
    if (why === '') return setErrors([{ field: 'why', text: en.box.whyMissing }]);
    setBusy(true);
    const made = await makeSheet({ boxId: box.id, book, paper, why, draftKey, ...where });
    setBusy(false);
    setErrors(problemsOf(made));
  };
  return { draft, errors, busy, make };
}

function problemsOf(made: Made): FieldError[] {
  if (made.kind === 'gaps')
    return made.gaps.filter(({ weight }) => weight === 'stops').map((gap) => ({ field: null, text: gapSentence(gap) }));
  if (made.kind === 'notMade') return [{ field: null, text: en.box.failed }];
  return notWritten(made, {});
}
