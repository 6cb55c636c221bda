/**
 * The supervisor's first look, phone in hand, before the work area or after it. What is due stands on top, one sentence a worker, and the
 * first of it is the main action. Without a shift today, opening one is. Afterwards the next step is one tap away.
 */
import { lazy, Suspense, useEffect, useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { findDue } from '#findings/due.ts';
import { unsentShifts } from '#findings/shiftEnded.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book, BoxRecord } from '#records/book.ts';
import type { BookMeta } from '#store/bookMeta.ts';
import { deviceZone } from '#store/device.ts';
import { holderIsDue } from '#store/holder.ts';
import { type Keeping, useKeeping } from '#store/hooks/useKeeping.ts';
import { useBookMeta, useBoxes, useNow, useRunSheet } from '#store/hooks.ts';
import type { RunSheet } from '#store/runSheet.ts';
import { formatDay } from '#words/quantity.ts';
import { en as words } from '#words/today.ts';
import { type DueLine, dueLine } from './dueLine.ts';
import { Earlier } from './Earlier.tsx';
import { ShiftsToday } from './ShiftsToday.tsx';

/** A form is not in the way of what is due: it comes when a shift is to be opened. */
const Beside = lazy(async () => ({ default: (await import('./Beside.tsx')).Beside }));
const ToDo = lazy(async () => ({ default: (await import('./ToDo.tsx')).ToDo }));
const OpenShift = lazy(async () => ({ default: (await import('./OpenShift.tsx')).OpenShift }));

const renewEveryMs = 20_000;

export function Today() {
  const now = useNow(renewEveryMs);
  const today = dayOf(now, deviceZone());
  const sheet = useRunSheet(today);
  const meta = useBookMeta();
  const keeping = useKeeping();
  const [boxes, setBoxes] = useState<readonly BoxRecord[] | undefined>(undefined);
  const [opening, setOpening] = useState(false);
  if (sheet === undefined || meta === undefined) return <Page heading={formatDay(today, 'en', 'weekday')} />;

  const shifts = [...sheet.book.shifts.values()].filter((shift) => shift.workOn >= today);
  if (shifts.length === 0 || opening)
    return (
      <Suspense fallback={<Page heading={formatDay(today, 'en', 'weekday')} />}>
        <OpenShift
          today={today}
          taken={shifts.map((shift) => shift.siteId)}
          before={
            <>
              <WhoHolds meta={meta} />
              <Waiting keeping={keeping} />
              <ReadBoxes onBoxes={setBoxes} />
            </>
          }
          aside={
            <>
              <Earlier sheet={sheet} boxes={boxes ?? []} today={today} now={now} />
              <AskedNext today={today} meta={meta} />
            </>
          }
          onCancel={shifts.length === 0 ? undefined : () => setOpening(false)}
        />
      </Suspense>
    );
  const ids = shifts.map(({ id }) => id);
  const unsent = keeping !== undefined && unsentShifts(sheet.book, ids, keeping.lastSentAt).length > 0;
  const lines = [...dueLines(sheet, boxes, now, meta), ...(unsent ? [sendLine] : [])];
  const first = lines[0];
  const site = shifts.length === 1 && shifts[0] ? sheet.book.sites.get(shifts[0].siteId)?.name : undefined;
  return (
    <Page
      heading={words.heading(formatDay(today, 'en', 'weekday'), site ?? null)}
      over={meta.book?.firmName}
      action={
        first ? (
          <MainAction to={first.to}>{first.action}</MainAction>
        ) : (
          <MainAction to={`/shift/${shifts[0]?.id}`}>{words.openDayPage}</MainAction>
        )
      }
      aside={
        <>
          <Earlier sheet={sheet} boxes={boxes ?? []} today={today} now={now} />
          <AskedNext today={today} meta={meta} />
        </>
      }
    >
      <WhoHolds meta={meta} />
      <Waiting keeping={keeping} />
      <ReadBoxes onBoxes={setBoxes} />
      <Lines heading={words.whatIsDue} whenEmpty={words.nothingDue}>
        {lines.map((line) => (
          <Line key={line.key} to={line.to} end={timeOf(line)}>
            {line.sentence}
          </Line>
        ))}
      </Lines>
      <ShiftsToday shifts={shifts} book={sheet.book} />
      <div>
        <QuietAction onClick={() => setOpening(true)}>{words.openShift.another}</QuietAction>
      </div>
    </Page>
  );
}

const sendLine: DueLine = {
  key: 'sendToday',
  sentence: words.sendToday,
  action: words.sendTodayAction,
  to: '/send?today=1',
  time: null,
  overdue: false,
};

/** Not in the way of what is due: it comes when it is loaded. */
function Waiting({ keeping }: { readonly keeping: Keeping | undefined }) {
  if (keeping === undefined) return null;
  return (
    <Suspense fallback={null}>
      <Beside mark={keeping.takeIn} />
    </Suspense>
  );
}

/** What the rule asks next: fetched once the page stands, counted only while no pump runs. */
function AskedNext({ today, meta }: { readonly today: string; readonly meta: BookMeta }) {
  return (
    <Suspense fallback={null}>
      <ToDo today={today} isRunning={meta.runningCount > 0} />
    </Suspense>
  );
}

/** Boxes are read once the page is there: what is due on the workers does not wait for them. Shows nothing itself. */
function ReadBoxes({ onBoxes }: { readonly onBoxes: (boxes: readonly BoxRecord[]) => void }) {
  const boxes = useBoxes();
  useEffect(() => {
    if (boxes !== undefined) onBoxes(boxes);
  }, [boxes, onBoxes]);
  return null;
}

const timeOf = ({ time, overdue }: DueLine): string | undefined =>
  time === null ? undefined : overdue ? words.dueSince(time) : words.dueAt(time);

/** Whether cassettes wait for the laboratory is only known once the boxes are there. */
function dueLines(sheet: RunSheet, boxes: readonly BoxRecord[] | undefined, now: string, meta: BookMeta): DueLine[] {
  const book: Book = { ...sheet.book, boxes: new Map((boxes ?? []).map((box) => [box.id, box])) };
  return findDue(book, now, { lastBackupAt: meta.lastBackupAt, persisted: meta.persisted })
    .filter(({ key }) => boxes !== undefined || key !== 'sendToLaboratory')
    .map((due) => dueLine(due, book));
}

/** Asked again after twelve hours; a notice, never a wall. */
function WhoHolds({ meta }: { readonly meta: BookMeta }) {
  const { holderPersonId: personId, holderAskedAt: askedAt } = meta;
  if (!holderIsDue(personId === null || askedAt === null ? null : { personId, askedAt })) return null;
  return (
    <Notice actions={<QuietAction to="/who">{words.whoAction}</QuietAction>}>
      {personId === null ? words.whoNever : words.whoDue}
    </Notice>
  );
}
