/** A site's day. Its id is the site and the day, so that two devices mean the same one, whoever opened it first. */
import type { ShiftRecord } from './book.ts';
import { type FoldInput, firstOf, ofKind, withConflicts } from './foldCase.ts';
import { changesOf } from './revised.ts';
import { standingStatement } from './statements.ts';

/** Null until some device has opened it. */
export function foldShift({ base, facts, settlements }: FoldInput): ShiftRecord | null {
  const opened = firstOf(facts, 'shiftOpened.v1');
  if (!opened) return null;
  const conditions = standingStatement({
    facts: ofKind(facts, 'conditionsNoted.v1'),
    path: '/conditions',
    valueIn: ({ body }) => body,
    careful: null,
    settlements,
    strikes: base.strikes,
  });
  const changes = changesOf({ base, facts, settlements });
  return {
    ...withConflicts(base, [conditions.conflict, changes.conflict]),
    siteId: opened.body.siteId,
    workOn: opened.body.workOn,
    openedAt: opened.happened.at,
    conditions: conditions.fact?.body ?? null,
    changes: changes.value,
  };
}
