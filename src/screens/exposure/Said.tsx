/** What somebody said of the day: hours, other work, a regular day or not. Each line opens to be said or put right. */
import { Line, Lines } from '#parts/Lines.tsx';
import { en as words } from '#words/exposure.ts';
import { formatList } from '#words/quantity.ts';
import type { Part } from './Day.tsx';
import type { DayOn } from './dayOn.ts';

export interface SaidProps {
  readonly day: DayOn;
  readonly onPart: (part: Part) => void;
}

export function Said({ day, onPart }: SaidProps) {
  return (
    <Lines heading={words.said}>
      <Line onClick={() => onPart('hours')}>{hoursText(day)}</Line>
      <Line onClick={() => onPart('other')}>{otherText(day)}</Line>
      <Line onClick={() => onPart('regular')}>{regularText(day)}</Line>
    </Lines>
  );
}

function hoursText({ record, clock }: DayOn): string {
  if (!record?.pieces) return words.hours.open;
  const pieces = record.pieces.map(({ startedAt, endedAt, place, employer }) =>
    words.hours.piece2(clock(startedAt), clock(endedAt), place, employer),
  );
  return words.hours.line(formatList(pieces));
}

function otherText({ record }: DayOn): string {
  const other = record?.otherWork;
  if (!other) return words.other.open;
  const names = words.other.names;
  const there = (['callOut', 'secondSite', 'secondEmployer'] as const).filter((which) => other[which] === 'yes');
  return there.length === 0 ? words.other.none : words.other.some(formatList(there.map((which) => names[which])));
}

function regularText({ record }: DayOn): string {
  const regular = record?.regular;
  if (!regular) return words.regular.open;
  return regular.regular === 'yes' ? words.regular.yesLine : words.regular.noLine(regular.reason ?? '');
}
