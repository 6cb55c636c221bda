/** The samples that a pump wore, newest first, each with the way to its page. */
import { Line } from '#parts/Lines.tsx';
import type { PumpRecord } from '#records/book.ts';
import { en } from '#words/gearScreen.ts';
import { formatDay } from '#words/quantity.ts';
import type { GearHere } from './gearHere.ts';
import { LongList } from './LongList.tsx';

const words = en.worn;

export function Worn({ here: { record, book } }: { readonly here: GearHere<PumpRecord> }) {
  const worn = [...book.samples.values()]
    .filter(({ pumpId, putOn }) => pumpId === record.id && putOn !== null)
    .sort((a, b) => (a.workOn + a.sampleNumber < b.workOn + b.sampleNumber ? 1 : -1));
  return (
    <LongList heading={words.heading} whenEmpty={words.none} shownCount={8}>
      {worn.map(({ id, sampleNumber, workOn, workerId }) => (
        <Line key={id} to={`/sample/${id}`} detail={formatDay(workOn, 'en', 'weekday')}>
          {words.line(sampleNumber, book.people.get(workerId ?? '')?.name ?? en.nobody)}
        </Line>
      ))}
    </LongList>
  );
}
