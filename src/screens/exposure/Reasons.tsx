/** Why the day is not settled, and what else is worth knowing of it, each as a sentence. */
import type { Reason } from '#findings/reason.ts';
import type { WorkdayFinding } from '#findings/workday.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { en as words } from '#words/exposure.ts';
import { reasonSentence } from '#words/reasons.ts';

/** What a person can settle, and what waits for the rest of a file: each has its page. */
const toSettle: ReadonlySet<string> = new Set([
  'correctionsConflict',
  'numberTwice',
  'voidAgainstResult',
  'entriesMissing',
]);

/** Each sentence once, however many facts it stands on. */
const sentences = (reasons: readonly Reason[]): string[] => [...new Set(reasons.map(reasonSentence))];

export function Reasons({ finding }: { readonly finding: WorkdayFinding }) {
  const ofStandings = finding.standings.flatMap(({ why, notes }) => [...why, ...notes]);
  const blocking = sentences([...finding.blocksBelow, ...ofStandings].filter(({ weight }) => weight !== 'notes'));
  const also = sentences([...finding.reasons, ...ofStandings]).filter((sentence) => !blocking.includes(sentence));
  const keys = new Set([...finding.reasons, ...ofStandings].map(({ key }) => key));
  const settle = [...keys].some((key) => toSettle.has(key));
  const lines = (heading: string, texts: readonly string[]) =>
    texts.length > 0 && (
      <Lines heading={heading}>
        {texts.map((sentence) => (
          <Line key={sentence}>{sentence}</Line>
        ))}
      </Lines>
    );
  return (
    <>
      {lines(words.whyHeading, blocking)}
      {(settle || keys.has('takingIn') || keys.has('inTwoBoxes')) && (
        <Lines>
          {settle && <Line to="/settle">{words.toSettle}</Line>}
          {keys.has('inTwoBoxes') && <Line to="/boxes">{words.toBoxes}</Line>}
          {keys.has('takingIn') && <Line to="/take-in">{words.toTakeIn}</Line>}
        </Lines>
      )}
      {lines(words.alsoHeading, also)}
    </>
  );
}
