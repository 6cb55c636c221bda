/**
 * The supervisor after leaving the work area, washed: stopped, flow after, regular day or not, sealed, locked in. Each part saves by
 * itself; the page shows what is still open and leads to the next of it.
 */
import { checksOfSample } from '#findings/checks.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { en as words } from '#words/after.ts';
import { en as sampling } from '#words/sampling.ts';
import { AfterFlow } from './AfterFlow.tsx';
import { AfterRegular } from './AfterRegular.tsx';
import { AfterSeal } from './AfterSeal.tsx';
import { AfterStopped } from './AfterStopped.tsx';
import { type Sampling, useSampling } from './useSampling.ts';

export function After({ sampleId = '' }: { readonly sampleId?: string }) {
  const found = useSampling(sampleId);
  if (found === undefined) return null;
  if (found === null || found.sample.sampleKind === 'blank')
    return (
      <Page heading={sampling.noSampleHeading} back="/">
        <p>{sampling.noSample}</p>
      </Page>
    );
  return <Afterwards sampling={found} />;
}

function Afterwards({ sampling: found }: { readonly sampling: Sampling }) {
  const { sample, book, worker, place, pump } = found;
  const hasAfter = checksOfSample(sample, book).after !== null;
  const regular = book.workdays.get(sample.workdayId ?? '')?.regular ?? null;
  const open = [sample.stopped, hasAfter || null, regular, sample.sealed, sample.sealed?.lockedIn ?? null];
  const openCount = open.filter((each) => each === null).length;
  const shift = `/shift/${sample.shiftId}`;
  const needsFlow = sample.stopped !== null && !hasAfter;
  return (
    <Page
      heading={words.heading(worker)}
      over={sampling.over(place.site.name, pump)}
      back={`/sample/${sample.id}`}
      aside={
        sample.stopped === null ? undefined : (
          <>
            <AfterSeal sampling={found} />
            <AfterRegular sampling={found} />
          </>
        )
      }
      action={
        needsFlow ? (
          <>
            <MainAction to={`${shift}/flow?pump=${sample.pumpId ?? ''}&purpose=after&sample=${sample.id}`}>
              {words.main.flow}
            </MainAction>
            <QuietAction to={shift}>{words.main.toShift}</QuietAction>
          </>
        ) : sample.stopped === null ? undefined : (
          <MainAction to={shift}>{words.main.toShift}</MainAction>
        )
      }
    >
      <p role="status">{openCount === 0 ? words.allDone : words.open(openCount)}</p>
      <AfterStopped sampling={found} />
      {sample.stopped !== null && <AfterFlow sampling={found} />}
    </Page>
  );
}
