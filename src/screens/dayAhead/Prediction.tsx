/** The prediction: said as one first, then its average with the spread, what it may reach, the least protection, and piece by piece. */
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { DayAhead, PieceAhead } from '#findings/season/dayAhead.ts';
import { Figure } from '#parts/Figure.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/dayAhead.ts';
import { en as screen } from '#words/dayAheadScreen.ts';
import { formatEstimate, formatEstimateNumber, formatMinutes, formatNumber } from '#words/quantity.ts';
import styles from './dayAhead.module.css';
import { taskNames } from './Piece.tsx';
import { Protection } from './Protection.tsx';

interface PredictionProps {
  readonly ahead: DayAhead;
  readonly book: Book;
}

export function Prediction({ ahead, book }: PredictionProps) {
  const { pieces, durationMin, twa8, limits, mayReach, longDay } = ahead;
  const { actionLevel, pel } = limits.set;
  const against = [actionLevel.value, pel.value];
  return (
    <div className={styles.answer}>
      <h2>{screen.answerHeading}</h2>
      <p className={styles.first}>{screen.answer(pieces.length, durationMin)}</p>
      {pieces
        .filter(({ from }) => from === 'notKnown')
        .map(({ taskIds }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a piece has no other name than its place
          <p key={i}>{screen.unknown(taskNames(taskIds))}</p>
        ))}
      {twa8 !== null && (
        <Figure
          label={words.average}
          value={formatEstimateNumber(twa8.estimate, 'µg/m³', { against })}
          unit="µg/m³"
          note={Number.isFinite(upperOf(twa8.estimate)) ? words.carefulSide : words.averageNotKnown}
        >
          <WorkingView working={twa8} />
        </Figure>
      )}
      <ul className={styles.list}>
        {mayReach.pel && <li>{words.mayReach.pel(words.limit(pel.value))}</li>}
        {mayReach.actionLevel && <li>{words.mayReach.actionLevel(words.limit(actionLevel.value))}</li>}
        {!mayReach.actionLevel && <li>{words.saysNothing}</li>}
        {longDay && <li>{words.longDay}</li>}
      </ul>
      <Protection advice={ahead.advice} />
      <Lines heading={words.pieces}>
        {pieces.map((piece, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a piece has no other name than its place
          <PieceLine key={i} piece={piece} />
        ))}
      </Lines>
      {pieces.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece has no other name than its place
        <Samples key={i} piece={piece} book={book} />
      ))}
    </div>
  );
}

const PieceLine = ({ piece }: { readonly piece: PieceAhead }) => (
  <Line
    end={formatEstimate(piece.concentration.estimate, 'µg/m³')}
    detail={[
      screen.fromWhat(words.from(piece.from, piece.spread?.soundCount ?? 0), formatMinutes(piece.durationMin)),
      spreadText(piece),
    ]
      .filter((part) => part !== '')
      .join('. ')}
  >
    {taskNames(piece.taskIds)}
  </Line>
);

function spreadText({ spread }: PieceAhead): string {
  if (spread === null) return '';
  if (spread.geometricSd === null) return words.tooFew;
  return words.geometricSd(formatNumber(lowerOf(spread.geometricSd.estimate), ''));
}

function Samples({ piece, book }: { readonly piece: PieceAhead; readonly book: Book }) {
  if (piece.samples.length === 0) return null;
  return (
    <details>
      <summary className={styles.summary}>
        {screen.samplesOpen}: {taskNames(piece.taskIds)}
      </summary>
      <Lines>
        {piece.samples.map((one) => (
          <Line
            key={one.sampleId}
            to={one.reported ? undefined : `/sample/${one.sampleId}`}
            end={formatEstimate(one.concentrationUgPerM3, 'µg/m³')}
            detail={one.doubtful ? words.doubtful : undefined}
          >
            {`${one.reported ? words.reportedOn(one.workOn) : words.sampleOn(one.sampleNumber, one.workOn)}: ${book.people.get(one.workerId ?? '')?.name ?? words.someone}`}
          </Line>
        ))}
      </Lines>
    </details>
  );
}
