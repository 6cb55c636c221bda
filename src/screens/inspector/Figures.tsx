/** Measured days of the site, newest first, with figures, samples and gear found bad; and what the job rests on. */
import type { InspectorMeasurement, InspectorView } from '#findings/duties/list/inspector.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { restsText } from '#words/gearLines.ts';
import { en as words } from '#words/inspector.ts';
import { formatDay, formatEstimate } from '#words/quantity.ts';

const day = (on: string): string => formatDay(on, 'en', 'weekday');

export function Figures({ view, book }: { readonly view: InspectorView; readonly book: Book }) {
  const { set } = view.limits;
  const against = [set.actionLevel.value, set.pel.value];
  const figure = (estimate: InspectorMeasurement['twa8UgPerM3']): string =>
    estimate === null ? words.noFigure : formatEstimate(estimate, 'µg/m³', { against });
  const name = (id: string | null): string => view.people.find((one) => one.id === id)?.name ?? words.someWorker;
  return (
    <>
      <Lines heading={words.measured} whenEmpty={words.measuredNone}>
        {view.measurements.map((one) => (
          <Line key={one.id} end={figure(one.twa8UgPerM3)} detail={detailOf(one, book)}>
            {words.measurement(name(one.workerId), day(one.workOn))}
          </Line>
        ))}
      </Lines>
      {view.relied.length > 0 && (
        <Lines heading={words.relied}>
          {view.relied.map(({ workOn, twa8UgPerM3 }) => (
            <Line key={`${workOn} ${JSON.stringify(twa8UgPerM3)}`} end={figure(twa8UgPerM3)}>
              {words.reliedLine(day(workOn))}
            </Line>
          ))}
        </Lines>
      )}
    </>
  );
}

const detailOf = ({ id, band, from, resultOwed, samples }: InspectorMeasurement, book: Book): string =>
  [
    words.band[band],
    words.reported[from],
    resultOwed ? words.owed : '',
    ...samples.map(({ sampleNumber, quality }) => words.sample(sampleNumber, quality)),
    restsText(gearDoubtsOfPaper({ kind: 'measurement', id }, book)),
  ]
    .filter((part) => part !== '')
    .join('; ');
