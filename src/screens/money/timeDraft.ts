/** Which time and job the sums are of, and what is foreseen besides: as typed, and as read. */
import type { MoneyQuestion } from '#findings/season/money.ts';
import { fieldReader } from '#parts/fieldReader.ts';
import { en as words } from '#words/money.ts';
import { en as screen } from '#words/moneyScreen.ts';
import { en as partsWords } from '#words/parts.ts';
import { noOne } from './moneyHere.ts';

export interface TimeText {
  readonly from: string;
  readonly to: string;
  readonly siteId: string;
  readonly rush: string;
  readonly consultant: string;
}

/** The calendar year of the day, all jobs. */
export const thisYear = (today: string): TimeText => ({
  from: `${today.slice(0, 4)}-01-01`,
  to: `${today.slice(0, 4)}-12-31`,
  siteId: noOne,
  rush: '',
  consultant: '',
});

export function readTime(text: TimeText, today: string) {
  const read = fieldReader(partsWords);
  const fromOn = read.day('from', words.fromOn, text.from, today);
  const toOn = read.day('to', words.toOn, text.to, today);
  if (fromOn !== null && toOn !== null && toOn < fromOn) read.add('to', screen.toBeforeFrom);
  const whole = (name: 'rush' | 'consultant', label: string): number => {
    const found = read.quantity(name, label, '', text[name], { optional: true, most: 1000 }) ?? 0;
    if (!Number.isInteger(found)) read.add(name, partsWords.quantity.letters({ label, unit: '' }));
    return found;
  };
  const rushSamplesCount = whole('rush', screen.rushCount);
  const consultantDaysCount = whole('consultant', screen.consultantDays);
  const question: MoneyQuestion | null =
    read.errors.length > 0 || fromOn === null || toOn === null
      ? null
      : { fromOn, toOn, siteId: text.siteId === noOne ? null : text.siteId, rushSamplesCount, consultantDaysCount };
  return { errors: read.errors, question };
}
