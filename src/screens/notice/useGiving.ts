/** Noting that a notice was given: to one worker, or posted for everyone. Read, written, and free for the next worker. */
import { useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { type MomentDraft, type MomentPlace, parseMoment } from '#parts/parseMoment.ts';
import type { NoticeRecord } from '#records/book.ts';
import type { FactBody } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { type Draft, useDraft, useNow } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/noticeScreen.ts';
import { en as partsWords } from '#words/parts.ts';
import { notWritten } from '#words/saving.ts';
import type { PaperLanguage } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';

const words = en.give;

/** Stands for everyone it stands for: it is posted. */
export const everyone = '-';
export const hows = ['handedOver', 'readAloud', 'refusedToSign'] as const;

export interface GiveText {
  readonly workerId: string | null;
  readonly how: (typeof hows)[number] | 'posted' | null;
  readonly place: string;
  readonly language: PaperLanguage | null;
  readonly initials: string;
  readonly moment: MomentDraft | null;
}

export interface Giving {
  readonly draft: Draft<GiveText>;
  readonly errors: readonly FieldError[];
  readonly busy: boolean;
  readonly place: MomentPlace;
  readonly give: () => Promise<void>;
}

export interface GivingOf {
  readonly here: NoticeHere;
  readonly notice: NoticeRecord;
  readonly zone: string;
  readonly by: string | null;
}

const renewMs = 30_000;

/** The next worker who was not told, in the language that he or she reads. */
function nextText({ here: { owed, book }, notice }: GivingOf): GiveText {
  const { issued } = notice;
  const posted = issued.form === 'posted';
  const next = issued.workerIds.find((id) => owed.openIds.includes(id)) ?? null;
  const reads = book.people.get(next ?? '')?.language;
  const [first = 'en'] = issued.languages;
  return {
    workerId: posted ? everyone : next,
    how: posted ? 'posted' : null,
    place: issued.places[0] ?? '',
    language: reads !== undefined && issued.languages.includes(reads) ? reads : first,
    initials: '',
    moment: null,
  };
}

type Body = FactBody<'noticeGiven.v1'>;

/** The body of the fact; null, with a sentence at each field, when something stands in the way. */
function readGiven(read: FieldReader, text: GiveText, noticeId: string): Body | null {
  const workerId = read.chosen('worker', words.worker, text.workerId);
  const how = read.chosen('how', words.how, text.how);
  const language = read.chosen('language', words.language, text.language);
  const place = read.text('place', words.place, text.place, { optional: true });
  const initials = read.text('initials', words.initials, text.initials, { optional: true, most: 8 });
  const posted = workerId === everyone;
  if (posted && place === null) read.add('place', words.placeMissing);
  if (read.errors.length > 0 || workerId === null || how === null || language === null) return null;
  if (posted) return { noticeId, workerId: null, how, place, language, initials: null };
  return { noticeId, workerId, how, place: null, language, initials };
}

export function useGiving(of: GivingOf): Giving {
  const { notice, zone, by } = of;
  const now = useNow(renewMs);
  const draftKey = `notice:${notice.id}/give`;
  const draft = useDraft<GiveText>(draftKey, nextText(of));
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const place: MomentPlace = { zone, now, today: dayOf(now, zone) };

  const give = async () => {
    const text = draft.value;
    const read = fieldReader(partsWords);
    const body = readGiven(read, text, notice.id);
    const moment = text.moment === null ? null : parseMoment('moment', text.moment, place);
    setErrors([...read.errors, ...(moment?.kind === 'errors' ? moment.errors : [])]);
    if (body === null || moment?.kind === 'errors') return;
    const happened = moment?.happened ?? happenedNow(zone);
    const written = await writing.run([newFact('noticeGiven.v1', body, { happened, by })], { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { workerId: 'worker', place: 'place', initials: 'initials' }));
    if (written.kind === 'written') draft.clear();
  };
  return { draft, errors, busy: writing.state === 'saving', place, give };
}
