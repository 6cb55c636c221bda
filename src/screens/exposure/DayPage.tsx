/** The day as it stands: figure, standing, minutes, what was said of it. On a wide page the workings stand beside the figures. */
import type { ReactNode } from 'react';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import { en as words } from '#words/exposure.ts';
import { restsLines } from '#words/gearLines.ts';
import { Cautions } from './Cautions.tsx';
import type { Part } from './Day.tsx';
import { DayFigures, DayWorkings, ShiftFigures } from './DayFigures.tsx';
import type { DayOn } from './dayOn.ts';
import { Minutes } from './Minutes.tsx';
import { Reasons } from './Reasons.tsx';
import { Said } from './Said.tsx';
import { SamplesOfDay } from './SamplesOfDay.tsx';
import { Standings } from './Standings.tsx';
import { StandingsBeside } from './StandingsBeside.tsx';
import { useWide } from './useWide.ts';

export interface DayPageProps {
  readonly day: DayOn;
  readonly heading: string;
  readonly over: string;
  readonly onPart: (part: Part) => void;
}

export function DayPage({ day, heading, over, onPart }: DayPageProps) {
  const { finding } = day;
  const wide = useWide();
  return (
    <Page
      heading={heading}
      over={over}
      back="/samples"
      action={nextAction(day, onPart)}
      aside={
        <>
          {wide && <DayWorkings finding={finding} />}
          <Cautions finding={finding} />
        </>
      }
    >
      <DayFigures finding={finding} withWorkings={!wide} />
      <Standings finding={finding} />
      <ShiftFigures finding={finding} withWorkings={!wide} />
      <Reasons finding={finding} />
      <RestsOn lines={restsLines(day.gearDoubts)} />
      <StandingsBeside day={day} />
      <Minutes day={day} onSay={onPart} />
      <Said day={day} onPart={onPart} />
      <SamplesOfDay day={day} />
      <Lines>
        <Line to={`/notice/${finding.workdayId}`}>{words.notice}</Line>
        <Line to={`/exposure-record/${finding.workdayId}`}>{words.exposureRecord}</Line>
        <Line to={`/person/${finding.workerId}`}>{words.worker}</Line>
        <Line to={`/story/${encodeURIComponent(`workday:${finding.workdayId}`)}`}>{words.story}</Line>
      </Lines>
    </Page>
  );
}

/** The first thing that is still open of the day, in the order in which it helps most. */
function nextAction({ finding, record }: DayOn, onPart: (part: Part) => void): ReactNode {
  const { next } = words;
  const unknown = finding.segments.find(({ as }) => as === 'unknown');
  const open = (text: string, part: Part): ReactNode => <MainAction onClick={() => onPart(part)}>{text}</MainAction>;
  if (!record?.pieces) return open(next.hours, 'hours');
  if (!record.otherWork) return open(next.other, 'other');
  if (unknown && !wasSaidUnknown(unknown.because.length)) return open(next.unknown, unknown);
  if (finding.regular === null) return open(next.regular, 'regular');
  if (finding.awaitedMin > 0) return <MainAction to="/results">{next.results}</MainAction>;
  return <MainAction to="/">{next.done}</MainAction>;
}

/** Somebody said that nobody knows: then it is not asked again at the foot. */
const wasSaidUnknown = (factsCount: number): boolean => factsCount > 0;
