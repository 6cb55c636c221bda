/** The office, with a bill in the hand: what it was for, how much, of which job. */
import { dayOf } from '#core/calendar.ts';
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { FactBody, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { en as words } from '#words/money.ts';
import { en } from '#words/moneyScreen.ts';
import { MoneyForm } from './MoneyForm.tsx';
import { brokenCents, type MoneyHere, noOne, withoutSign } from './moneyHere.ts';

const screen = en.spend;
type Kind = FactBody<'moneySpent.v1'>['spentFor'];

interface Typed {
  readonly spentOn: string;
  readonly spentFor: string;
  readonly amount: string;
  readonly count: string;
  readonly siteId: string;
  readonly boxId: string;
  readonly bill: string;
  readonly remark: string;
}

const blank = { spentFor: '', amount: '', count: '', siteId: noOne, boxId: noOne, bill: '', remark: '' };

function build(here: MoneyHere, typed: Typed, read: FieldReader, entry: Entry): NewFact | null {
  const spentOn = read.day('spentOn', screen.spentOn, typed.spentOn, here.today, { past: true });
  const spentFor = read.chosen('spentFor', screen.spentFor, typed.spentFor as Kind | '');
  const broken = brokenCents(screen.amount, typed.amount);
  const amountUsd =
    broken === null
      ? read.quantity('amount', screen.amount, '$', withoutSign(typed.amount), { most: 1_000_000 })
      : read.add('amount', broken);
  const count = read.quantity('count', screen.count, '', typed.count, { optional: true, most: 10_000 });
  if (count !== null && !Number.isInteger(count)) read.add('count', screen.wholeCount);
  const bill = read.text('bill', screen.bill, typed.bill, { optional: true, most: 100 });
  const remark = read.text('remark', screen.remark, typed.remark, { optional: true, most: 2000 });
  if (read.errors.length > 0 || spentOn === null || spentFor === null || amountUsd === null) return null;
  const idOf = (chosen: string): string | null => (chosen === noOne ? null : chosen);
  const [siteId, boxId] = [idOf(typed.siteId), idOf(typed.boxId)];
  const body = { spendingId: newId(), spentOn, spentFor, amountUsd, count, siteId, boxId, bill, remark };
  return newFact('moneySpent.v1', body, entry);
}

export function BillForm({ here }: { readonly here: MoneyHere }) {
  const { book, today, zone } = here;
  const newestFirst = [...book.boxes.values()].sort((a, b) => b.packedAt.localeCompare(a.packedAt));
  const boxes = newestFirst.map(({ id, packed, packedAt }) => {
    const laboratory = book.laboratories.get(packed.laboratoryId)?.name ?? '';
    return { value: id, label: screen.boxName(laboratory, dayOf(packedAt, zone)) };
  });
  return (
    <MoneyForm<Typed>
      here={here}
      name="bill"
      heading={screen.heading}
      action={screen.save}
      blank={{ ...blank, spentOn: today }}
      fieldByName={{ amountUsd: 'amount' }}
      build={(typed, read, entry) => build(here, typed, read, entry)}
    >
      {(typed, change, errors) => {
        const line = (name: 'bill' | 'remark') => (
          <TextField
            name={name}
            label={screen[name]}
            value={typed[name]}
            onChange={(text) => change({ [name]: text })}
            error={errorOf(errors, name)}
          />
        );
        const choice = (name: 'spentFor' | 'siteId' | 'boxId', label: string, options: readonly Option[]) => (
          <SelectField
            name={name}
            label={label}
            options={options}
            value={typed[name]}
            onChange={(value) => change({ [name]: value })}
            error={errorOf(errors, name)}
          />
        );
        return (
          <>
            {choice('spentFor', screen.spentFor, kinds)}
            <QuantityField
              name="amount"
              label={screen.amount}
              unit="$"
              value={typed.amount}
              onChange={(amount) => change({ amount })}
              error={errorOf(errors, 'amount')}
            />
            <DateField
              name="spentOn"
              label={screen.spentOn}
              today={today}
              value={typed.spentOn}
              onChange={(spentOn) => change({ spentOn })}
              error={errorOf(errors, 'spentOn')}
            />
            <QuantityField
              name="count"
              label={screen.count}
              hint={screen.countHint}
              unit=""
              kind="whole"
              value={typed.count}
              onChange={(count) => change({ count })}
              error={errorOf(errors, 'count')}
            />
            {choice('siteId', screen.site, [
              { value: noOne, label: words.noJob },
              ...[...book.sites.values()].map(({ id, name }) => ({ value: id, label: name })),
            ])}
            {boxes.length > 0 && choice('boxId', screen.box, [{ value: noOne, label: screen.noBox }, ...boxes])}
            {line('bill')}
            {line('remark')}
          </>
        );
      }}
    </MoneyForm>
  );
}

interface Option {
  readonly value: string;
  readonly label: string;
}
const kinds: readonly Option[] = Object.entries(words.kinds).map(([value, label]) => ({ value, label }));
