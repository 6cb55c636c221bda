/** The samples that a pump wore, newest first, each with the way to its page. */
import { useState } from 'react';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { PumpRecord } from '#records/book.ts';
import { en as doubtWords } from '#words/gearDoubt.ts';
import { en } from '#words/gearScreen.ts';
import { formatDay } from '#words/quantity.ts';
import type { GearHere } from './gearHere.ts';

const words = en.worn;
const shownAtFirst = 10;

export function Worn({ here: { record, book } }: { readonly here: GearHere<PumpRecord> }) {
  const [limit, setLimit] = useState(shownAtFirst);
  const worn = [...book.samples.values()]
    .filter(({ pumpId, putOn }) => pumpId === record.id && putOn !== null)
    .sort((a, b) => (a.workOn + a.sampleNumber < b.workOn + b.sampleNumber ? 1 : -1));
  return (
    <section>
      <Lines heading={words.heading} whenEmpty={words.none}>
        {worn.slice(0, limit).map(({ id, sampleNumber, workOn, workerId }) => (
          <Line key={id} to={`/sample/${id}`} detail={formatDay(workOn, 'en', 'weekday')}>
            {words.line(sampleNumber, book.people.get(workerId ?? '')?.name ?? en.nobody)}
          </Line>
        ))}
      </Lines>
      {worn.length > limit && (
        <QuietAction onClick={() => setLimit(worn.length)}>{doubtWords.page.more(worn.length - limit)}</QuietAction>
      )}
    </section>
  );
}
