/**
 * The supervisor at the end of a shift, or the office, with clean hands: one file for the other device. It is made as the page opens, so
 * that the tap only hands it out. Afterwards it is on its way, and the same choice stands ready for the next one.
 */
import { useSearch } from 'wouter';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { deliver, type WayOut, waysOut } from '#store/handOver/delivery.ts';
import type { Partner } from '#store/handOver/handOver.ts';
import { hasLeft, useHandOver } from '#store/hooks/useHandOver.ts';
import { type Keeping, useKeeping } from '#store/hooks/useKeeping.ts';
import { useDeviceName, usePartners } from '#store/hooks/usePartners.ts';
import { useBookMeta, useBookState } from '#store/hooks.ts';
import { keepSendChoice } from '#store/sending.ts';
import { en as words } from '#words/handOver.ts';
import { DeviceName } from './DeviceName.tsx';
import { FileStands } from './FileStands.tsx';
import { NoBook } from './NoBook.tsx';
import { OtherWays } from './OtherWays.tsx';
import { PartnerField } from './PartnerField.tsx';
import { SealFields } from './SealFields.tsx';
import { kept, useSendChoice } from './useSendChoice.ts';

export function Send() {
  const state = useBookState();
  const keeping = useKeeping();
  const partners = usePartners();
  const today = new URLSearchParams(useSearch()).has('today');
  const heading = today ? words.headingToday : words.heading;
  if (state.kind !== 'open') return <NoBook heading={heading} />;
  if (keeping === undefined || partners === undefined) return <Page heading={heading} back="/keep" />;
  return <SendForm heading={heading} keeping={keeping} partners={partners} bookId={state.bookId} today={today} />;
}

interface SendFormProps {
  readonly heading: string;
  readonly keeping: Keeping;
  readonly partners: readonly Partner[];
  readonly bookId: string;
  readonly today: boolean;
}

function SendForm({ heading, keeping, partners, bookId, today }: SendFormProps) {
  const meta = useBookMeta();
  const deviceName = useDeviceName();
  const { choice, chosen, wish, change } = useSendChoice(partners, keeping.sending);
  const here = useHandOver(bookId, wish);
  const file = here.making.kind === 'made' ? here.making.file : null;
  const ways = file === null ? [] : waysOut(file.blob, file.name);
  const best = ways[0];
  const handOut = async (way?: WayOut) => {
    const delivery = await here.handOut(({ blob, name }) => deliver(blob, name, way));
    if (hasLeft(delivery)) await keepSendChoice(kept(choice, chosen));
  };
  return (
    <Page
      heading={today ? heading : words.headingTo(chosen?.deviceName ?? null)}
      {...(today ? { back: '/', backText: words.backToday } : { back: '/keep', backText: words.backKeep })}
      action={
        <MainAction busy={file === null || here.busy} describedBy="file-stands" onClick={() => void handOut(best)}>
          {best === undefined ? words.ways.notYet : words.ways[best]}
        </MainAction>
      }
      aside={deviceName === undefined ? undefined : <DeviceName name={deviceName} />}
    >
      {meta !== undefined && meta.runningCount > 0 && <Notice>{words.runningNow}</Notice>}
      <div id="file-stands">
        <FileStands here={here} waits={wish === null} best={best} onNextFile={(filesFrom) => change({ filesFrom })} />
      </div>
      {file !== null && <OtherWays file={file} ways={ways.slice(1)} here={here} onWay={(way) => void handOut(way)} />}
      {here.making.kind === 'making' && (
        <div>
          <QuietAction onClick={here.stop}>{words.cancel}</QuietAction>
        </div>
      )}
      <PartnerField partners={partners} choice={choice} chosen={chosen} onChange={change} />
      <SealFields choice={choice} onChange={change} />
    </Page>
  );
}
