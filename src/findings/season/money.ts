/**
 * What measuring costs: planned, spent, to come, of a time and of its jobs. Prices are the firm's own; one that is not known leaves its
 * sum not known, never 0. Money decides nothing: no duty and no plan is touched by it.
 */
import { sharedUsd } from '#core/money.ts';
import type { Book } from '#records/book.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { siteOfBill } from './moneyBilled.ts';
import type { Money, MoneyOfJob, MoneyQuestion } from './moneyFinding.ts';
import { type Ground, sumOf } from './moneySums.ts';
import {
  isWithin,
  type Slot,
  slotsOfSeason,
  type Time,
  type Unit,
  unitsOfSlots,
  unitsTaken,
  withoutTaken,
} from './moneyUnits.ts';

export type {
  Amount,
  MissingPrice,
  Money,
  MoneyKind,
  MoneyLine,
  MoneyOfJob,
  MoneyQuestion,
  MoneySum,
  PriceName,
} from './moneyFinding.ts';

/** What nobody's plan says and whoever asks foresees. */
function foreseen({ consultantDaysCount = 0, rushSamplesCount = 0, siteId = null }: MoneyQuestion, on: string): Unit[] {
  const units = (count: number, unit: Pick<Unit, 'of' | 'price'>): Unit[] =>
    Array.from({ length: count }, () => ({ ...unit, siteId, on }));
  return [
    ...units(consultantDaysCount, { of: 'consultant', price: 'consultantUsd' }),
    ...units(rushSamplesCount, { of: 'rush', price: 'rushUsd' }),
  ];
}

interface Whole {
  readonly ground: Ground;
  readonly slots: readonly Slot[];
}

function wholeOf(book: Book, duties: DutiesOfBook, question: MoneyQuestion): Whole {
  const time: Time = { fromOn: question.fromOn, toOn: question.toOn, today: duties.today };
  const slots = slotsOfSeason(book, duties, time);
  const besides = foreseen(question, duties.today);
  const toDo = slots.filter((slot) => slot.toDo);
  const taken = unitsTaken(book, time);
  const bills = [...book.spendings.values()].filter(({ struck }) => struck === null);
  return {
    slots,
    ground: {
      book,
      time,
      prices: book.book?.prices ?? [],
      planned: [...unitsOfSlots(slots, book, duties.today), ...besides],
      due: [...taken, ...withoutTaken(unitsOfSlots(toDo, book, duties.today), taken), ...besides],
      bills,
      billed: { book, time, bills, isHere: () => true },
    },
  };
}

/** Of one job; null: of no single one. */
function ofSite({ ground, slots }: Whole, siteId: string | null): Whole {
  const isOf = (one: { readonly siteId: string | null }): boolean => one.siteId === siteId;
  return {
    slots: slots.filter(isOf),
    ground: {
      ...ground,
      planned: ground.planned.filter(isOf),
      due: ground.due.filter(isOf),
      bills: ground.bills.filter((bill) => siteOfBill(bill, ground.book) === siteId),
      billed: { ...ground.billed, isHere: (one) => one === siteId },
    },
  };
}

const jobOf = (whole: Whole, siteId: string | null): MoneyOfJob => ({
  siteId,
  ...sumOf(whole.ground),
  slotsCount: whole.slots.length,
  openDaysCount: whole.slots.filter(({ workOn }) => workOn === null).length,
});

function sitesOf({ ground, slots }: Whole): readonly (string | null)[] {
  const bills = ground.bills.filter(({ spentOn }) => isWithin(spentOn, ground.time));
  const all = [...slots, ...ground.planned, ...ground.due].map(({ siteId }) => siteId);
  const found = new Set([...all, ...bills.map((bill) => siteOfBill(bill, ground.book))]);
  const sites = [...found].filter((one) => one !== null).sort();
  return found.has(null) ? [...sites, null] : sites;
}

/** `today` of the duties tells which price holds for days that are still open. */
export function moneyOfSeason(book: Book, duties: DutiesOfBook, question: MoneyQuestion): Money {
  const { fromOn, toOn, siteId = null } = question;
  const all = wholeOf(book, duties, question);
  const whole = siteId === null ? all : ofSite(all, siteId);
  const { siteId: _, ...sum } = jobOf(whole, siteId);
  const written = [...book.determinations.values()].filter(
    (one) => isWithin(one.written.determinedOn, question) && (siteId === null || one.written.siteId === siteId),
  );
  return {
    ...sum,
    fromOn,
    toOn,
    siteId,
    jobs: siteId === null ? sitesOf(all).map((one) => jobOf(ofSite(all, one), one)) : [],
    determinationsCount: written.length,
    perDeterminationUsd: written.length === 0 ? null : sharedUsd(sum.spentUsd, written.length),
    pricesFromOn: book.book?.prices?.find((one) => one.fromOn <= duties.today)?.fromOn ?? null,
  };
}
