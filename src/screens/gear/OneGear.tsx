/**
 * One pump, flow meter or lot, looked up or held in the hand: how it stands, what is written of it, what was found bad of it. The address
 * says which of its pages is open: its own, a form, or what rests on it.
 */
import { useRef } from 'react';
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { LotRecord, MeterRecord, PumpRecord } from '#records/book.ts';
import { deviceZone, newId, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta } from '#store/hooks.ts';
import { en as words } from '#words/gearScreen.ts';
import { CertificateForm } from './CertificateForm.tsx';
import { ChargeForm } from './ChargeForm.tsx';
import { DoubtForm } from './DoubtForm.tsx';
import { DoubtPage } from './DoubtPage.tsx';
import { type GearHere, gearHere } from './gearHere.ts';
import { HeldForm } from './HeldForm.tsx';
import { LotPage } from './LotPage.tsx';
import { MeterPage } from './MeterPage.tsx';
import { PumpPage } from './PumpPage.tsx';

export interface OneGearProps {
  readonly kind?: string;
  readonly id?: string;
}

export function OneGear({ kind = '', id = '' }: OneGearProps) {
  const zone = deviceZone();
  const today = dayOf(now(), zone);
  const found = useFoundInBook(findDutiesInSteps, today);
  const meta = useBookMeta();
  const search = new URLSearchParams(useSearch());
  // Drawn once for a page: what is found bad here has its address before it is written down.
  const doubtId = useRef(newId());
  if (found === undefined || meta === undefined)
    return (
      <Page heading={words.heading} back="/gear">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const here = gearHere(kind, id, {
    book: found.book,
    duties: found.found,
    today,
    zone,
    by: meta.holderPersonId,
  });
  if (here === null)
    return (
      <Page heading={words.goneHeading} back="/gear" action={<MainAction to="/gear">{words.toGear}</MainAction>}>
        <p>{words.gone}</p>
      </Page>
    );
  const asked = search.get('doubt');
  if (asked !== null) return <DoubtPage key={asked} here={here} doubtId={asked} />;
  return <Asked here={here} task={search.get('do')} doubtId={doubtId.current} />;
}

interface AskedProps {
  readonly here: GearHere;
  readonly task: string | null;
  readonly doubtId: string;
}

function Asked({ here, task, doubtId }: AskedProps) {
  const { gear } = here;
  if (task === 'held') return <HeldForm here={here} />;
  if (task === 'found-bad') return <DoubtForm here={here} doubtId={doubtId} />;
  if (task === 'charge' && gear === 'pump') return <ChargeForm here={here} />;
  if (task === 'certificate' && gear === 'meter') return <CertificateForm here={here as GearHere<MeterRecord>} />;
  if (gear === 'pump') return <PumpPage here={here as GearHere<PumpRecord>} />;
  if (gear === 'meter') return <MeterPage here={here as GearHere<MeterRecord>} />;
  return <LotPage here={here as GearHere<LotRecord>} />;
}
