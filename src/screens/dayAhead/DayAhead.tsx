/**
 * The office or the supervisor, planning: minutes at each task in the hand, what would the day look like? Worked out from what like work
 * was found to be. Afterwards nothing is written down: it is a prediction, it proves nothing and ends no duty.
 */
import { useRef, useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { dayAhead } from '#findings/season/dayAhead.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useDraft, useNow } from '#store/hooks.ts';
import { en as words } from '#words/dayAhead.ts';
import { en as screen } from '#words/dayAheadScreen.ts';
import { Around } from './Around.tsx';
import { type DayAheadText, emptyPiece, mostPieces, readDayAhead, stateNotKnown } from './dayAheadDraft.ts';
import { Piece } from './Piece.tsx';
import { Prediction } from './Prediction.tsx';

const minute = 60_000;

export function DayAhead() {
  const today = dayOf(useNow(minute), deviceZone());
  const read = useFoundInBook(findDutiesInSteps, today);
  if (read === undefined)
    return (
      <Page heading={words.heading} back="/season">
        <p role="status">{screen.looking}</p>
      </Page>
    );
  return <Asked book={read.book} duties={read.found} today={today} />;
}

interface AskedProps {
  readonly book: Book;
  readonly duties: DutiesOfBook;
  readonly today: string;
}

/** The state that every site of the book lies in. */
function stateOf({ sites }: Book): string {
  const codes = [...new Set([...sites.values()].map(({ stateCode }) => stateCode))];
  return codes.length === 1 ? (codes[0] ?? stateNotKnown) : stateNotKnown;
}

function Asked({ book, duties, today }: AskedProps) {
  const draft = useDraft<DayAheadText>('dayAhead', {
    pieces: [emptyPiece],
    setting: 'both',
    state: stateOf(book),
    day: today,
  });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const answer = useRef<HTMLElement>(null);
  const text = draft.value;
  const change = (part: Partial<DayAheadText>) => draft.set({ ...text, ...part });
  const { input } = readDayAhead(text, today);
  const workOut = () => {
    const found = readDayAhead(text, today).errors;
    setErrors(found);
    if (found.length > 0) return;
    answer.current?.focus({ preventScroll: true });
    answer.current?.scrollIntoView({ block: 'start' });
  };
  const nearIds = [...new Set([...book.samples.values()].flatMap(({ taskIds }) => taskIds))];
  return (
    <Page
      heading={words.heading}
      back="/season"
      action={<MainAction onClick={workOut}>{screen.action}</MainAction>}
      aside={
        <section ref={answer} tabIndex={-1} aria-label={screen.answerHeading}>
          {input === null ? <p>{screen.waiting}</p> : <Prediction ahead={dayAhead(input, book, duties)} book={book} />}
        </section>
      }
    >
      <p>{words.intro}</p>
      <ErrorSummary errors={errors} />
      {text.pieces.map((piece, at) => (
        <Piece
          // biome-ignore lint/suspicious/noArrayIndexKey: a piece has no other name than its place
          key={at}
          at={at}
          piece={piece}
          nearIds={nearIds}
          onChange={(part) => change({ pieces: text.pieces.map((one, i) => (i === at ? { ...one, ...part } : one)) })}
          onRemove={
            text.pieces.length === 1 ? undefined : () => change({ pieces: text.pieces.filter((_, i) => i !== at) })
          }
          errors={errors}
        />
      ))}
      <Around
        text={text}
        today={today}
        onChange={change}
        onAdd={text.pieces.length < mostPieces ? () => change({ pieces: [...text.pieces, emptyPiece] }) : undefined}
        errors={errors}
      />
    </Page>
  );
}
