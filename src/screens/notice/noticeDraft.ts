/** What is typed for a notice, as typed, and how it is read. Whom it stands for is preset; leaving somebody out needs a reason. */
import type { NoticeOwed } from '#findings/duties/telling/notice.ts';
import type { FieldReader } from '#parts/fieldReader.ts';
import type { Book } from '#records/book.ts';
import { en as words } from '#words/noticeScreen.ts';

export type PaperLanguage = 'en' | 'es';

export interface NoticeText {
  /** Of those it stands for, whom it leaves out. */
  readonly leftOut: readonly string[];
  readonly added: readonly string[];
  readonly whyLeftOut: string;
  readonly form: 'inWriting' | 'posted' | null;
  readonly places: string;
  readonly shownAs: 'name' | 'identifier' | null;
  readonly languages: readonly PaperLanguage[];
  readonly corrective: string;
  readonly correctiveEs: string;
  readonly questionsTo: string;
  readonly whyRevised: string;
  readonly paper: 'letter' | 'a4';
}

export const emptyNotice = (holderName: string | null): NoticeText => ({
  leftOut: [],
  added: [],
  whyLeftOut: '',
  form: null,
  places: '',
  shownAs: null,
  languages: ['en', 'es'],
  corrective: '',
  correctiveEs: '',
  questionsTo: holderName ?? '',
  whyRevised: '',
  paper: 'letter',
});

export const workersOf = ({ affectedIds }: NoticeOwed, { leftOut, added }: NoticeText): readonly string[] => [
  ...affectedIds.filter((id) => !leftOut.includes(id)),
  ...added.filter((id) => !affectedIds.includes(id)),
];

export const placesOf = ({ places }: Pick<NoticeText, 'places'>): readonly string[] =>
  places
    .split('\n')
    .map((place) => place.trim())
    .filter((place) => place !== '');

export const namesOf = (ids: readonly string[], book: Book): readonly string[] =>
  ids.map((id) => book.people.get(id)?.name ?? '').filter((name) => name !== '');

export interface ReadNotice {
  readonly workerIds: readonly string[];
  readonly form: 'inWriting' | 'posted';
  readonly places: readonly string[];
  readonly shownAs: 'name' | 'identifier';
  readonly languages: readonly PaperLanguage[];
  readonly corrective: { readonly en: string; readonly es: string | null } | null;
  readonly questionsTo: string | null;
  readonly why: string | null;
}

export interface Around {
  readonly owed: NoticeOwed;
  readonly book: Book;
  readonly revision: string;
}

/** Who is left out for whom it stands: said why, or refused. */
function readWhy(read: FieldReader, text: NoticeText, { owed, book, revision }: Around): string | null {
  const out = owed.affectedIds.filter((id) => text.leftOut.includes(id));
  const label = words.who.leftOut(namesOf(out, book));
  const whyOut = read.text('whyLeftOut', label, text.whyLeftOut, { optional: true, most: 300 });
  if (out.length > 0 && whyOut === null) read.add('whyLeftOut', words.who.leftOutMissing);
  const whyRevised = read.text('whyRevised', words.whyRevised, text.whyRevised, { optional: true, most: 300 });
  if (revision !== '1' && whyRevised === null) read.add('whyRevised', words.whyRevisedMissing);
  const why = [out.length > 0 ? whyOut : null, revision === '1' ? null : whyRevised].filter((part) => part !== null);
  return why.length === 0 ? null : why.join(' ');
}

/** Everyone must be able to recognize the own result, and read it. */
function readPeople(read: FieldReader, text: NoticeText, workerIds: readonly string[], book: Book): void {
  if (workerIds.length === 0) read.add('workers', words.who.none);
  const people = workerIds.map((id) => book.people.get(id)).filter((person) => person !== undefined);
  const unnumbered = people.filter(({ identifier }) => !identifier).map(({ name }) => name);
  if (text.shownAs === 'identifier' && unnumbered.length > 0) read.add('shownAs', words.noIdentifier(unnumbered));
  if (text.languages.length === 0) read.add('languages', words.languages.missing);
  for (const language of ['en', 'es'] as const) {
    const readers = people.filter((person) => person.language === language).map(({ name }) => name);
    if (text.languages.length > 0 && !text.languages.includes(language) && readers.length > 0)
      read.add('languages', words.languages.lacks(readers, language));
  }
}

function readCorrective(read: FieldReader, text: NoticeText, { owed }: Around): ReadNotice['corrective'] {
  if (!owed.correctiveActionNeeded) return null;
  const en = read.text('corrective', words.corrective.label, text.corrective, { optional: true, most: 2000 });
  const es = read.text('correctiveEs', words.corrective.labelEs, text.correctiveEs, { optional: true, most: 2000 });
  if (en === null && !read.errors.some(({ field }) => field === 'corrective'))
    read.add('corrective', words.corrective.missing);
  return en === null ? null : { en, es };
}

/** null, with a sentence at each field, when something stands in the way. */
export function readNotice(read: FieldReader, text: NoticeText, around: Around): ReadNotice | null {
  const workerIds = workersOf(around.owed, text);
  readPeople(read, text, workerIds, around.book);
  const why = readWhy(read, text, around);
  const form = read.chosen('form', words.form.label, text.form);
  const places = text.form === 'posted' ? placesOf(text) : [];
  if (text.form === 'posted' && places.length === 0) read.add('places', words.placesMissing);
  const shownAs = read.chosen('shownAs', words.shownAs.label, text.shownAs);
  const corrective = readCorrective(read, text, around);
  const questionsTo = read.text('questionsTo', words.questionsTo, text.questionsTo, { optional: true });
  if (read.errors.length > 0 || form === null || shownAs === null) return null;
  return { workerIds, form, places, shownAs, languages: text.languages, corrective, questionsTo, why };
}
