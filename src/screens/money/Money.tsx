/**
 * The office, with quotes and bills: what measuring costs this season and at each job: planned, spent, to come. Afterwards a price or a
 * bill is written down. Money decides nothing about what is to be measured.
 */
import { useSearch } from 'wouter';
import { dayOf } from '#core/calendar.ts';
import { findDutiesInSteps } from '#findings/duties/findDutiesInSteps.ts';
import { moneyOfSeason } from '#findings/season/money.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { deviceZone } from '#store/device.ts';
import { useFoundInBook } from '#store/hooks/useDuties.ts';
import { useBookMeta, useDraft, useNow } from '#store/hooks.ts';
import { en as words } from '#words/money.ts';
import { en as screen } from '#words/moneyScreen.ts';
import { inSentence } from '#words/quantity.ts';
import { BillForm } from './BillForm.tsx';
import { Bills, PricesHere } from './Bills.tsx';
import { MoneyFiles } from './MoneyFiles.tsx';
import styles from './money.module.css';
import type { MoneyHere } from './moneyHere.ts';
import { PricesForm } from './PricesForm.tsx';
import { StrikeForm } from './StrikeForm.tsx';
import { Jobs, Sums } from './Sums.tsx';
import { TimeFields } from './TimeFields.tsx';
import { readTime, type TimeText, thisYear } from './timeDraft.ts';

const minute = 60_000;

export function Money() {
  const zone = deviceZone();
  const today = dayOf(useNow(minute), zone);
  const read = useFoundInBook(findDutiesInSteps, today);
  const meta = useBookMeta();
  const asked = new URLSearchParams(useSearch());
  if (read === undefined || meta === undefined)
    return (
      <Page heading={words.heading} back="/season">
        <p role="status">{screen.looking}</p>
      </Page>
    );
  const here: MoneyHere = { book: read.book, duties: read.found, today, zone, by: meta.holderPersonId };
  const strike = asked.get('strike');
  if (strike !== null) return <StrikeForm key={strike} here={here} spendingId={strike} />;
  if (asked.get('form') === 'prices') return <PricesForm here={here} />;
  if (asked.get('form') === 'bill') return <BillForm here={here} />;
  return <Whole here={here} />;
}

function Whole({ here }: { readonly here: MoneyHere }) {
  const { book, duties, today } = here;
  const draft = useDraft<TimeText>('money/time', thisYear(today));
  const { errors, question } = readTime(draft.value, today);
  const money = question === null ? null : moneyOfSeason(book, duties, question);
  const noPrices = (book.book?.prices ?? []).length === 0;
  const bill = '/money?form=bill';
  const prices = '/money?form=prices';
  return (
    <Page
      heading={words.heading}
      back="/season"
      action={
        <>
          <MainAction to={noPrices ? prices : bill}>{noPrices ? words.enterPrices : words.spend}</MainAction>
          {noPrices && <QuietAction to={bill}>{words.spend}</QuietAction>}
        </>
      }
      aside={
        <>
          {money !== null && money.siteId === null && <Jobs money={money} book={book} />}
          {money !== null && <Bills here={here} money={money} />}
          <PricesHere here={here} />
          {money !== null && <MoneyFiles money={money} book={book} />}
        </>
      }
    >
      <p>{words.intro}</p>
      {money !== null && (
        <p>
          {screen.sums(money.fromOn, money.toOn, book.sites.get(money.siteId ?? '')?.name ?? inSentence(words.allJobs))}
        </p>
      )}
      {money !== null && <Sums money={money} />}
      <TimeFields
        book={book}
        today={today}
        text={draft.value}
        onChange={(part) => draft.set({ ...draft.value, ...part })}
        errors={errors}
      />
      <section>
        <h2>{screen.howHeading}</h2>
        <ul className={styles.how}>
          {words.howCounted.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </section>
    </Page>
  );
}
