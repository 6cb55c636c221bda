/** Prices of their day, bills taken off, and the sums of it: in whole cents. */
import { centsOf, usdOf } from '#core/money.ts';
import type { Book, Prices, SpendingRecord } from '#records/book.ts';
import { type Billed, billedOf, countOf } from './moneyBilled.ts';
import {
  type Amount,
  type MissingPrice,
  type MoneyKind,
  type MoneyLine,
  type MoneySum,
  moneyKinds,
} from './moneyFinding.ts';
import { isWithin, type Time, type Unit } from './moneyUnits.ts';

/** The first whose day is not later; null: none, or it does not say this one. */
export function priceOn(prices: readonly Prices[], on: string, price: Unit['price']): number | null {
  const amountUsd = prices.find(({ fromOn }) => fromOn <= on)?.[price] ?? null;
  return amountUsd === null ? null : centsOf(amountUsd);
}

interface Priced extends Amount {
  readonly knownCents: number;
  readonly missing: readonly Unit[];
}

function priced(units: readonly Unit[], prices: readonly Prices[]): Priced {
  let knownCents = 0;
  const missing: Unit[] = [];
  for (const unit of units) {
    const cents = priceOn(prices, unit.on, unit.price);
    if (cents === null) missing.push(unit);
    else knownCents += cents;
  }
  return {
    count: units.length,
    amountUsd: missing.length > 0 ? null : usdOf(knownCents),
    knownCents,
    missing,
  };
}

export interface Ground {
  readonly book: Book;
  readonly time: Time;
  readonly prices: readonly Prices[];
  readonly planned: readonly Unit[];
  readonly due: readonly Unit[];
  /** Not struck, of the job. */
  readonly bills: readonly SpendingRecord[];
  /** What takes off what is to come. */
  readonly billed: Billed;
}

interface Line {
  readonly line: MoneyLine;
  readonly planned: Priced;
  readonly toCome: Priced;
}

function lineOf(of: MoneyKind, ground: Ground): Line {
  const { book, time, prices } = ground;
  const bills = ground.bills.filter(({ spentFor }) => spentFor === of);
  const billed = billedOf(of, ground.billed);
  const due = ground.due.filter((unit) => unit.of === of).sort((a, b) => a.on.localeCompare(b.on));
  const planned = priced(
    ground.planned.filter((unit) => unit.of === of),
    prices,
  );
  // the oldest are billed first
  const toCome = priced(due.slice(Math.min(billed.count, due.length)), prices);
  const paid = bills.filter(({ spentOn }) => isWithin(spentOn, time));
  const spent = {
    count: paid.reduce((sum, bill) => sum + (countOf(bill, book) ?? 0), 0),
    amountUsd: usdOf(paid.reduce((sum, { amountUsd }) => sum + centsOf(amountUsd), 0)),
    entriesCount: paid.length,
  };
  const billsWithoutCount = due.length === 0 ? 0 : billed.withoutCount;
  const shown = ({ count, amountUsd }: Priced): Amount => ({ count, amountUsd });
  return { line: { of, planned: shown(planned), spent, toCome: shown(toCome), billsWithoutCount }, planned, toCome };
}

function missingOf(units: readonly Unit[]): readonly MissingPrice[] {
  const byPrice = new Map<Unit['price'], MissingPrice>();
  for (const { price, on } of units) {
    const known = byPrice.get(price);
    const days = [known?.fromOn ?? on, known?.toOn ?? on, on].sort();
    byPrice.set(price, { price, fromOn: days[0] ?? on, toOn: days[2] ?? on });
  }
  return [...byPrice.values()];
}

function total(all: readonly Priced[]): { readonly amountUsd: number | null; readonly knownUsd: number } {
  const knownUsd = usdOf(all.reduce((sum, { knownCents }) => sum + knownCents, 0));
  return { amountUsd: all.some(({ missing }) => missing.length > 0) ? null : knownUsd, knownUsd };
}

/** Every kind of cost has its line, in one order. */
export function sumOf(ground: Ground): Omit<MoneySum, 'slotsCount' | 'openDaysCount'> {
  const lines = moneyKinds.map((of) => lineOf(of, ground));
  const planned = total(lines.map((one) => one.planned));
  const toCome = total(lines.map((one) => one.toCome));
  const spentCents = lines.reduce((sum, { line }) => sum + centsOf(line.spent.amountUsd), 0);
  return {
    lines: lines.map(({ line }) => line),
    plannedUsd: planned.amountUsd,
    knownPlannedUsd: planned.knownUsd,
    spentUsd: usdOf(spentCents),
    toComeUsd: toCome.amountUsd,
    knownToComeUsd: toCome.knownUsd,
    missing: missingOf(lines.flatMap((one) => [...one.planned.missing, ...one.toCome.missing])),
  };
}
