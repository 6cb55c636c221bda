/** Issuing a notice from its page: read what was typed, make the PDF, then write bytes and fact together. */
import { useState } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { editions } from '#reference/editions.ts';
import { deviceZone, happenedNow, newId } from '#store/device.ts';
import { useIssuing } from '#store/hooks/useIssuing.ts';
import { type Draft, useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en as words } from '#words/noticeScreen.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import { emptyNotice, type NoticeText, type ReadNotice, readNotice } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';
import { noticeInput } from './noticeInput.ts';

export interface NoticeMaking {
  readonly draft: Draft<NoticeText>;
  readonly errors: readonly FieldError[];
  readonly busy: boolean;
  /** Answers whether it was issued. */
  readonly make: () => Promise<boolean>;
}

/** The writer of PDFs and its typeface are fetched when a notice is first made, from what is kept on the device. */
const loadWriter = () => Promise.all([import('#documents/noticePdf.ts'), import('#documents/fonts/load.ts')]);

export function useNoticeMaking(here: NoticeHere, by: string | null): NoticeMaking {
  const draftKey = `notice:${here.measurement.id}/make`;
  const holder = here.book.people.get(by ?? '')?.name ?? null;
  const draft = useDraft<NoticeText>(draftKey, emptyNotice(holder));
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const issuing = useIssuing();
  const { book, measurement, owed } = here;

  const issue = async (read: ReadNotice) => {
    const zone = here.zone ?? deviceZone();
    const { paper } = draft.value;
    const firm = { firmName: book.book?.firmName ?? '', practice: book.book?.practice ?? false };
    return issuing.issue({
      where: { ...firm, zone, editions: editions() },
      make: async (occasion) => {
        const [{ makeNoticePdf }, { loadFonts }] = await loadWriter();
        return makeNoticePdf({ ...noticeInput(here, read), ...occasion, paper, fonts: await loadFonts() });
      },
      factOf: (values, issued) =>
        newFact(
          'noticeIssued.v1',
          {
            noticeId: newId(),
            measurementId: measurement.id,
            revision: here.revision,
            resultFactIds: measurement.receipts.map(({ factId }) => factId).slice(-50),
            receivedOn: owed.receivedOn,
            workerIds: [...read.workerIds],
            form: read.form,
            places: [...read.places],
            shownAs: read.shownAs,
            languages: [...read.languages],
            pelStatement: owed.pelStatement,
            correctiveAction: read.corrective?.en ?? null,
            notice: values as unknown as Record<string, unknown>,
            ...issued,
          },
          { happened: happenedNow(zone), by, why: read.why },
        ),
      draftKey,
    });
  };
  const make = async () => {
    const reader = fieldReader(partsWords);
    const read = readNotice(reader, draft.value, here);
    setErrors(reader.errors);
    if (read === null) return false;
    const outcome = await issue(read);
    if (outcome === null) return false;
    setErrors(outcome.kind === 'notMade' ? [{ field: null, text: words.failed }] : notWritten(outcome));
    return outcome.kind === 'written';
  };
  return { draft, errors, busy: issuing.busy, make };
}
