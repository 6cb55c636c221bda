/** The firm's own prices and what was spent: whole cents, so that sums are exact. */
import type { AnyRecord, SpendingRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import type { NewFact } from '../fact.ts';
import { type Ask, needsWhy } from './ask.ts';
import { statedBefore } from './revised.ts';
import { refuseLaterDay } from './roster.ts';

/** Whether an amount has no part of a cent: 0.29 is 28.999999999999996 cents in binary, so the nearest cent is compared. */
export const isWholeCents = (amountUsd: number): boolean => Number(amountUsd.toFixed(2)) === amountUsd;

/** Places of amounts that have parts of a cent. */
export const brokenAmounts = (body: object): readonly string[] =>
  Object.entries(body).flatMap(([name, value]) =>
    name.endsWith('Usd') && typeof value === 'number' && !isWholeCents(value) ? [name] : [],
  );

function refuseBrokenAmounts({ fact, refuse }: Ask): void {
  for (const name of brokenAmounts(fact.body)) refuse('notWholeCents', [`body/${name}`]);
}

export function pricesDecided(ask: Ask<'pricesStated.v1'>): NewFact {
  const { fact, view, refuse } = ask;
  const key = keyOf('book', fact.body.bookId);
  const book: AnyRecord | null = view.record(key);
  if (!book) refuse('recordUnknown', ['body/bookId'], { key });
  refuseBrokenAmounts(ask as Ask);
  return { ...fact, body: { ...fact.body, knew: statedBefore(ask as Ask, book?.factIds ?? []) } };
}

function spent(ask: Ask<'moneySpent.v1'>): void {
  const { fact, view, refuse } = ask;
  const { spendingId, spentOn, siteId, boxId } = fact.body;
  const key = keyOf('spending', spendingId);
  if (view.record(key)) refuse('alreadyInBook', ['body/spendingId'], { key });
  refuseLaterDay(ask as Ask, 'body/spentOn', spentOn);
  refuseBrokenAmounts(ask as Ask);
  const [siteKey, boxKey] = [siteId && keyOf('site', siteId), boxId && keyOf('box', boxId)];
  if (siteKey && !view.record(siteKey)) refuse('recordUnknown', ['body/siteId'], { key: siteKey });
  if (boxKey && !view.record(boxKey)) refuse('recordUnknown', ['body/boxId'], { key: boxKey });
}

export function spendingStruckDecided(ask: Ask<'spendingStruck.v1'>): NewFact {
  const { fact, view, refuse } = ask;
  needsWhy(ask as Ask);
  const key = keyOf('spending', fact.body.spendingId);
  const spending = view.record(key) as SpendingRecord | null;
  if (!spending) refuse('recordUnknown', ['body/spendingId'], { key });
  else if (spending.struck) refuse('alreadyStruck', ['body/spendingId']);
  const knew = (spending?.factIds ?? []).slice(-50);
  return { ...fact, body: { ...fact.body, knew } };
}

export const moneyCases = { 'moneySpent.v1': spent };
