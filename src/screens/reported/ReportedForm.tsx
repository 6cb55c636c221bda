/** The form for a reported measurement: in the order in which a report is read. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { Book, ReportedRecord } from '#records/book.ts';
import { deviceZone, happenedNow, newId } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { en as words } from '#words/reported.ts';
import { notWritten } from '#words/saving.ts';
import { AverageLines } from './AverageLines.tsx';
import { draftOf, emptyReported, type ReportedDraft, readCorrection, readNew } from './reportedDraft.ts';
import { WhoLines } from './WhoLines.tsx';
import { WorkLines } from './WorkLines.tsx';

export interface ReportedFormProps {
  readonly book: Book;
  /** null: a new one. */
  readonly reported: ReportedRecord | null;
  readonly today: string;
  readonly by: string | null;
  readonly back: string;
}

/** What every group of lines of this form is handed. */
export interface LinesOfReport {
  readonly draft: ReportedDraft;
  readonly onChange: (part: Partial<ReportedDraft>) => void;
  readonly errors: readonly FieldError[];
  readonly book: Book;
  readonly today: string;
}

export function ReportedForm({ book, reported, today, by, back }: ReportedFormProps) {
  const draftKey = reported === null ? 'book/reported' : `${reported.key}/correct`;
  const draft = useDraft<ReportedDraft>(draftKey, reported === null ? emptyReported : draftOf(reported));
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const typed = draft.value;
  const lines: LinesOfReport = {
    draft: typed,
    onChange: (part) => draft.set({ ...typed, ...part }),
    errors,
    book,
    today,
  };

  const submit = async () => {
    const entry = { happened: happenedNow(book.sites.get(typed.siteId)?.zone ?? deviceZone()), by };
    const read =
      reported === null ? readNew(typed, newId(), today, entry) : readCorrection(typed, reported, today, entry);
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const written = await writing.run(read.facts, { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { why: 'why', remark: 'remark', fromName: 'fromName' }));
    if (written.kind === 'written') go(back, { replace: true });
  };

  return (
    <Page
      heading={reported === null ? words.addHeading : words.correctHeading}
      over={words.mark}
      back={back}
      aside={<AverageLines {...lines} />}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {reported === null ? words.save : words.correct}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      {reported !== null && (
        <>
          <p>{words.correctIntro}</p>
          <TextField
            name="why"
            label={words.fields.why}
            rows={2}
            value={typed.why}
            onChange={(why) => draft.set({ ...typed, why })}
            error={errorOf(errors, 'why')}
          />
        </>
      )}
      <WhoLines {...lines} />
      <WorkLines {...lines} />
      {reported !== null && (
        <Lines>
          <Line to={`/story/${encodeURIComponent(reported.key)}`}>{words.story}</Line>
        </Lines>
      )}
    </Page>
  );
}
