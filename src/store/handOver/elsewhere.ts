/**
 * Up to where other devices are known to hold each writer, from the headers of files that came here. What they hold and this device does
 * not is missing here, also where nothing later of that writer came: the end of a file that was cut or left, a file made for a third
 * device, an entry that no journal takes. Kept beside the book in the meta row `elsewhere`; `takeIns` counts what changed it.
 */
import { addMinutes } from '#core/calendar.ts';
import type { MissingEntries } from '#records/book.ts';
import { sequenceOf, writerOf } from '#records/chain.ts';
import type { BookHeader } from '#records/fileFormat.ts';
import type { Stretch } from '#records/stretches.ts';
import type { BookDatabase } from '../database.ts';
import { now } from '../device.ts';

export interface HeldElsewhere {
  readonly writer: string;
  readonly toCount: number;
  /** Calendar day up to which its entries may bear on something: none was written after it was told of. */
  readonly untilOn: string;
}

const idShape = /^[0-9a-hjkmnp-tv-z]{12}\.\d{8}$/;
/** Decided here: as many writers as one header may name. */
const mostWriters = 1000;
/** The zone that is furthest ahead: there it may be tomorrow already. */
const furthestAheadMin = 14 * 60;
const dayAnywhere = (at: string): string => addMinutes(at, furthestAheadMin).slice(0, 10);

export const elsewhereIn = async (db: BookDatabase): Promise<readonly HeldElsewhere[]> =>
  ((await db.meta.get('elsewhere'))?.value as readonly HeldElsewhere[] | undefined) ?? [];

/** How many files changed what is known here, and which was the last: a preview made before another one is no longer true. */
export interface TakeIns {
  readonly count: number;
  readonly of: string;
}

export const takeInsIn = async (db: BookDatabase): Promise<TakeIns> =>
  ((await db.meta.get('takeIns'))?.value as TakeIns | undefined) ?? { count: 0, of: '' };

function highest(all: Iterable<HeldElsewhere>): readonly HeldElsewhere[] {
  const found = new Map<string, HeldElsewhere>();
  for (const one of all) {
    const before = found.get(one.writer);
    if (before === undefined || before.toCount < one.toCount) found.set(one.writer, one);
  }
  return [...found.values()];
}

/** What a header says, with what was known before. `lastAt`: of the latest thing that happened by the file; clocks may be years ahead. */
export function withTold(
  known: readonly HeldElsewhere[],
  { heads, holds = [], from }: BookHeader,
  lastAt: string | null,
): readonly HeldElsewhere[] {
  const moments = [now(), ...(from === undefined ? [] : [from.madeAt]), ...(lastAt === null ? [] : [lastAt])];
  const untilOn = moments.map(dayAnywhere).sort().at(-1) ?? '';
  const told = [...heads, ...holds]
    .filter(({ factId }) => idShape.test(factId) && sequenceOf(factId) > 0)
    .map(({ factId }) => ({ writer: writerOf(factId), toCount: sequenceOf(factId), untilOn }));
  return highest([...known, ...told]).slice(0, mostWriters);
}

/** What lies beyond the last entry held of each writer. */
export function beyondHeld(
  elsewhere: readonly HeldElsewhere[],
  stretches: readonly Stretch[],
): readonly MissingEntries[] {
  const heldTo = new Map<string, number>();
  for (const { writer, toCount } of stretches) heldTo.set(writer, Math.max(toCount, heldTo.get(writer) ?? 0));
  return elsewhere.flatMap(({ writer, toCount, untilOn }) => {
    const held = heldTo.get(writer) ?? 0;
    return toCount > held ? [{ writer, fromCount: held + 1, toCount, untilOn }] : [];
  });
}

export interface Told {
  readonly elsewhere: readonly HeldElsewhere[];
  /** Tells the file. */
  readonly of: string;
  /** When it was looked into. */
  readonly takeIns: TakeIns;
}

/** Another file came in since this one was looked into. Itself may have: of a lost connection nobody knows what arrived. */
export async function isOutdated(db: BookDatabase, { of, takeIns }: Told): Promise<boolean> {
  const last = await takeInsIn(db);
  return last.count !== takeIns.count && !(last.count === takeIns.count + 1 && last.of === of);
}

/** Inside the caller's transaction over meta. */
export async function noteElsewhere(db: BookDatabase, { elsewhere, of }: Told): Promise<void> {
  const last = await takeInsIn(db);
  await db.meta.bulkPut([
    { key: 'elsewhere', value: elsewhere },
    { key: 'takeIns', value: last.of === of ? last : { count: last.count + 1, of } },
  ]);
}
