/** The office, with a quote or the last bill in the hand: the firm's own prices, from a day on. Empty is not known, never nothing. */
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { QuantityField } from '#parts/QuantityField.tsx';
import type { NewFact } from '#records/fact.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as words } from '#words/money.ts';
import { en } from '#words/moneyScreen.ts';
import { MoneyForm } from './MoneyForm.tsx';
import { brokenCents, type MoneyHere, withoutSign } from './moneyHere.ts';

const screen = en.prices;
const names = [
  'analysisUsd',
  'blankUsd',
  'cassetteUsd',
  'courierUsd',
  'rushUsd',
  'pumpRentalUsd',
  'meterRentalUsd',
  'consultantUsd',
] as const;
type Name = (typeof names)[number];
type Typed = Readonly<Record<Name | 'fromOn', string>>;

export function PricesForm({ here }: { readonly here: MoneyHere }) {
  const { book, today } = here;
  const before = book.book?.prices?.[0];
  const text = (name: Name): string => (before?.[name] == null ? '' : String(before[name]));
  const blank = {
    ...(Object.fromEntries(names.map((name) => [name, text(name)])) as Record<Name, string>),
    fromOn: today,
  };
  const build = (typed: Typed, read: FieldReader, entry: Entry): NewFact | null => {
    const fromOn = read.day('fromOn', screen.fromOn, typed.fromOn, today);
    const prices = Object.fromEntries(names.map((name) => [name, priceOf(name, typed[name], read)]));
    if (names.every((name) => typed[name].trim() === '')) read.add('analysisUsd', screen.all);
    if (read.errors.length > 0 || fromOn === null || book.book === null) return null;
    const body = { bookId: book.book.id, fromOn, ...(prices as Record<Name, number | null>) };
    return newFact('pricesStated.v1', body, entry);
  };
  return (
    <MoneyForm<Typed>
      here={here}
      name="prices"
      heading={screen.heading}
      action={screen.save}
      blank={blank}
      build={build}
    >
      {(typed, change, errors) => (
        <>
          <p>{screen.intro}</p>
          <DateField
            name="fromOn"
            label={screen.fromOn}
            today={today}
            value={typed.fromOn}
            onChange={(fromOn) => change({ fromOn })}
            error={errorOf(errors, 'fromOn')}
          />
          {names.map((name) => (
            <QuantityField
              key={name}
              name={name}
              label={words.prices[name]}
              unit="$"
              value={typed[name]}
              onChange={(value) => change({ [name]: value })}
              error={errorOf(errors, name)}
            />
          ))}
          {before !== undefined && <p>{screen.earlier}</p>}
        </>
      )}
    </MoneyForm>
  );
}

function priceOf(name: Name, text: string, read: FieldReader): number | null {
  const broken = brokenCents(words.prices[name], text);
  if (broken !== null) return read.add(name, broken);
  return read.quantity(name, words.prices[name], '$', withoutSign(text), { optional: true, most: 1_000_000 });
}
