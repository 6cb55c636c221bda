/**
 * The office or the supervisor, planning, with a price list of the laboratory in the hand: can such a sample prove anything at all?
 * Answered in words first. Afterwards nothing is written down: it is worked out, and it proves nothing. Needs no book.
 */
import { useRef, useState } from 'react';
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { sampleAhead } from '#findings/season/sampleAhead.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { deviceZone } from '#store/device.ts';
import { useDraft, useNow } from '#store/hooks.ts';
import { en as words } from '#words/proveScreen.ts';
import { Answer } from './Answer.tsx';
import { ProveFields } from './ProveFields.tsx';
import { type ProveText, proveFrom, readProve } from './proveDraft.ts';

const minute = 60_000;

export function Prove() {
  const today = dayOf(useNow(minute), deviceZone());
  const search = useSearch();
  const draft = useDraft<ProveText>(`prove?${search}`, proveFrom(search));
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const answer = useRef<HTMLElement>(null);
  const { input } = readProve(draft.value, today);
  const workOut = () => {
    const found = readProve(draft.value, today).errors;
    setErrors(found);
    if (found.length > 0) return;
    answer.current?.focus({ preventScroll: true });
    answer.current?.scrollIntoView({ block: 'start' });
  };
  return (
    <Page
      heading={words.heading}
      back="/season"
      action={<MainAction onClick={workOut}>{words.action}</MainAction>}
      aside={
        <section ref={answer} tabIndex={-1} aria-label={words.answerHeading}>
          {input === null ? <p>{words.waiting}</p> : <Answer ahead={sampleAhead(input)} />}
        </section>
      }
    >
      <p>{words.intro}</p>
      <ErrorSummary errors={errors} />
      <ProveFields text={draft.value} onChange={(part) => draft.set({ ...draft.value, ...part })} errors={errors} />
    </Page>
  );
}
