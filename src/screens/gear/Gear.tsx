/**
 * Supervisor the evening before, or office: what is due of pumps, flow meters and lots first, then every one of them in a sentence.
 * Afterwards the one that was looked for is open, or a new one is written down.
 */
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { type GearHeadStanding, gearStanding } from '#findings/gear/gearStanding.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { deviceZone, now } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { disputedIn, gearDue, gearLinePath } from '#words/gearDue.ts';
import { lotDetail, meterDetail, pumpDetail } from '#words/gearLines.ts';
import { type GearKind, gearName, en as words } from '#words/gearScreen.ts';
import styles from './gear.module.css';

export function Gear() {
  const today = dayOf(now(), deviceZone());
  const found = useFoundInBook(findDutiesInSteps, today);
  if (found === undefined)
    return (
      <Page heading={words.heading} back="/">
        <p role="status">{words.looking}</p>
      </Page>
    );
  const standing = gearStanding(found.book, today);
  const { pumps, meters, lots } = standing;
  const due = gearDue(standing, disputedIn(found.book));
  const [first] = due;
  const isEmpty = pumps.length + meters.length + lots.length === 0;
  const numbers = new Map([...pumps, ...meters, ...lots].map(({ id, number }) => [id, number]));
  return (
    <Page
      heading={words.heading}
      back="/"
      action={
        first === undefined ? (
          <MainAction to="/">{words.toToday}</MainAction>
        ) : (
          <MainAction to={gearLinePath(first)}>
            {words.toFirst(gearName(first.gear, numbers.get(first.id) ?? ''))}
          </MainAction>
        )
      }
      aside={
        <div className={styles.registers}>
          <Register gear="pump" rows={pumps} detail={pumpDetail} />
          <Register gear="meter" rows={meters} detail={meterDetail} />
          <Register gear="lot" rows={lots} detail={lotDetail} />
        </div>
      }
    >
      {isEmpty ? (
        <p>{words.empty}</p>
      ) : (
        <Lines heading={words.dueHeading} whenEmpty={words.nothingDue}>
          {due.map((line) => (
            <Line key={line.sentence} to={gearLinePath(line)} detail={line.detail ?? undefined}>
              {line.sentence}
            </Line>
          ))}
        </Lines>
      )}
    </Page>
  );
}

interface RegisterProps<S extends GearHeadStanding> {
  readonly gear: GearKind;
  readonly rows: readonly S[];
  readonly detail: (row: S) => string;
}

function Register<S extends GearHeadStanding>({ gear, rows, detail }: RegisterProps<S>) {
  const { heading, add, none } = words.registers[gear];
  const line = (row: S) => (
    <Line key={row.id} to={`/gear/${gear}/${row.id}`} detail={detail(row)}>
      {row.number}
    </Line>
  );
  const retired = rows.filter((row) => row.retired);
  return (
    <div className={styles.register}>
      <Lines heading={heading} whenEmpty={none}>
        {rows.filter((row) => !row.retired).map(line)}
      </Lines>
      {retired.length > 0 && (
        <details className={styles.wide}>
          <summary className={styles.summary}>{words.retiredOf(words.registers[gear].heading)}</summary>
          <Lines>{retired.map(line)}</Lines>
        </details>
      )}
      <QuietAction to={`/lists?add=${gear}`}>{add}</QuietAction>
    </div>
  );
}
