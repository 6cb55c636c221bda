/** What measuring costs: planned, spent, to come. Prices are the firm's own; what is not known is said so, never as nothing. */
import type { MissingPrice, MoneyKind, PriceName } from '#findings/season/money.ts';
import { formatDay, formatList } from './quantity.ts';

/** '$1,035.00' would leave open what the comma is: '$1 035.00'. Two decimals always. */
export function formatUsd(amountUsd: number): string {
  const [whole = '', cents = ''] = Math.abs(amountUsd).toFixed(2).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u202f') : whole;
  return `${amountUsd < 0 ? '\u2212' : ''}$${grouped}.${cents}`;
}

const kinds: Readonly<Record<MoneyKind, string>> = {
  analysis: 'Samples analysed',
  blank: 'Field blanks analysed',
  cassettes: 'Cassettes',
  courier: 'Courier',
  rush: 'Results wanted sooner',
  rental: 'Rented pumps and flow meters',
  consultant: 'Consultant',
  calibration: 'Calibration',
  other: 'Other',
};

const prices: Readonly<Record<PriceName, string>> = {
  analysisUsd: 'One sample analysed',
  blankUsd: 'One field blank analysed',
  cassetteUsd: 'One cassette',
  courierUsd: 'One box by courier',
  rushUsd: 'More for one sample that is wanted sooner',
  pumpRentalUsd: 'One pump for one day',
  meterRentalUsd: 'One flow meter for one day',
  consultantUsd: 'One day of a consultant',
};

const daysOf = ({ fromOn, toOn }: MissingPrice): string =>
  fromOn === toOn ? `on ${formatDay(fromOn)}` : `from ${formatDay(fromOn)} to ${formatDay(toOn)}`;

export const en = {
  heading: 'Money',
  intro:
    'What measuring costs, from your own prices and bills. Prices begin empty. A price that is not known leaves its sum not known. Money decides nothing about what is to be measured.',
  season: 'From which day to which',
  fromOn: 'From',
  toOn: 'To',
  job: 'Job',
  allJobs: 'All jobs',
  noJob: 'Of no single job',
  planned: 'Planned',
  spent: 'Spent',
  toCome: 'To come',
  notKnown: 'not known',
  notKnownBut: (known: string) => `not known; ${known} of it is`,
  explained: {
    planned: 'Every measurement that the plans name, done or still to do.',
    spent: 'Bills that were entered, those struck left out.',
    toCome: 'Taken or still to do, and not yet billed.',
  },
  usd: formatUsd,
  kinds,
  prices,
  columns: { kind: 'For', count: 'Number', amount: 'Amount' },
  missing: (missing: readonly MissingPrice[]) =>
    `Not known: ${formatList(missing.map((one) => `${prices[one.price].toLowerCase()} (${daysOf(one)})`))}.`,
  enterPrices: 'Enter your prices',
  noPrices: 'No prices are entered yet.',
  pricesFrom: (day: string) => `Prices that hold from ${formatDay(day)}`,
  perDetermination: (amount: string, count: number) =>
    `${amount} for each of the ${count === 1 ? '1 determination' : `${count} determinations`} written in that time`,
  noDetermination: 'No determination was written in that time.',
  billsWithoutCount: (n: number) =>
    n === 1
      ? 'One bill does not say how many it was for: what it paid for still counts as to come.'
      : `${n} bills do not say how many they were for: what they paid for still counts as to come.`,
  howCounted: [
    'One box for each job, and field blanks for each day of sampling by the default rule.',
    'Everything rented counts once for each day of sampling, with the first job of that day.',
    'Results wanted sooner, a consultant, calibration and other costs are in no plan: they count when they are billed, or when you say here how many.',
    'Those without a day count at today’s prices.',
  ],
  slots: (n: number, open: number) =>
    `${n === 1 ? '1 measurement' : `${n} measurements`} planned${open === 0 ? '' : `, ${open} of them without a day`}`,
  jobs: 'By job',
  spend: 'Enter a bill',
  strike: 'Strike this entry',
  entries: 'Bills entered, newest first',
  noEntries: 'No bill is entered in that time.',
  csv: 'Table for a spreadsheet (CSV)',
};

export type MoneyWords = typeof en;
