/** Planned, spent, to come: large, then line by line; what is not known is said with the price that is missing. */
import type { Money, MoneyLine, MoneySum } from '#findings/season/money.ts';
import { Figure } from '#parts/Figure.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/money.ts';
import { en as screen } from '#words/moneyScreen.ts';
import styles from './money.module.css';

/** A sum that a missing price leaves open is not known; what is known of it stands beside. */
const sumText = (sum: number | null, known: number): string =>
  sum === null ? (known > 0 ? words.notKnownBut(words.usd(known)) : words.notKnown) : words.usd(sum);

const amountText = (amountUsd: number | null): string => (amountUsd === null ? words.notKnown : words.usd(amountUsd));

const plannedOf = (sum: MoneySum): string => sumText(sum.plannedUsd, sum.knownPlannedUsd);
const toComeOf = (sum: MoneySum): string => sumText(sum.toComeUsd, sum.knownToComeUsd);

export function Sums({ money }: { readonly money: Money }) {
  const { missing, lines, slotsCount, openDaysCount, determinationsCount, perDeterminationUsd } = money;
  const unclear = lines.filter(({ billsWithoutCount }) => billsWithoutCount > 0);
  return (
    <div className={styles.sums}>
      <div className={styles.figures}>
        <Open
          label={words.planned}
          sum={money.plannedUsd}
          known={money.knownPlannedUsd}
          note={words.explained.planned}
        />
        <Figure label={words.spent} value={words.usd(money.spentUsd)} note={words.explained.spent} />
        <Open label={words.toCome} sum={money.toComeUsd} known={money.knownToComeUsd} note={words.explained.toCome} />
      </div>
      {missing.length > 0 && <p>{words.missing(missing)}</p>}
      <p>{words.slots(slotsCount, openDaysCount)}</p>
      <p>
        {perDeterminationUsd === null
          ? words.noDetermination
          : words.perDetermination(words.usd(perDeterminationUsd), determinationsCount)}
      </p>
      <Lines heading={screen.lines} whenEmpty={words.noEntries}>
        {lines.filter(isShown).map((line) => (
          <Line key={line.of} detail={lineText(line)}>
            {words.kinds[line.of]}
          </Line>
        ))}
      </Lines>
      {unclear.map(({ of, billsWithoutCount }) => (
        <p key={of}>
          {words.kinds[of]}: {words.billsWithoutCount(billsWithoutCount)}
        </p>
      ))}
    </div>
  );
}

interface OpenProps {
  readonly label: string;
  readonly sum: number | null;
  readonly known: number;
  readonly note: string;
}

/** Large only what is short: what is known of an open sum stands below. */
const Open = ({ label, sum, known, note }: OpenProps) => (
  <Figure
    label={label}
    value={amountText(sum)}
    note={sum === null && known > 0 ? `${screen.knownPart(words.usd(known))} ${note}` : note}
  />
);

const isShown = ({ planned, spent, toCome }: MoneyLine): boolean =>
  planned.count > 0 || spent.entriesCount > 0 || toCome.count > 0;

const lineText = ({ planned, spent, toCome }: MoneyLine): string =>
  screen.line(
    screen.counted(planned.count, amountText(planned.amountUsd)),
    screen.counted(spent.count, words.usd(spent.amountUsd)),
    screen.counted(toCome.count, amountText(toCome.amountUsd)),
  );

export const Jobs = ({ money, book }: { readonly money: Money; readonly book: Book }) => (
  <Lines heading={words.jobs} whenEmpty={words.noEntries}>
    {money.jobs.map((job) => (
      <Line key={job.siteId ?? '-'} detail={screen.line(plannedOf(job), words.usd(job.spentUsd), toComeOf(job))}>
        {book.sites.get(job.siteId ?? '')?.name ?? words.noJob}
      </Line>
    ))}
  </Lines>
);
