/** One sample as one line: whose, where it stands, and below it number, day and tasks. */
import { Line } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import type { Registers } from '#store/hooks.ts';
import { formatDay, formatList } from '#words/quantity.ts';
import { en as words } from '#words/samples.ts';
import { sampleStanding } from './standing.ts';

export interface SampleLineProps {
  readonly sample: SampleRecord;
  readonly registers: Registers;
  readonly box: BoxRecord | undefined;
  readonly today: string;
  readonly zone: string;
}

export function SampleLine({ sample, registers, box, today, zone }: SampleLineProps) {
  const { people, laboratories, sites } = registers;
  const worker =
    sample.sampleKind === 'blank' ? words.blank : (people.byId.get(sample.workerId ?? '')?.name ?? words.unknownWorker);
  const laboratory = box === undefined ? '' : (laboratories.byId.get(box.packed.laboratoryId)?.name ?? '');
  const standing = sampleStanding(sample, {
    box,
    laboratory,
    today,
    zone: sites.byId.get(sample.siteId)?.zone ?? zone,
  });
  const tasks = formatList(sample.taskIds.map((id) => taskById(id)?.en ?? id));
  return (
    <Line
      to={placeOf(sample)}
      detail={
        <>
          <StandingMark standing={standing.mark}>{standing.text}</StandingMark>
          <br />
          {words.detail(sample.sampleNumber, formatDay(sample.workOn, 'en', 'weekday'), tasks)}
        </>
      }
    >
      {worker}
    </Line>
  );
}

/** A blank has no page of its own worn minutes: its result is seen where it was keyed in. */
const placeOf = ({ id }: SampleRecord): string => `/sample/${id}`;
