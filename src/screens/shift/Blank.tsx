/** A field blank: a cassette opened and closed at the job, no air drawn. Afterwards it has a number to write on it. */

import { useState } from 'react';
import { useLocation, useSearch } from 'wouter';
import { blanksNeeded } from '#findings/blanks.ts';
import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import { freeLabels } from '#findings/season/readyWearers.ts';
import { BigNumber } from '#parts/BigNumber.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { emptyLot, LotLines, readLot } from '#parts/LotLines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import { happenedNow, newId } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';
import { en as words } from '#words/blank.ts';
import { en as gear } from '#words/gear.ts';
import { besideChoice } from '#words/gearChoice.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { airOf, blanksOf } from './daySamples.ts';
import { type ShiftDay, useShift } from './useShift.ts';

export function Blank({ shiftId = '' }: { readonly shiftId?: string }) {
  const day = useShift(shiftId);
  const openedId = new URLSearchParams(useSearch()).get('opened');
  if (day === undefined) return null;
  if (day === null)
    return (
      <Page heading={words.heading} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  const opened = openedId === null ? undefined : day.book.samples.get(openedId);
  if (opened === undefined) return <BlankForm day={day} />;
  return (
    <Page
      heading={words.number}
      back={`/shift/${shiftId}`}
      action={<NextAfter shiftId={shiftId} enough={blanksOf(day).length >= blanksWanted(day)} />}
    >
      <BigNumber label={words.numberLabel} digits={opened.sampleNumber} />
      <Standing day={day} />
    </Page>
  );
}

const blanksWanted = (day: ShiftDay): number => blanksNeeded(airOf(day).length, 'tenPercent').count;

/** While blanks are missing the next one is the main thing to do. */
function NextAfter({ shiftId, enough }: { readonly shiftId: string; readonly enough: boolean }) {
  const [day, another] = [`/shift/${shiftId}`, `/shift/${shiftId}/blank`];
  return enough ? (
    <>
      <MainAction to={day}>{words.ready}</MainAction>
      <QuietAction to={another}>{words.another}</QuietAction>
    </>
  ) : (
    <>
      <MainAction to={another}>{words.another}</MainAction>
      <QuietAction to={day}>{words.ready}</QuietAction>
    </>
  );
}

function Standing({ day }: { readonly day: ShiftDay }) {
  return <p>{words.standing(blanksOf(day).length, blanksWanted(day))}</p>;
}

function BlankForm({ day }: { readonly day: ShiftDay }) {
  const { book, place, by } = day;
  const shiftId = place.shift.id;
  const name = `shift:${shiftId}/blank`;
  const before = blanksOf(day);
  const lotId = before.at(-1)?.lotId ?? airOf(day).at(-1)?.lotId ?? null;
  const draft = useDraft(name, { lotId, lot: emptyLot, where: before.at(-1)?.openedWhere ?? '' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [, go] = useLocation();
  const writing = useWrite();
  const typed = draft.value;

  const submit = async () => {
    const read = fieldReader(partsWords);
    read.chosen('lot', words.lot, typed.lotId);
    const lot = typed.lotId === addingNew ? readLot(read, typed.lot, place.today) : null;
    const openedWhere = read.text('where', words.where, typed.where);
    setErrors(read.errors);
    if (read.errors.length > 0 || openedWhere === null || typed.lotId === null) return;
    const entry = { happened: happenedNow(place.zone), by };
    const lotOfBlank = lot === null ? typed.lotId : newId();
    const sampleId = newId();
    const sampleNumber = freeLabels(book, shiftId, { workerId: null, blank: true })[0] ?? nextFreeNumber;
    const body = { sampleId, sampleNumber, shiftId, lotId: lotOfBlank, openedWhere };
    const facts = [
      ...(lot === null ? [] : [newFact('lotAdded.v1', { lotId: lotOfBlank, ...lot }, entry)]),
      newFact('blankOpened.v1', body, entry),
    ];
    const written = await writing.run(facts, { draftKey: name });
    if (written === null) return;
    if (written.kind !== 'written')
      return setErrors(notWritten(written, { openedWhere: 'where', lotNumber: 'lot-number' }));
    go(`/shift/${shiftId}/blank?opened=${sampleId}`, { replace: true });
  };

  return (
    <Page
      heading={words.heading}
      over={place.site.name}
      back={`/shift/${shiftId}`}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.what}</p>
      <Standing day={day} />
      <PickOrAdd
        name="lot"
        label={words.lot}
        options={[...book.lots.values()].map((each) => ({
          id: each.id,
          label: each.lotNumber,
          detail: besideChoice(isDoubtedOn(each, place.today), each.media),
        }))}
        value={typed.lotId}
        onChange={(id) => draft.set({ ...typed, lotId: id })}
        addText={gear.lot.add}
        error={errorOf(errors, 'lot')}
      >
        <LotLines
          value={typed.lot}
          onChange={(lot) => draft.set({ ...typed, lot, lotId: addingNew })}
          errors={errors}
          today={place.today}
        />
      </PickOrAdd>
      <TextField
        name="where"
        label={words.where}
        hint={words.whereHint}
        value={typed.where}
        onChange={(where) => draft.set({ ...typed, where })}
        error={errorOf(errors, 'where')}
      />
      {before.length > 0 && (
        <Lines heading={words.already}>
          {before.map(({ id, sampleNumber, openedWhere }) => (
            <Line key={id} to={`/sample/${id}`}>
              {words.openedAt(sampleNumber, openedWhere ?? '')}
            </Line>
          ))}
        </Lines>
      )}
    </Page>
  );
}
