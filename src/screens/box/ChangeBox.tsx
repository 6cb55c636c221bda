/**
 * A box that was packed otherwise than written down, or asked otherwise: the old values stay, struck through, with the reason. When a
 * sheet was made, it then differs from the record, and its revision is raised on the page of the box.
 */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { samplesOfBox } from '#findings/gaps.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book, BoxRecord, SampleRecord } from '#records/book.ts';
import { deviceZone, happenedNow, newId } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import {
  type Registers,
  useAwaitingResults,
  useBookMeta,
  useBoxBook,
  useBoxes,
  useDraft,
  useRegisters,
} from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/box.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { AskedLines } from './AskedLines.tsx';
import { type BoxText, readBox, textOf } from './boxText.ts';
import { ChooseSamples } from './ChooseSamples.tsx';
import { changesOf } from './changesOf.ts';
import { freeSamples, ofSite } from './freeSamples.ts';

const words = en.pack;

export function ChangeBox({ boxId = '' }: { readonly boxId?: string }) {
  const book = useBoxBook(boxId);
  const awaiting = useAwaitingResults();
  const boxes = useBoxes();
  const registers = useRegisters();
  const meta = useBookMeta();
  if (book === undefined || !awaiting || !boxes || !registers || !meta) return null;
  const box = book?.boxes.get(boxId);
  if (!book || !box)
    return (
      <Page heading={words.changeHeading} back="/boxes">
        <p>{en.box.gone}</p>
      </Page>
    );
  const free = ofSite(freeSamples(awaiting, boxes), box.packed.siteId);
  const inside = samplesOfBox(box, book);
  const samples = [...inside, ...free.stopped];
  return <ChangeForm box={box} book={book} samples={samples} registers={registers} by={meta.holderPersonId} />;
}

interface ChangeFormProps {
  readonly box: BoxRecord;
  readonly book: Book;
  /** In the box now, and those that may come in. */
  readonly samples: readonly SampleRecord[];
  readonly registers: Registers;
  readonly by: string | null;
}

interface ChangeText extends BoxText {
  readonly chosen: readonly string[];
  readonly why: string;
}

function ChangeForm({ box, book, samples, registers, by }: ChangeFormProps) {
  const draftKey = `box:${box.id}/change`;
  const blank: ChangeText = { ...textOf(box.packed), chosen: box.packed.sampleIds, why: '' };
  const draft = useDraft<ChangeText>(draftKey, blank);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [, go] = useLocation();
  const writing = useWrite();
  const typed = draft.value;
  const change = (part: Partial<ChangeText>) => draft.set({ ...typed, ...part });

  const submit = async () => {
    const read = fieldReader(partsWords);
    const laboratoryId = newId();
    const sampleIds = samples.map(({ id }) => id).filter((id) => typed.chosen.includes(id));
    if (sampleIds.length === 0) read.add('samples', words.noneChosen);
    const found = readBox(read, typed, laboratoryId);
    const why = read.text('why', words.why, typed.why, { most: 2000 });
    setErrors(read.errors);
    if (found === null || why === null || read.errors.length > 0) return;
    const zone = book.sites.get(box.packed.siteId)?.zone ?? deviceZone();
    const entry = { happened: happenedNow(zone), by };
    const changes = changesOf(box, { ...found.asked, sampleIds });
    if (changes.length === 0) return setErrors([{ field: null, text: words.nothingChanged }]);
    const { laboratory } = found;
    const facts = [
      ...(laboratory ? [newFact('laboratoryAdded.v1', { laboratoryId, ...laboratory }, entry)] : []),
      ...changes.map((body) => newFact('valueCorrected.v1', body, { ...entry, why, about: [box.key] })),
    ];
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    if (written.kind === 'written') return go(`/box/${box.id}`, { replace: true });
    setErrors(notWritten(written, {}));
  };

  return (
    <Page
      heading={words.changeHeading}
      back={`/box/${box.id}`}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.change}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <ChooseSamples
        samples={samples}
        running={[]}
        chosen={typed.chosen}
        onChange={(chosen) => change({ chosen })}
        registers={registers}
        errors={errors}
      />
      <AskedLines value={typed} onChange={change} registers={registers} errors={errors} />
      <TextField
        name="why"
        label={words.why}
        hint={box.issues.length > 0 ? words.whyHint : undefined}
        rows={2}
        value={typed.why}
        onChange={(why) => change({ why })}
        error={errorOf(errors, 'why')}
      />
    </Page>
  );
}
