/** The preview of a notice while it is being made, in each language that was chosen. Its values are those that the paper will have. */
import { useEffect, useState } from 'react';
import type { NoticeInput, NoticeValues } from '#documents/noticeValues.ts';
import { editions } from '#reference/editions.ts';
import { deviceZone, now } from '#store/device.ts';
import { appVersion } from '#store/version.ts';
import { en as words } from '#words/noticeScreen.ts';
import styles from './notice.module.css';
import { type NoticeText, placesOf, workersOf } from './noticeDraft.ts';
import type { NoticeHere } from './noticeHere.ts';
import { noticeInput } from './noticeInput.ts';
import { Sheet } from './Sheet.tsx';

type MakeValues = (input: NoticeInput) => NoticeValues;

export interface PreviewProps {
  readonly here: NoticeHere;
  readonly text: NoticeText;
}

/** Fetched with the papers: nothing of it is needed to show the form. */
function useMakeValues(): MakeValues | 'failed' | null {
  const [make, setMake] = useState<{ readonly values: MakeValues } | 'failed' | null>(null);
  useEffect(() => {
    let here = true;
    import('#documents/noticeValues.ts').then(
      ({ noticeValues }) => here && setMake({ values: noticeValues }),
      () => here && setMake('failed'),
    );
    return () => {
      here = false;
    };
  }, []);
  return make === null || make === 'failed' ? make : make.values;
}

const noFonts = { regular: new Uint8Array(), bold: new Uint8Array() };

/** As if it were made now; what is not filled in yet is left as the paper leaves it. */
function inputNow(here: NoticeHere, text: NoticeText): NoticeInput {
  const { book, owed } = here;
  const read = {
    workerIds: workersOf(owed, text),
    form: text.form ?? 'inWriting',
    places: placesOf(text),
    shownAs: text.shownAs ?? 'name',
    languages: text.languages,
    corrective: owed.correctiveActionNeeded ? { en: text.corrective, es: text.correctiveEs.trim() || null } : null,
    questionsTo: text.questionsTo.trim() || null,
    why: null,
  } as const;
  return {
    ...noticeInput(here, read),
    firmName: book.book?.firmName ?? '',
    practice: book.book?.practice ?? false,
    issuedInstant: now(),
    zone: here.zone ?? deviceZone(),
    heads: [],
    editions: { app: appVersion, ...editions() },
    paper: text.paper,
    fonts: noFonts,
  };
}

export function Preview({ here, text }: PreviewProps) {
  const make = useMakeValues();
  if (make === null) return null;
  return (
    <section className={styles.section}>
      <h2>{words.preview}</h2>
      {make === 'failed' ? (
        <p>{words.previewMissing}</p>
      ) : (
        text.languages.map((language) => (
          <Sheet key={language} values={make(inputNow(here, text))} language={language} />
        ))
      )}
    </section>
  );
}
