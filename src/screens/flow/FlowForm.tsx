/** The lines of one flow check. Saved, it is ready for the next pump, or leads back to the worker it was asked for. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { isDoubtedOn } from '#findings/gear/doubtsOf.ts';
import type { Place } from '#findings/place.ts';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { FloatReadings } from '#parts/FloatReadings.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Notice } from '#parts/Notice.tsx';
import { OtherTime } from '#parts/OtherTime.tsx';
import { Page } from '#parts/Page.tsx';
import { addingNew, PickOrAdd } from '#parts/PickOrAdd.tsx';
import { Outgoing, TakePhoto } from '#parts/Pictures.tsx';
import { PumpLines } from '#parts/PumpLines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import type { Book } from '#records/book.ts';
import { type PhotoChoice, usePictures } from '#store/hooks/usePhotos.ts';
import { useBookMeta, useDraft } from '#store/hooks.ts';
import { purposes, en as words } from '#words/flow.ts';
import { en as gear } from '#words/gear.ts';
import { besideChoice } from '#words/gearChoice.ts';
import { en as photoWords } from '#words/photos.ts';
import { AirLines } from './AirLines.tsx';
import { CheckedToday } from './CheckedToday.tsx';
import { flowDraft, type Purpose, usualGear } from './flowDraft.ts';
import { HowDone } from './HowDone.tsx';
import { LiveFlow } from './LiveFlow.tsx';
import { checksInOrder, pumpDetail, pumpsInOrder, purposeFor } from './pumpStands.ts';
import { liveFlow } from './soFar.ts';
import { type SavedFlow, useSaveFlow } from './useSaveFlow.ts';

export interface FlowFormProps {
  readonly book: Book;
  readonly place: Place;
  readonly pumpId: string | null;
  readonly purpose: Purpose | null;
  /** The sample whose page asked for this check. */
  readonly sampleId: string | null;
}

export function FlowForm({ book, place, pumpId, purpose, sampleId }: FlowFormProps) {
  const shiftId = place.shift.id;
  const asked = book.pumps.get(pumpId ?? '');
  const last = checksInOrder(book).at(-1);
  const name = `shift:${shiftId}/flow/${pumpId ?? ''}/${purpose ?? ''}`;
  const first = purpose ?? (pumpId ? purposeFor(pumpId, book) : 'before');
  const draft = useDraft(name, flowDraft(last, usualGear(shiftId, book), pumpId, first));
  const meta = useBookMeta();
  const [, go] = useLocation();
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [savedText, setSavedText] = useState<string | null>(null);
  const pictures = usePictures([]);
  const save = useSaveFlow({ book, place, draft, draftKey: name, by: meta?.holderPersonId ?? null });
  const typed = draft.value;
  const change = (part: Partial<typeof typed>) => {
    setSavedText(null);
    draft.set({ ...typed, ...part });
  };
  const pick = (picked: string) =>
    change({ pumpId: picked, purpose: purpose ?? (picked === addingNew ? typed.purpose : purposeFor(picked, book)) });
  const submit = async () => {
    const saved = await save.run();
    if (saved === null) return;
    setErrors(saved.errors);
    if (saved.errors.length > 0) return;
    // The reading is in the book: the picture goes its own way, and nobody waits for it.
    if (saved.check) handInReading(pictures.choice, saved.check);
    if (sampleId !== null) return go(typed.purpose === 'after' ? `/sample/${sampleId}/after` : `/sample/${sampleId}`);
    setSavedText(saved.text);
    window.scrollTo(0, 0);
  };

  const finding = liveFlow(typed, shiftId, book, save.happened(), place.today);
  return (
    <Page
      heading={words.heading[typed.purpose]}
      over={place.site.name}
      back={`/shift/${shiftId}`}
      aside={<CheckedToday book={book} shiftId={shiftId} />}
      action={
        <>
          <MainAction busy={save.busy} onClick={() => void submit()}>
            {sampleId === null ? words.saveNext : words.save}
          </MainAction>
          {sampleId === null && <QuietAction to={`/shift/${shiftId}`}>{words.ready}</QuietAction>}
        </>
      }
    >
      <ErrorSummary errors={errors} />
      {savedText !== null && <Notice>{savedText}</Notice>}
      <Outgoing held={pictures} />
      {asked !== undefined ? (
        <p>
          {words.pumpAsked(asked.serial)} {pumpDetail(asked.id, book)}
        </p>
      ) : (
        <PickOrAdd
          name="pump"
          label={gear.pump.pick}
          options={pumpsInOrder(book, shiftId).map(({ id, serial }) => ({
            id,
            label: serial,
            detail: besideChoice(isDoubtedOn(book.pumps.get(id), place.today), pumpDetail(id, book)),
          }))}
          value={typed.pumpId}
          onChange={pick}
          addText={gear.pump.add}
          error={errorOf(errors, 'pump')}
        >
          <PumpLines value={typed.pump} onChange={(pump) => change({ pump, pumpId: addingNew })} errors={errors} />
        </PickOrAdd>
      )}
      <HowDone draft={typed} onChange={change} book={book} errors={errors} today={place.today} />
      <FloatReadings readings={typed.readings} onChange={(readings) => change({ readings })} errors={errors} />
      <TakePhoto held={pictures} name="photo" of="meterReading" hint={photoWords.hintReading} />
      <AirLines draft={typed} onChange={change} book={book} altitudeM={place.site.altitudeM} errors={errors} />
      <LiveFlow finding={finding} purpose={typed.purpose} />
      {purpose === null && (
        <Choice
          name="purpose"
          label={words.purpose}
          options={purposes.map((value) => ({ value, label: words.purposes[value] }))}
          value={typed.purpose}
          onChange={(chosen) => change({ purpose: chosen })}
        />
      )}
      <OtherTime
        name="moment"
        value={typed.moment}
        onChange={(moment) => change({ moment })}
        place={place}
        errors={errors}
        holderName={meta?.holderName ?? null}
        openText={words.moment}
      />
    </Page>
  );
}

const handInReading = (choice: PhotoChoice, { key, pump, entry }: NonNullable<SavedFlow['check']>): void =>
  choice.handIn({ recordKey: key, of: 'meterReading', title: photoWords.pumpReading(pump), entry });
