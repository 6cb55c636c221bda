/**
 * The supervisor outside the work area, clean hands, perhaps in the sun: one worker's pump. Every tap that fixes a moment is written down
 * at once; what else happened is one tap further. Also the page on which a sample is found years later, with its whole story.
 */
import { useSearch } from 'wouter';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { en as words } from '#words/sampling.ts';
import { Doing } from './Doing.tsx';
import { SamplePage } from './SamplePage.tsx';
import { useSampling } from './useSampling.ts';

export function Sample({ sampleId = '' }: { readonly sampleId?: string }) {
  const sampling = useSampling(sampleId);
  const doing = new URLSearchParams(useSearch()).get('do');
  if (sampling === undefined) return null;
  if (sampling === null)
    return (
      <Page heading={words.noSampleHeading} back="/" action={<MainAction to="/">{words.toToday}</MainAction>}>
        <p>{words.noSample}</p>
      </Page>
    );
  return doing === null ? <SamplePage sampling={sampling} /> : <Doing sampling={sampling} deed={doing} />;
}
