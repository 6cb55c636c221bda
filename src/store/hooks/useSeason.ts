/** Plans, days made ready, and what was spent: each by index, without the whole book. */
import { useLiveQuery } from 'dexie-react-hooks';
import { useSyncExternalStore } from 'react';
import type { DayPlanRecord, PlanRecord, SpendingRecord } from '#records/book.ts';
import type { BookDatabase } from '../database.ts';
import { dayPlansOf } from '../lookup.ts';
import { readTwice } from '../reopening.ts';
import { onBookState, openSession } from '../session.ts';

async function dayPlanOf(db: BookDatabase, shiftId: string): Promise<DayPlanRecord | null> {
  const row = await db.records.get(`dayPlan:${shiftId}`);
  return (row?.record as DayPlanRecord | undefined) ?? null;
}

/** What is made ready for a site's day; null where nothing is, `undefined` while the answer is on its way. */
export function useDayPlan(shiftId: string): DayPlanRecord | null | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(
    () => (session === null ? null : readTwice(session.db, (db) => dayPlanOf(db, shiftId))),
    [session, shiftId],
  );
}

async function preparedFor(db: BookDatabase, day: string): Promise<readonly DayPlanRecord[]> {
  const found = dayPlansOf(await db.records.where('links').equals(`preparedFor:${day}`).toArray());
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Every site's day that is made ready on this calendar day, by site. */
export function useDayPlansOn(day: string): readonly DayPlanRecord[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(
    () => (session === null ? [] : readTwice(session.db, (db) => preparedFor(db, day))),
    [session, day],
  );
}

/** By when it was first said, or spent. */
async function allOf<R>(db: BookDatabase, kind: 'plan' | 'spending'): Promise<readonly R[]> {
  const rows = await db.records.where('[kind+sort]').between([kind, ''], [kind, '\uffff']).toArray();
  return rows.map(({ record }) => record as unknown as R);
}

/** Oldest first, plans given up among them. */
export function usePlans(): readonly PlanRecord[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(
    () => (session === null ? [] : readTwice(session.db, (db) => allOf<PlanRecord>(db, 'plan'))),
    [session],
  );
}

/** Oldest first, struck ones among them. */
export function useSpendings(): readonly SpendingRecord[] | undefined {
  const session = useSyncExternalStore(onBookState, openSession);
  return useLiveQuery(
    () => (session === null ? [] : readTwice(session.db, (db) => allOf<SpendingRecord>(db, 'spending'))),
    [session],
  );
}
