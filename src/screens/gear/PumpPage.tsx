/**
 * A pump in the hand: on the charger with one tap, how its flow changed over the months, which samples it wore. Afterwards the charge is
 * noted, or it is known why this pump stays at home.
 */
import { wallTimeOf } from '#core/calendar.ts';
import { ErrorSummary } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { Saved } from '#parts/Saved.tsx';
import type { PumpRecord } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { newFact } from '#store/newFact.ts';
import { heldOver } from '#words/gearLines.ts';
import { en as words } from '#words/gearScreen.ts';
import { formatDay } from '#words/quantity.ts';
import { notWritten } from '#words/saving.ts';
import { Beside, Ways } from './Beside.tsx';
import { Doubts } from './Doubts.tsx';
import { FlowChange } from './FlowChange.tsx';
import styles from './gear.module.css';
import { type GearHere, pathOf } from './gearHere.ts';
import { Worn } from './Worn.tsx';

export function PumpPage({ here }: { readonly here: GearHere<PumpRecord> }) {
  const { record, zone, by } = here;
  const writing = useWrite();
  const charge = () =>
    writing.run([
      newFact('pumpCharged.v1', { pumpId: record.id, full: true, remark: null }, { happened: happenedNow(zone), by }),
    ]);
  const errors = writing.outcome === null ? [] : notWritten(writing.outcome);
  const savedAt = writing.savedAt === null ? undefined : wallTimeOf(writing.savedAt, zone).time;
  return (
    <Page
      heading={here.title}
      over={heldOver(record.held)}
      back="/gear"
      backText={words.toGear}
      action={
        <>
          <MainAction busy={writing.state === 'saving'} onClick={() => void charge()}>
            {words.charge.now}
          </MainAction>
          <QuietAction to={`${pathOf(here)}?do=charge`}>{words.charge.other}</QuietAction>
        </>
      }
      aside={
        <>
          <FlowChange here={here} />
          <Worn here={here} />
          <Beside here={here} />
        </>
      }
    >
      <ErrorSummary errors={errors} />
      <Doubts here={here} />
      <Charges here={here} />
      <Saved state={writing.state} at={savedAt} />
      <Ways here={here} />
    </Page>
  );
}

/** The newest, and how many there were before it. */
function Charges({ here: { record, zone, book } }: { readonly here: GearHere<PumpRecord> }) {
  const charges = record.charges ?? [];
  const last = charges.at(-1);
  const text = words.charge;
  if (last === undefined) return <p>{text.none}</p>;
  const { day, time } = wallTimeOf(last.at, zone);
  const who = last.by === null ? null : (book.people.get(last.by)?.name ?? null);
  return (
    <div className={styles.section}>
      <p>{text.line(`${formatDay(day, 'en', 'weekday')}, ${time}`, last.full)}</p>
      <p className={styles.quiet}>
        {[who === null ? [] : [text.by(who)], charges.length > 1 ? [text.earlier(charges.length - 1)] : []]
          .flat()
          .join(', ')}
      </p>
    </div>
  );
}
