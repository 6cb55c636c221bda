/**
 * The office, days later, report in hand, at a keyboard or a phone: the head of the report once, then a line for each cassette. Afterwards
 * each result stands in the book by itself, and the way leads on to the days they belong to.
 */
import { type KeyboardEvent, useState } from 'react';
import { dayOf } from '#core/calendar.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import { deviceZone, now } from '#store/device.ts';
import { useAwaitingResults, useBookMeta, useBoxes, useDraft, useRegisters } from '#store/hooks.ts';
import { en as words } from '#words/results.ts';
import { Awaiting } from './Awaiting.tsx';
import { FillFromBox } from './FillFromBox.tsx';
import { goToNextField } from './goToNextField.ts';
import { ReadRows } from './ReadRows.tsx';
import { ReportHead } from './ReportHead.tsx';
import { ResultRow } from './ResultRow.tsx';
import styles from './results.module.css';
import {
  changedRow,
  emptyReport,
  isBlankRow,
  type ResultsDraft,
  withBlankRow,
  withNumbers,
  withoutRow,
} from './resultsDraft.ts';
import { readAll, writeRow } from './saveResults.ts';
import { NothingWaits, Written } from './Written.tsx';

export function Results() {
  const today = dayOf(now(), deviceZone());
  const registers = useRegisters();
  const open = useAwaitingResults();
  const boxes = useBoxes();
  const meta = useBookMeta();
  const draft = useDraft<ResultsDraft>('book/results', { report: emptyReport(today), rows: withBlankRow([]) });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [busy, setBusy] = useState(false);
  const [allTheSame, setAllTheSame] = useState(false);
  const [written, setWritten] = useState<readonly SampleRecord[]>([]);
  if (registers === undefined || open === undefined || boxes === undefined) return <Page heading={words.heading} />;
  const awaiting = open.filter(({ sampleKind, stopped }) => sampleKind === 'blank' || stopped !== null);
  const { report, rows } = draft.value;
  const typedRows = rows.filter((row) => !isBlankRow(row));
  if (written.length > 0 && typedRows.length === 0)
    return <Written samples={written} registers={registers} onMore={() => setWritten([])} />;

  if (awaiting.length === 0 && typedRows.length === 0 && !allTheSame)
    return <NothingWaits onAllTheSame={() => setAllTheSame(true)} />;

  const submit = async () => {
    setBusy(true);
    const ready = await readAll(draft.value, today);
    const problems: FieldError[] = ready.kind === 'errors' ? [...ready.errors] : [];
    let left = rows;
    const done: SampleRecord[] = [];
    for (const one of ready.kind === 'ready' ? ready.rows : []) {
      const zone = registers.sites.byId.get(one.sample.siteId)?.zone ?? deviceZone();
      const failed = await writeRow(one, zone, meta?.holderPersonId ?? null);
      if (failed !== null) problems.push(...failed);
      else {
        left = withoutRow(left, one.row.key);
        done.push(one.sample);
        draft.set({ report, rows: left });
      }
    }
    setBusy(false);
    setErrors(problems);
    setWritten((before) => [...before, ...done]);
    if (ready.kind === 'ready' && problems.length === 0) draft.clear();
  };
  const put = (numbers: readonly string[], box: BoxRecord | null) => {
    const laboratoryId = box?.packed.laboratoryId ?? report.laboratoryId;
    const accreditation = report.accreditation || (registers.laboratories.byId.get(laboratoryId)?.accreditation ?? '');
    const methodId = report.methodId || (box?.packed.methodId ?? '');
    draft.set({ report: { ...report, laboratoryId, accreditation, methodId }, rows: withNumbers(rows, numbers) });
  };
  const keyed = new Set(typedRows.map(({ number }) => number.trim()));
  const onKeyDown = (event: KeyboardEvent<HTMLFormElement>) => {
    if (event.key === 'Enter' && goToNextField(event.currentTarget, event.target)) event.preventDefault();
  };

  return (
    <Page
      heading={words.heading}
      aside={
        awaiting.length > 0 && (
          <Awaiting awaiting={awaiting} registers={registers} keyed={keyed} onPut={(numbers) => put(numbers, null)} />
        )
      }
      action={
        <MainAction busy={busy} type="submit" form="results">
          {words.save(Math.max(1, typedRows.length))}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <FillFromBox awaiting={awaiting} boxes={boxes} registers={registers} keyed={keyed} onPut={put} />
      <form
        id="results"
        noValidate
        className={styles.form}
        onKeyDown={onKeyDown}
        onSubmit={(event) => {
          event.preventDefault();
          if (!busy) void submit();
        }}
      >
        <ReportHead
          value={report}
          onChange={(changed) => draft.set({ report: changed, rows })}
          errors={errors}
          laboratories={registers.laboratories.list}
          today={today}
        />
        <section className={styles.rows}>
          <h2>{words.rows.heading}</h2>
          <ReadRows keyed={keyed} onPut={(number) => put([number], null)} />
          {rows.map((row, at) => (
            <ResultRow
              key={row.key}
              row={row}
              line={at + 1}
              report={report}
              errors={errors}
              today={today}
              onChange={(part) => draft.set({ report, rows: changedRow(rows, row.key, part) })}
              onRemove={() => draft.set({ report, rows: withoutRow(rows, row.key) })}
            />
          ))}
        </section>
      </form>
    </Page>
  );
}
