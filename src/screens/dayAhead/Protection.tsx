/** Least protection by the prediction and by what is presumed: the higher of both, and never a leave to go without. */
import type { DayAhead } from '#findings/season/dayAhead.ts';
import { Figure } from '#parts/Figure.tsx';
import { WorkingView } from '#parts/WorkingView.tsx';
import { en as words } from '#words/dayAhead.ts';

type Advice = DayAhead['advice'];

function sentenceOf({ beyond, leastApf, floorApf }: Advice): string {
  if (beyond) return words.beyond;
  if (leastApf !== null) return words.apf(leastApf);
  return floorApf === null ? words.apfNone : words.apfAtLeast(floorApf);
}

/** A sentence that ends as one. */
const ended = (text: string): string => (text.endsWith('.') ? text : `${text}.`);

/** The factor, or the one that is known to be too little; a dash where no factor can be named. */
const figureOf = ({ beyond, leastApf, floorApf }: Advice): string =>
  beyond ? '–' : String(leastApf ?? floorApf ?? '–');

export function Protection({ advice }: { readonly advice: Advice }) {
  const { byDay, byTask, presumedWorking, unbounded } = advice;
  const workings = [byDay, byTask, presumedWorking].filter((each) => each !== null);
  return (
    <Figure
      label={words.protection}
      value={figureOf(advice)}
      note={[sentenceOf(advice), ...(unbounded ? [words.apfOpen] : []), words.presumptionStands].map(ended).join(' ')}
    >
      {workings.length > 0 &&
        workings.map((working, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: by the day, by the task, by what is presumed, always in this order
          <WorkingView key={i} working={working} />
        ))}
    </Figure>
  );
}
