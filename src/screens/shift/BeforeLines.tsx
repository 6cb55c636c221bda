/** Flow before, and who is prepared: the lines of the morning. */
import { checksOfSample } from '#findings/checks.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import { formatList } from '#words/quantity.ts';
import { en as words } from '#words/shift.ts';
import { airOf } from './daySamples.ts';
import { flowPath } from './nextStep.ts';
import type { ShiftDay } from './useShift.ts';
import { WhoLines } from './WhoLines.tsx';

export function BeforeLines({ day }: { readonly day: ShiftDay }) {
  const { book, place } = day;
  const shift = `/shift/${place.shift.id}`;
  const waiting = airOf(day).filter(({ putOn }) => putOn === null);
  return (
    <>
      <WhoLines day={day} />
      <Lines heading={words.flow.heading}>
        <FlowLines day={day} />
      </Lines>
      <Lines heading={words.before.heading}>
        {waiting.map((sample) => (
          <Line
            key={sample.id}
            to={sample.fitting === null ? `/worker/${sample.id}` : `/sample/${sample.id}`}
            detail={words.before.preparedDetail(sample.fitting !== null)}
            end={<StandingMark standing="due" />}
          >
            {words.before.prepared(book.people.get(sample.workerId ?? '')?.name ?? '', sample.sampleNumber)}
          </Line>
        ))}
        <Line to={`${shift}/fit`} detail={airOf(day).length === 0 ? words.before.none : undefined}>
          {words.before.more}
        </Line>
      </Lines>
    </>
  );
}

function FlowLines({ day }: { readonly day: ShiftDay }) {
  const { book, place } = day;
  const serial = (pumpId: string | null): string => book.pumps.get(pumpId ?? '')?.serial ?? '';
  const checks = [...book.flowChecks.values()].filter(
    ({ shiftId, purpose, inLine }) => shiftId === place.shift.id && purpose !== 'after' && inLine !== 'nothing',
  );
  const pumps = [...new Set(checks.map(({ pumpId }) => serial(pumpId)))].sort((a, b) =>
    a.localeCompare(b, 'en', { numeric: true }),
  );
  const missing = airOf(day).filter((sample) => checksOfSample(sample, book).before === null);
  return (
    <>
      {missing.map((sample) => (
        <Line
          key={sample.id}
          to={flowPath(place.shift.id, sample.pumpId, 'before', sample.id)}
          end={<StandingMark standing="due" />}
        >
          {words.flow.open(serial(sample.pumpId))}
        </Line>
      ))}
      <Line to={`/shift/${place.shift.id}/flow`} detail={pumps.length === 0 ? words.flow.noneDetail : words.flow.more}>
        {pumps.length === 0 ? words.flow.none : words.flow.pumps(formatList(pumps))}
      </Line>
    </>
  );
}
