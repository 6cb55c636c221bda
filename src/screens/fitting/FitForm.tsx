/** The lines that prepare one worker: worker, tasks, job classification, pump, lot. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Place } from '#findings/place.ts';
import { findPresumption } from '#findings/presumption.ts';
import { readyWearers } from '#findings/season/readyWearers.ts';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import type { Book } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { en as words } from '#words/fitting.ts';
import { en as gear } from '#words/gear.ts';
import { notWritten } from '#words/saving.ts';
import { type FitDraft, fitDraft, fitFacts, readFit, wearsOf } from './fitDraft.ts';
import { GearLines } from './GearLines.tsx';
import { workerDetail, workersInOrder } from './gearStands.ts';
import { LabelLines } from './LabelLines.tsx';
import { Presumed } from './Presumed.tsx';
import { Tasks } from './Tasks.tsx';
import { WorkerLines } from './WorkerLines.tsx';

const fieldByName = {
  name: 'worker-name',
  identifier: 'worker-identifier',
  pumpId: 'pump',
  workerId: 'worker',
  sampleNumber: 'number',
};

export interface FitFormProps {
  readonly book: Book;
  readonly place: Place;
  /** Whoever is to wear a pump today, as the day was made ready. */
  readonly wearerId: string | null;
}

export function FitForm({ book, place, wearerId }: FitFormProps) {
  const shiftId = place.shift.id;
  const wearer = readyWearers(book, shiftId).find(({ workerId }) => workerId === wearerId);
  const name = `shift:${shiftId}/fit${wearer === undefined ? '' : `/${wearer.workerId}`}`;
  const draft = useDraft<FitDraft>(name, fitDraft(book, wearer));
  const meta = useBookMeta();
  const [, go] = useLocation();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const typed = draft.value;
  const change = (part: Partial<FitDraft>) => draft.set({ ...typed, ...part });
  const pickWorker = (workerId: string) => {
    const ready = readyWearers(book, shiftId).find((each) => each.workerId === workerId);
    const jobId = book.people.get(workerId)?.jobClassificationId ?? typed.jobId;
    change({ ...(ready === undefined ? { jobId } : wearsOf(ready)), workerId, number: null });
  };

  const submit = async () => {
    const read = readFit(typed, place.today);
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const entry = { happened: happenedNow(place.zone), by: meta?.holderPersonId ?? null };
    const { facts, sampleId } = fitFacts(typed, read, { shift: place.shift, book, entry });
    const written = await writing.run(facts, { draftKey: name });
    if (written === null) return;
    if (written.kind !== 'written') return setErrors(notWritten(written, fieldByName));
    go(`/shift/${shiftId}/fit?prepared=${sampleId}`, { replace: true });
  };

  return (
    <Page
      heading={words.heading}
      over={place.site.name}
      back={`/shift/${shiftId}`}
      aside={<GearLines draft={typed} onChange={change} book={book} errors={errors} today={place.today} />}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <PickOrAdd
        name="worker"
        label={words.worker}
        options={workersInOrder(book).map((id) => ({
          id,
          label: book.people.get(id)?.name ?? '',
          detail: workerDetail(id, book),
        }))}
        value={typed.workerId}
        onChange={pickWorker}
        addText={gear.person.add}
        error={errorOf(errors, 'worker')}
      >
        <WorkerLines
          value={typed.worker}
          onChange={(worker) => change({ worker, workerId: addingNew })}
          errors={errors}
        />
      </PickOrAdd>
      <LabelLines draft={typed} onChange={change} book={book} shiftId={shiftId} />
      <Tasks book={book} taskIds={typed.taskIds} find={typed.find} onChange={change} error={errorOf(errors, 'find')} />
      {typed.taskIds.length > 0 && (
        <Presumed presumption={findPresumption(typed.taskIds, place.shift.conditions?.paintLead ?? null)} />
      )}
    </Page>
  );
}
