/** Making an exposure record: read what was typed, make the PDF, then write bytes and fact together. */
import { useState } from 'react';
import { doubtsOnPaper } from '#findings/gear/doubtsOnPaper.ts';
import { peopleOnPaper } from '#findings/peopleOnPaper.ts';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { editions } from '#reference/editions.ts';
import { happenedNow } from '#store/device.ts';
import { useIssuing } from '#store/hooks/useIssuing.ts';
import { type Draft, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/person.ts';
import { notWritten } from '#words/saving.ts';
import type { RecordHere } from './recordHere.ts';

const words = en.record;

export interface RecordText {
  readonly to: string;
  readonly shownAs: 'name' | 'identifier';
  readonly why: string;
  readonly paper: 'letter' | 'a4';
}

export interface RecordMaking {
  readonly draft: Draft<RecordText>;
  readonly errors: readonly FieldError[];
  readonly busy: boolean;
  readonly make: () => Promise<void>;
}

/** The writer of PDFs and its typeface are fetched when one is first made, from what is kept on the device. */
const loadWriter = () => Promise.all([import('#documents/exposureRecordPdf.ts'), import('#documents/fonts/load.ts')]);

interface AskedRecord {
  readonly to: string;
  readonly why: string | null;
}

function readAsked(read: FieldReader, text: RecordText, { revision, book, workerId }: RecordHere): AskedRecord | null {
  const to = read.text('to', words.to, text.to);
  const why = read.text('why', words.why, text.why, { optional: true, most: 300 });
  if (revision !== '1' && why === null) read.add('why', words.whyMissing);
  const hasNumber = Boolean(book.people.get(workerId)?.identifier);
  if (text.shownAs === 'identifier' && !hasNumber) read.add('shownAs', words.noIdentifier);
  return to === null || read.errors.length > 0 ? null : { to, why };
}

export function useRecordMaking(here: RecordHere, by: string | null): RecordMaking {
  const { finding, book, revision, zone } = here;
  const draftKey = `workday:${finding.workdayId}/exposureRecord`;
  const draft = useDraft<RecordText>(draftKey, { to: here.worker, shownAs: 'name', why: '', paper: 'letter' });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const issuing = useIssuing();

  const make = async () => {
    const text = draft.value;
    const read = fieldReader(partsWords);
    const asked = readAsked(read, text, here);
    setErrors(read.errors);
    if (asked === null) return;
    const { to, why } = asked;
    const firm = { firmName: book.book?.firmName ?? '', practice: book.book?.practice ?? false };
    const done = await issuing.issue({
      where: { ...firm, zone, editions: editions() },
      make: async (occasion) => {
        const [{ makeExposureRecordPdf }, { loadFonts }] = await loadWriter();
        return makeExposureRecordPdf({
          ...occasion,
          paper: text.paper,
          fonts: await loadFonts(),
          book: here.slice,
          finding,
          people: peopleOnPaper(book, new Set([here.workerId, ...here.standsForIds])),
          standsForIds: here.standsForIds,
          revision,
          why,
          to,
          respirator: here.respirator,
          shownAs: text.shownAs,
          gearDoubts: doubtsOnPaper({ kind: 'exposureRecord', id: finding.workdayId }, book),
        });
      },
      factOf: (values, issued) =>
        newFact(
          'exposureRecordIssued.v1',
          {
            workdayId: finding.workdayId,
            revision,
            to,
            record: values as unknown as Record<string, unknown>,
            ...issued,
          },
          { happened: happenedNow(zone), by, why },
        ),
      draftKey,
    });
    if (done === null) return;
    setErrors(done.kind === 'notMade' ? [{ field: null, text: words.failed }] : notWritten(done));
    if (done.kind === 'written') draft.clear();
  };
  return { draft, errors, busy: issuing.busy, make };
}
