/** Before the decision is saved: what it would change, worked out over the whole book once the choice stands still for a moment. */
import { useEffect, useState } from 'react';
import { type IfSettled, ifSettled } from '#findings/gear/ifSettled.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { GearDoubt } from '#records/book.ts';
import { en } from '#words/gearDoubt.ts';
import type { GearHere } from './gearHere.ts';

const words = en.will;
type Choice = NonNullable<GearDoubt['settled']>['decision'];

export interface WillChangeProps {
  readonly here: GearHere;
  readonly doubt: GearDoubt;
  readonly decision: Choice | null;
  readonly trueOverRead: number | null;
}

/** So long nothing was typed or chosen any more. */
const stillMs = 300;

export function WillChange({ here, doubt, decision, trueOverRead }: WillChangeProps) {
  const { book, duties } = here;
  const [found, setFound] = useState<IfSettled | null>(null);
  const known = decision !== null && (decision !== 'asFound' || trueOverRead !== null);
  useEffect(() => {
    setFound(null);
    if (decision === null || !known) return;
    const timer = setTimeout(() => setFound(ifSettled(doubt, { decision, trueOverRead }, book, duties)), stillMs);
    return () => clearTimeout(timer);
  }, [book, duties, doubt, decision, trueOverRead, known]);
  if (!known) return null;
  if (found === null) return <p role="status">{words.looking}</p>;
  const lines = sentences(found);
  return (
    <Lines heading={words.heading}>
      {(lines.length === 0 ? [words.nothing] : lines).map((sentence) => (
        <Line key={sentence}>{sentence}</Line>
      ))}
      <Line>{words.papers}</Line>
    </Lines>
  );
}

function sentences(found: IfSettled): readonly string[] {
  const { lowAgainIds, lowNoMoreIds, figureIds, higherIds, dutiesComeIds, dutiesGoIds } = found;
  const counted = [
    [words.lowAgain, lowAgainIds],
    [words.lowNoMore, lowNoMoreIds],
    [words.figures, figureIds],
    [words.higher, higherIds],
  ] as const;
  const duties = words.duties(dutiesComeIds.length, dutiesGoIds.length);
  return [
    ...counted.filter(([, ids]) => ids.length > 0).map(([say, ids]) => say(ids.length)),
    ...(duties === '' ? [] : [duties]),
  ];
}
