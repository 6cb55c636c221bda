/** How the pump stands, its minutes and litres, the one thing to do, what else happened, and the story so far. */
import { useLocation } from 'wouter';
import { wallTimeOf } from '#core/calendar.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { BigNumber } from '#parts/BigNumber.tsx';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { RestsOn } from '#parts/RestsOn.tsx';
import { Saved } from '#parts/Saved.tsx';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { restsLines } from '#words/gearLines.ts';
import { en as words } from '#words/sampling.ts';
import { notWritten } from '#words/saving.ts';
import { Before } from './Before.tsx';
import { Finished } from './Finished.tsx';
import { Running } from './Running.tsx';
import { SamplePictures } from './SamplePictures.tsx';
import { Story } from './Story.tsx';
import { type SampleStanding, standingOf } from './standing.ts';
import { plainFact, type TypedDeedKey } from './TypedDeed.tsx';
import type { Sampling } from './useSampling.ts';
import { WhatNow } from './WhatNow.tsx';

/** The tap of the main action, where it is a tap, and its words. */
const taps: Partial<Readonly<Record<SampleStanding, readonly [TypedDeedKey, keyof typeof words.main]>>> = {
  prepared: ['putOn', 'putOn'],
  worn: ['looked', 'look'],
  fault: ['looked', 'lookAgain'],
  notSure: ['looked', 'lookAgain'],
  away: ['backInLead', 'backInLead'],
  off: ['backOn', 'backOn'],
};

export function SamplePage({ sampling }: { readonly sampling: Sampling }) {
  const { sample, place, worker, pump, by } = sampling;
  const standing = standingOf(sample);
  const writing = useWrite();
  const [, go] = useLocation();
  const tap = async (deed: TypedDeedKey) => {
    const fact = plainFact(deed, sample.id, { happened: happenedNow(place.zone), by });
    const written = await writing.run([fact]);
    if (written?.kind === 'written' && deed === 'stop') go(`/sample/${sample.id}/after`);
  };
  const errors = writing.outcome === null ? [] : notWritten(writing.outcome);
  const main = taps[standing];
  const savedAt = writing.savedAt === null ? undefined : wallTimeOf(writing.savedAt, place.zone).time;
  const heading = standing === 'blank' ? words.heading.blank(sample.sampleNumber) : words.heading[standing](worker);
  return (
    <Page
      heading={heading}
      over={standing === 'blank' ? place.site.name : words.over(place.site.name, pump)}
      back={`/shift/${sample.shiftId}`}
      aside={
        <>
          <Story sampling={sampling} />
          <SamplePictures sampling={sampling} />
        </>
      }
      action={
        main === undefined ? (
          <Done sampling={sampling} standing={standing} />
        ) : (
          <>
            <MainAction busy={writing.state === 'saving'} onClick={() => void tap(main[0])}>
              {words.main[main[1]]}
            </MainAction>
            <QuietAction to={`/sample/${sample.id}?do=${main[0]}`}>{words.otherTime}</QuietAction>
          </>
        )
      }
    >
      <ErrorSummary errors={errors} />
      {(standing === 'prepared' || standing === 'blank') && (
        <BigNumber label={words.number} digits={sample.sampleNumber} />
      )}
      {standing === 'prepared' && <Before sampling={sampling} />}
      {sample.putOn !== null && standing !== 'stopped' && standing !== 'void' && <Running sampling={sampling} />}
      {(standing === 'stopped' || (standing === 'void' && sample.sampleKind === 'air')) && (
        <Finished sampling={sampling} />
      )}
      <RestsOn lines={restsLines(gearDoubtsOfPaper({ kind: 'sample', id: sample.id }, sampling.book))} />
      <Saved state={writing.state} at={savedAt} />
      <WhatNow sampling={sampling} standing={standing} onStop={() => void tap('stop')} />
    </Page>
  );
}

/** Nothing left to tap on this pump: the way on. */
function Done({ sampling, standing }: { readonly sampling: Sampling; readonly standing: SampleStanding }) {
  const { sample } = sampling;
  const shift = `/shift/${sample.shiftId}`;
  if (standing !== 'stopped') return <MainAction to={shift}>{words.main.toShift}</MainAction>;
  const closed = sample.sealed?.lockedIn != null;
  return closed ? (
    <>
      <MainAction to={`/day/${sample.workdayId ?? ''}`}>{words.main.result}</MainAction>
      <QuietAction to={`/sample/${sample.id}/after`}>{words.main.after}</QuietAction>
    </>
  ) : (
    <MainAction to={`/sample/${sample.id}/after`}>{words.main.after}</MainAction>
  );
}
