/**
 * The worker, with the supervisor's phone in hand, before entering; in the worker's own language. Afterwards the fitting points are
 * ticked, the right to watch was offered, and there are initials, or *asked and declined*, or *put on by self*.
 */
import { useState } from 'react';
import { Page } from '#parts/Page.tsx';
import type { Book, SampleRecord } from '#records/book.ts';
import { useSampleBook } from '#store/hooks.ts';
import { en, es } from '#words/worker.ts';
import { FittingForm } from './FittingForm.tsx';
import { FittingKept } from './FittingKept.tsx';
import { LanguageSwitch } from './LanguageSwitch.tsx';

export function WorkerPage({ sampleId = '' }: { readonly sampleId?: string }) {
  const book = useSampleBook(sampleId);
  if (book === undefined) return null;
  const sample = book?.samples.get(sampleId);
  if (!book || !sample)
    return (
      <Page heading={en.supervisor} back="/">
        <p>{en.noSample}</p>
      </Page>
    );
  return <InLanguage book={book} sample={sample} />;
}

function InLanguage({ book, sample }: { readonly book: Book; readonly sample: SampleRecord }) {
  const worker = book.people.get(sample.workerId ?? '');
  const [language, setLanguage] = useState(worker?.language ?? 'en');
  const words = language === 'es' ? es : en;
  const shared = { book, sample, words, language, workerName: worker?.name ?? '' };
  const languages = <LanguageSwitch label={words.language} language={language} onChange={setLanguage} />;
  return sample.fitting === null ? (
    <FittingForm {...shared} languages={languages} />
  ) : (
    <FittingKept {...shared} languages={languages} />
  );
}
