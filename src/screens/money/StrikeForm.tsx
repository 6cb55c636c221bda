/** The office: an entry of money was wrong. It stays to be seen, struck, with the reason. */
import { errorOf } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/money.ts';
import { en } from '#words/moneyScreen.ts';
import { MoneyForm } from './MoneyForm.tsx';
import type { MoneyHere } from './moneyHere.ts';

const screen = en.strike;

export function StrikeForm({ here, spendingId }: { readonly here: MoneyHere; readonly spendingId: string }) {
  const spending = here.book.spendings.get(spendingId);
  if (spending === undefined || spending.struck !== null)
    return (
      <Page heading={screen.heading} back="/money" action={<MainAction to="/money">{en.back}</MainAction>}>
        <p>{screen.gone}</p>
      </Page>
    );
  const { spentFor, amountUsd, spentOn } = spending;
  return (
    <MoneyForm<{ readonly why: string }>
      here={here}
      name={`strike/${spendingId}`}
      heading={screen.heading}
      action={screen.save}
      blank={{ why: '' }}
      build={({ why }, read, entry) => {
        if (why.trim() === '') read.add('why', screen.missing);
        const said = why.trim() === '' ? null : read.text('why', screen.why, why, { most: 2000 });
        return said === null ? null : newFact('spendingStruck.v1', { spendingId }, { ...entry, why: said });
      }}
    >
      {(typed, change, errors) => (
        <>
          <p>{en.bill(words.kinds[spentFor], words.usd(amountUsd), spentOn)}</p>
          <TextField
            name="why"
            label={screen.why}
            hint={screen.hint}
            rows={2}
            value={typed.why}
            onChange={(why) => change({ why })}
            error={errorOf(errors, 'why')}
          />
        </>
      )}
    </MoneyForm>
  );
}
