/** Wherever something rests on gear that was found bad: a sentence for each doubt, with the way to its page. Nothing where there is none. */
import { en as words } from '#words/gearDoubt.ts';
import { Line, Lines } from './Lines.tsx';

export interface RestsOnProps {
  readonly lines: readonly { readonly text: string; readonly to: string; readonly detail: string }[];
  /** A paper that was handed out: said beside, that it stays as it is. */
  readonly paper?: boolean | undefined;
}

export function RestsOn({ lines, paper }: RestsOnProps) {
  if (lines.length === 0) return null;
  return (
    <Lines heading={words.restsHeading}>
      {lines.map(({ text, to, detail }) => (
        <Line key={to} to={to} detail={paper ? `${detail}. ${words.paperStays}` : detail}>
          {text}
        </Line>
      ))}
    </Lines>
  );
}
