/** What measuring costs, as tables for a spreadsheet: sums by job and kind, and the bills. What is not known is a word, never 0. */
import type { Amount, Money, MoneySum } from '#findings/season/money.ts';
import type { SpendingRecord } from '#records/book.ts';
import { en as money } from '#words/money.ts';
import { en } from '#words/moneyCsv.ts';
import { type CsvCell, csvText } from './csv.ts';

/** Name of a site; null = of no single job. */
export type SiteName = (siteId: string | null) => string;

const count = (value: number): CsvCell => ({ number: String(value) });
const usd = (amountUsd: number | null): CsvCell =>
  amountUsd === null ? money.notKnown : { number: amountUsd.toFixed(2) };
const both = ({ count: n, amountUsd }: Pick<Amount, 'count' | 'amountUsd'>): CsvCell[] => [count(n), usd(amountUsd)];

interface Job {
  readonly name: string;
  readonly sum: MoneySum;
}

const linesOf = ({ name, sum }: Job, fromOn: string, toOn: string): CsvCell[][] =>
  sum.lines.map(({ of, planned, spent, toCome }) => [
    name,
    fromOn,
    toOn,
    money.kinds[of],
    ...both(planned),
    ...both(spent),
    ...both(toCome),
  ]);

/** A row for each job and kind, then the total of all. */
export function moneyCsv(found: Money, siteName: SiteName): string {
  const { fromOn, toOn, jobs, siteId } = found;
  const whole: Job = { name: siteId === null ? money.allJobs : siteName(siteId), sum: found };
  const parts = jobs.length === 0 ? [whole] : jobs.map((job) => ({ name: siteName(job.siteId), sum: job }));
  const total: CsvCell[] = [
    whole.name,
    fromOn,
    toOn,
    en.total,
    null,
    usd(found.plannedUsd),
    null,
    usd(found.spentUsd),
    null,
    usd(found.toComeUsd),
  ];
  return csvText([[...en.columns], ...parts.flatMap((job) => linesOf(job, fromOn, toOn)), total]);
}

/** Every bill, struck ones marked with their reason, oldest first. */
export function billsCsv(bills: readonly SpendingRecord[], siteName: SiteName): string {
  const rows = [...bills]
    .sort((a, b) => a.spentOn.localeCompare(b.spentOn) || a.id.localeCompare(b.id))
    .map(({ spentOn, spentFor, amountUsd, count: n, siteId, bill, remark, struck }): CsvCell[] => [
      spentOn,
      money.kinds[spentFor],
      n === null ? null : count(n),
      usd(amountUsd),
      siteName(siteId),
      bill,
      remark,
      struck === null ? null : en.struck(struck.why),
    ]);
  return csvText([[...en.billColumns], ...rows]);
}
