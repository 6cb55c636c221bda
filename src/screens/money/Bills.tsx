/** Bills of the time, newest first; one that was wrong is struck with a reason and stays to be seen. And the prices that were stated. */
import type { Money } from '#findings/season/money.ts';
import { siteOfBill } from '#findings/season/moneyBilled.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { SpendingRecord } from '#records/book.ts';
import { en as words } from '#words/money.ts';
import { en as screen } from '#words/moneyScreen.ts';
import type { MoneyHere } from './moneyHere.ts';

interface BillsProps {
  readonly here: MoneyHere;
  readonly money: Money;
}

export function Bills({ here: { book }, money: { fromOn, toOn, siteId } }: BillsProps) {
  const bills = [...book.spendings.values()]
    .filter(({ spentOn }) => spentOn >= fromOn && spentOn <= toOn)
    .filter((bill) => siteId === null || siteOfBill(bill, book) === siteId)
    .sort((a, b) => b.spentOn.localeCompare(a.spentOn) || a.id.localeCompare(b.id));
  const detailOf = (one: SpendingRecord): string => {
    const { count, bill, remark, struck } = one;
    return [
      ...(count === null ? [] : [screen.counts(count)]),
      book.sites.get(siteOfBill(one, book) ?? '')?.name ?? words.noJob,
      ...(bill === null ? [] : [screen.billNumber(bill)]),
      ...(remark === null ? [] : [remark]),
      struck === null ? words.strike : screen.struck(struck.why),
    ].join('; ');
  };
  return (
    <Lines heading={words.entries} whenEmpty={words.noEntries}>
      {bills.map((bill) => (
        <Line key={bill.id} to={bill.struck === null ? `/money?strike=${bill.id}` : undefined} detail={detailOf(bill)}>
          {screen.bill(words.kinds[bill.spentFor], words.usd(bill.amountUsd), bill.spentOn)}
        </Line>
      ))}
    </Lines>
  );
}

export function PricesHere({ here: { book } }: Pick<BillsProps, 'here'>) {
  const prices = book.book?.prices ?? [];
  return (
    <Lines heading={screen.prices.heading}>
      {prices.length === 0 && <Line>{words.noPrices}</Line>}
      {prices.map(({ factId, fromOn }) => (
        <Line key={factId}>{screen.prices.line(fromOn)}</Line>
      ))}
      <Line to="/money?form=prices">{prices.length === 0 ? words.enterPrices : screen.prices.change}</Line>
    </Lines>
  );
}
