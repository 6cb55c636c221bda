/**
 * Supervisor at the van, or the office: cassettes on the table, an open box. Afterwards the book knows what is in the box and what is
 * asked of the laboratory; the custody sheet comes next.
 */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import type { BookMeta } from '#store/bookMeta.ts';
import { deviceZone, happenedNow, newId } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { type Registers, useAwaitingResults, useBookMeta, useBoxes, useDraft, useRegisters } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/box.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { AskedLines } from './AskedLines.tsx';
import { type BoxText, emptyBox, readBox, textOf } from './boxText.ts';
import { ChooseSamples } from './ChooseSamples.tsx';
import { freeSamples, ofSite } from './freeSamples.ts';

const words = en.pack;
const draftKey = 'book/pack';

export function PackBox() {
  const awaiting = useAwaitingResults();
  const boxes = useBoxes();
  const registers = useRegisters();
  const meta = useBookMeta();
  if (awaiting === undefined || boxes === undefined || registers === undefined || meta === undefined)
    return <Page heading={words.heading} back="/boxes" />;
  return <PackForm awaiting={awaiting} boxes={boxes} registers={registers} meta={meta} />;
}

interface PackFormProps {
  readonly awaiting: readonly SampleRecord[];
  readonly boxes: readonly BoxRecord[];
  readonly registers: Registers;
  readonly meta: BookMeta;
}

function PackForm({ awaiting, boxes, registers, meta }: PackFormProps) {
  const free = freeSamples(awaiting, boxes);
  const siteIds = [...new Set(free.stopped.map(({ siteId }) => siteId))];
  const [newest] = boxes;
  const blank = emptyBox(siteIds[0] ?? null, meta.holderPersonId, registers.laboratories.list.length > 0);
  const again = newest ? { ...textOf(newest.packed), siteId: blank.siteId, remark: '' } : blank;
  const draft = useDraft<BoxText>(draftKey, { ...again, samplerId: blank.samplerId || again.samplerId });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [, go] = useLocation();
  const writing = useWrite();
  const typed = draft.value;
  const change = (part: Partial<BoxText>) => draft.set({ ...typed, ...part });
  const siteId = typed.siteId !== null && siteIds.includes(typed.siteId) ? typed.siteId : blank.siteId;
  const here = ofSite(free, siteId);
  const chosen = here.stopped.map(({ id }) => id).filter((id) => !typed.leftOut.includes(id));

  const submit = async () => {
    const read = fieldReader(partsWords);
    if (chosen.length === 0) read.add('samples', words.noneChosen);
    const ids = { boxId: newId(), laboratoryId: newId() };
    const found = readBox(read, typed, ids.laboratoryId);
    setErrors(read.errors);
    if (found === null || siteId === null || read.errors.length > 0) return;
    const zone = registers.sites.byId.get(siteId)?.zone ?? deviceZone();
    const entry = { happened: happenedNow(zone), by: meta.holderPersonId };
    const body = { ...found.asked, boxId: ids.boxId, siteId, sampleIds: [...chosen] };
    const { laboratory } = found;
    const facts = [
      ...(laboratory ? [newFact('laboratoryAdded.v1', { laboratoryId: ids.laboratoryId, ...laboratory }, entry)] : []),
      newFact('boxPacked.v1', body, entry),
    ];
    const written = await writing.run(facts, { draftKey });
    if (written === null) return;
    if (written.kind === 'written') return go(`/box/${ids.boxId}`, { replace: true });
    setErrors(notWritten(written, { ...fieldByName, ...sampleFields(chosen.length) }));
  };

  if (free.stopped.length === 0)
    return (
      <Page heading={words.heading} back="/boxes" action={<MainAction to="/">{en.boxes.toToday}</MainAction>}>
        <p>{words.nothing}</p>
      </Page>
    );
  return (
    <Page
      heading={words.heading}
      back="/boxes"
      aside={<AskedLines value={typed} onChange={change} registers={registers} errors={errors} />}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      {siteIds.length > 1 && (
        <Choice
          name="site"
          label={words.site}
          options={siteIds.map((id) => ({ value: id, label: registers.sites.byId.get(id)?.name ?? id }))}
          value={siteId}
          onChange={(id) => change({ siteId: id })}
          error={errorOf(errors, 'site')}
        />
      )}
      <ChooseSamples
        samples={here.stopped}
        running={here.running}
        chosen={chosen}
        onChange={(ids) =>
          change({ siteId, leftOut: here.stopped.map(({ id }) => id).filter((id) => !ids.includes(id)) })
        }
        registers={registers}
        errors={errors}
      />
    </Page>
  );
}

const fieldByName = { turnaround: 'turnaround', analysis: 'analysis', name: 'laboratory-name' };
/** A refusal of one cassette belongs to the list of them: its place in the fact ends in its index. */
const sampleFields = (count: number): Record<string, string> =>
  Object.fromEntries(Array.from({ length: count }, (_, at) => [String(at), 'samples']));
