/** Blank forms for a shift on paper: for which site, how many, in which languages. */
import { useState } from 'react';
import { Checklist } from '#parts/Checklist.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { HandedOut } from '#parts/HandedOut.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { SiteRecord } from '#records/book.ts';
import type { BookMeta } from '#store/bookMeta.ts';
import { useDraft } from '#store/hooks.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/printPapers.ts';
import styles from './papers.module.css';
import { type PaperSize, usePaper } from './usePaper.ts';

const words = en.form;
/** Stands for a form whose site is left open. */
const anySite = '-';
type FormLanguage = 'en' | 'es';

interface FormText {
  readonly siteId: string;
  readonly sheets: string;
  readonly languages: readonly FormLanguage[];
}

export interface BlankFormProps {
  readonly meta: BookMeta;
  readonly sites: readonly SiteRecord[];
  readonly paper: PaperSize;
}

const countOf = (typed: string): number | null => (/^(?:[1-9]|1\d|20)$/.test(typed.trim()) ? Number(typed) : null);

export function BlankForm({ meta, sites, paper }: BlankFormProps) {
  const draft = useDraft<FormText>('book/blankForm', { siteId: anySite, sheets: '1', languages: ['en', 'es'] });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const text = draft.value;
  const siteName = sites.find(({ id }) => id === text.siteId)?.name ?? null;
  const form = usePaper(meta, {
    name: words.fileName,
    of: JSON.stringify([text, paper, siteName]),
    make: async (occasion, fonts) => {
      const { makePaperFormPdf } = await import('#documents/paperFormPdf.ts');
      const { languages } = text;
      const sheetsCount = countOf(text.sheets) ?? 1;
      return (await makePaperFormPdf({ ...occasion, paper, fonts, languages, siteName, workOn: null, sheetsCount }))
        .bytes;
    },
  });
  const submit = () => {
    const read = fieldReader(partsWords);
    if (countOf(text.sheets) === null) read.add('sheets', words.sheetsBad);
    if (text.languages.length === 0) read.add('languages', words.languagesMissing);
    setErrors(read.errors);
    if (read.errors.length === 0) void form.handOut();
  };
  return (
    <section className={styles.section}>
      <h2>{words.heading}</h2>
      <ErrorSummary errors={errors} />
      <p>{words.text}</p>
      <SelectField
        name="formSite"
        label={words.site}
        options={[
          { value: anySite, label: words.anySite },
          ...sites.map(({ id, name }) => ({ value: id, label: name })),
        ]}
        value={text.siteId}
        onChange={(siteId) => draft.set({ ...text, siteId })}
      />
      <TextField
        name="sheets"
        label={words.sheets}
        kind="digits"
        value={text.sheets}
        onChange={(sheets) => draft.set({ ...text, sheets })}
        error={errorOf(errors, 'sheets')}
      />
      <Checklist<FormLanguage>
        name="languages"
        label={words.languages}
        options={[
          { value: 'en', label: words.languageNames.en },
          { value: 'es', label: words.languageNames.es },
        ]}
        value={text.languages}
        onChange={(languages) => draft.set({ ...text, languages })}
        error={errorOf(errors, 'languages')}
      />
      <div>
        <QuietAction busy={form.state === 'making'} onClick={submit}>
          {form.state === 'making' ? en.making : words.action}
        </QuietAction>
      </div>
      <HandedOut state={form.state} outcome={form.outcome} />
      <Lines>
        <Line to="/key-in">{words.keyIn}</Line>
      </Lines>
    </section>
  );
}
