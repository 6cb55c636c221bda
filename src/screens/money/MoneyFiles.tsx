/** The sums and the bills as files for a spreadsheet, handed out as every file is. The writer is fetched on the tap. */
import type { Money } from '#findings/season/money.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book } from '#records/book.ts';
import { useMadeFile } from '#store/hooks/useMadeFile.ts';
import { en as words } from '#words/money.ts';
import { en } from '#words/moneyScreen.ts';

interface MoneyFilesProps {
  readonly money: Money;
  readonly book: Book;
}

const screen = en.csv;

export function MoneyFiles({ money, book }: MoneyFilesProps) {
  const nameOf = (siteId: string | null): string => book.sites.get(siteId ?? '')?.name ?? words.noJob;
  const { fromOn, toOn } = money;
  const bills = [...book.spendings.values()].filter(({ spentOn }) => spentOn >= fromOn && spentOn <= toOn);
  return (
    <section>
      <h2>{words.csv}</h2>
      <MoneyFile
        action={screen.action}
        name={screen.fileName(fromOn, toOn)}
        of={JSON.stringify(money)}
        make={async () => (await import('#documents/moneyCsv.ts')).moneyCsv(money, nameOf)}
      />
      <MoneyFile
        action={screen.bills}
        name={screen.billsFileName(fromOn, toOn)}
        of={JSON.stringify(bills)}
        make={async () => (await import('#documents/moneyCsv.ts')).billsCsv(bills, nameOf)}
      />
    </section>
  );
}

interface MoneyFileProps {
  readonly action: string;
  readonly name: string;
  readonly of: string;
  readonly make: () => Promise<string>;
}

function MoneyFile({ action, name, of, make }: MoneyFileProps) {
  const file = useMadeFile({ name, of, make, type: 'text/csv' });
  return (
    <div>
      <QuietAction busy={file.state === 'making'} onClick={() => void file.handOut()}>
        {file.state === 'making' ? screen.making : action}
      </QuietAction>
      <HandedOut state={file.state} outcome={file.outcome} />
    </div>
  );
}
