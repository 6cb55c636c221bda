/** The device as it stands: what the browser promised, when files left, what is missing here, versions, and a report for problems. */
import { wallTimeOf } from '#core/calendar.ts';
import { Line, Lines, Particulars } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { deviceZone } from '#store/device.ts';
import { type Keeping, useKeeping } from '#store/hooks/useKeeping.ts';
import { useMissingFiles } from '#store/hooks/useMissingFiles.ts';
import { useDeviceName } from '#store/hooks/usePartners.ts';
import { useBookCounts, useBookMeta, useBookState } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/storage.ts';
import { DeviceName } from './DeviceName.tsx';
import styles from './keep.module.css';
import { NoBook } from './NoBook.tsx';
import { PromiseOf } from './PromiseOf.tsx';
import { Report } from './Report.tsx';
import { Unfinished } from './Unfinished.tsx';
import { Versions } from './Versions.tsx';

export function Storage() {
  const state = useBookState();
  const meta = useBookMeta();
  const keeping = useKeeping();
  const deviceName = useDeviceName();
  if (state.kind !== 'open') return <NoBook heading={words.heading} />;
  if (keeping === undefined) return <Page heading={words.heading} back="/keep" backText={words.toKeep} />;
  return (
    <Page
      heading={words.heading}
      back="/keep"
      backText={words.toKeep}
      action={<MainAction to="/wipe">{words.wipe.heading}</MainAction>}
      aside={
        <>
          <Versions running={meta?.runningCount ?? null} />
          <Report />
        </>
      }
    >
      {keeping.takeIn && <Unfinished mark={keeping.takeIn} />}
      <PromiseOf persisted={meta?.persisted ?? null} />
      <section className={styles.section}>
        <h2>{words.copies.heading}</h2>
        <Particulars items={copiesOf(keeping)} />
      </section>
      <Here keeping={keeping} />
      {deviceName !== undefined && <DeviceName name={deviceName} />}
      <p>{words.kept.removing}</p>
    </Page>
  );
}

const whenOf = (at: string | null): string => {
  if (at === null) return words.copies.never;
  const { day, time } = wallTimeOf(at, deviceZone());
  return words.copies.when(formatDay(day), time);
};

const copiesOf = ({ lastSentAt, lastBackupAt, verifiedAt }: Keeping) =>
  [
    [words.copies.lastSent, whenOf(lastSentAt)],
    [words.copies.lastBackup, whenOf(lastBackupAt)],
    [words.copies.verified, whenOf(verifiedAt)],
  ] as const;

function Here({ keeping }: { readonly keeping: Keeping }) {
  const counts = useBookCounts();
  const filesMissing = useMissingFiles();
  const missing = keeping.missing.reduce((sum, { fromCount, toCount }) => sum + toCount - fromCount + 1, 0);
  return (
    <section className={styles.section}>
      <h2>{words.here.heading}</h2>
      <Particulars
        items={[
          [words.here.samples, counts === undefined ? '' : String(counts.sampleCount)],
          [words.here.missing, missing === 0 ? words.here.none : words.here.missingCount(missing)],
          [words.here.files, filesMissing === undefined ? '' : words.here.filesCount(filesMissing)],
        ]}
      />
      {missing > 0 && (
        <Lines>
          <Line to="/settle">{words.here.toSettle}</Line>
        </Lines>
      )}
    </section>
  );
}
