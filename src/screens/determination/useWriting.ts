/** Writing a determination from its page: read what was typed, make the PDF, then write bytes and fact together. */
import { useState } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { looksMedical } from '#records/medicalValue.ts';
import { editions } from '#reference/editions.ts';
import { happenedNow, newId } from '#store/device.ts';
import { useIssuing } from '#store/hooks/useIssuing.ts';
import { type Draft, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/determinationScreen.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import type { DeterminationHere } from './determinationHere.ts';
import { determinationInput } from './determinationInput.ts';

const words = en.fields;

export interface DeterminationText {
  readonly outcome: 'negative' | 'positive' | null;
  readonly location: string;
  readonly determinedOn: string;
  readonly observations: string;
  readonly earlier: string;
  readonly complaints: string;
  readonly shownAs: 'name' | 'identifier' | null;
  readonly writtenBy: string;
  readonly paper: 'letter' | 'a4';
}

export interface ReadDetermination {
  readonly outcome: 'negative' | 'positive';
  readonly location: string;
  readonly determinedOn: string;
  readonly observations: string | null;
  readonly earlier: string | null;
  readonly complaints: string | null;
  readonly shownAs: 'name' | 'identifier';
  readonly writtenBy: string;
}

export interface Writing {
  readonly draft: Draft<DeterminationText>;
  readonly errors: readonly FieldError[];
  readonly busy: boolean;
  readonly outcome: 'negative' | 'positive';
  readonly make: () => Promise<void>;
}

/** The writer of PDFs and its typeface are fetched when one is first made, from what is kept on the device. */
const loadWriter = () => Promise.all([import('#documents/determinationPdf.ts'), import('#documents/fonts/load.ts')]);

function readDetermination(
  read: FieldReader,
  text: DeterminationText,
  outcome: 'negative' | 'positive',
  today: string,
): ReadDetermination | null {
  const notes = { optional: true, most: 2000 };
  const location = read.text('location', words.location, text.location);
  const determinedOn = read.day('determinedOn', words.determinedOn, text.determinedOn, today, { past: true });
  const observations = read.text('observations', words.observations, text.observations, notes);
  const earlier = read.text('earlier', words.earlier, text.earlier, notes);
  const complaints = read.text('complaints', words.complaints, text.complaints, notes);
  for (const [field, typed] of Object.entries({ observations, earlier, complaints }))
    if (typed !== null && looksMedical(typed)) read.add(field, en.medicalFound);
  const shownAs = read.chosen('shownAs', words.shownAs, text.shownAs);
  const writtenBy = read.text('writtenBy', words.writtenBy, text.writtenBy);
  if (read.errors.length > 0 || location === null || determinedOn === null) return null;
  if (shownAs === null || writtenBy === null) return null;
  return { outcome, location, determinedOn, observations, earlier, complaints, shownAs, writtenBy };
}

export function useWriting(here: DeterminationHere, by: string | null): Writing {
  const { book, site, group, finding, duties, groupKey } = here;
  const draftKey = `determination:${site.id}/${groupKey}`;
  const draft = useDraft<DeterminationText>(draftKey, {
    outcome: null,
    location: '',
    determinedOn: duties.today,
    observations: '',
    earlier: '',
    complaints: '',
    shownAs: null,
    writtenBy: book.people.get(by ?? '')?.name ?? '',
    paper: 'letter',
  });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const issuing = useIssuing();
  const mayBeNegative = finding.outcome === 'negativeMayBeWritten';
  const outcome = draft.value.outcome ?? (mayBeNegative ? 'negative' : 'positive');

  const make = async () => {
    const reader = fieldReader(partsWords);
    // Something may have come in since a negative one was chosen.
    if (outcome === 'negative' && !mayBeNegative) reader.add('outcome', en.negativeBlocked);
    const read = readDetermination(reader, draft.value, outcome, duties.today);
    setErrors(reader.errors);
    if (read === null) return;
    const { zone } = site;
    const firm = { firmName: book.book?.firmName ?? '', practice: book.book?.practice ?? false };
    const done = await issuing.issue({
      where: { ...firm, zone, editions: editions() },
      make: async (occasion) => {
        const [{ makeDeterminationPdf }, { loadFonts }] = await loadWriter();
        const { paper } = draft.value;
        return makeDeterminationPdf({
          ...determinationInput(here, read),
          ...occasion,
          paper,
          fonts: await loadFonts(),
        });
      },
      factOf: (values, issued) =>
        newFact(
          'determinationWritten.v1',
          {
            determinationId: newId(),
            outcome: read.outcome,
            siteId: site.id,
            shiftId: null,
            location: read.location,
            determinedOn: read.determinedOn,
            taskIds: [...group.taskIds].slice(0, 12),
            jobClassificationId: group.jobClassificationId,
            measurementIds: [...finding.measurementIds].slice(0, 100),
            relianceIds: [...finding.relianceIds].slice(0, 20),
            monitoredIds: [...finding.monitoredIds].slice(0, 100),
            standsForIds: [...finding.standsForIds].slice(0, 200),
            observations: read.observations,
            earlierMeasurements: read.earlier,
            complaints: read.complaints,
            determination: values as unknown as Record<string, unknown>,
            ...issued,
          },
          { happened: happenedNow(zone), by },
        ),
      draftKey,
    });
    if (done === null) return;
    setErrors(done.kind === 'notMade' ? [{ field: null, text: en.failed }] : notWritten(done));
    if (done.kind === 'written') draft.clear();
  };
  return { draft, errors, busy: issuing.busy, outcome, make };
}
