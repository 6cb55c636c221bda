/** In writing: whom else a measurement stands for, beside those of the same work on the same day. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { surelyStandsFor } from '#findings/duties/groups/standsFor.ts';
import { Checklist } from '#parts/Checklist.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone, happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/groups.ts';
import { notWritten } from '#words/saving.ts';
import { averageText } from './groupText.ts';

const words = en.stands;

export interface StandsTooProps {
  readonly book: Book;
  readonly found: DutiesOfBook;
  /** A sampled day: what was reported stands for whom its report names. */
  readonly measurementId: string;
  readonly by: string | null;
}

const none: readonly string[] = [];

export function StandsToo({ book, found, measurementId, by }: StandsTooProps) {
  const draftKey = `workday:${measurementId}/stands`;
  const draft = useDraft<readonly string[]>(draftKey, none);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const [, go] = useLocation();
  const measurement = found.measurements.get(measurementId);
  if (measurement === undefined)
    return (
      <Page heading={words.heading} back="/groups" backText={en.back}>
        <p>{words.gone}</p>
      </Page>
    );
  const back = `/groups?group=${encodeURIComponent(measurement.groupKey)}`;
  const already = surelyStandsFor(
    measurement,
    book,
    [...found.groups.values()].flatMap(({ days }) => days),
  );
  const others = [...book.people.values()]
    .filter(({ id }) => !already.includes(id))
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
  const nameOf = (id: string): string => book.people.get(id)?.name ?? en.someone;

  const submit = async () => {
    const workerIds = draft.value.filter((id) => !already.includes(id));
    if (workerIds.length === 0) return setErrors([{ field: 'who', text: words.none }]);
    const body = { workdayId: measurementId, workerIds };
    const fact = newFact('representsStated.v1', body, { happened: happenedNow(deviceZone()), by });
    const written = await writing.run([fact], { draftKey });
    if (written === null) return;
    setErrors(notWritten(written, { workerIds: 'who' }));
    if (written.kind === 'written') go(back, { replace: true });
  };

  return (
    <Page
      heading={words.heading}
      over={en.measurement(nameOf(measurement.workerId ?? ''), measurement.workOn, averageText(measurement))}
      back={back}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {words.save}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <Lines heading={words.already}>
        {already.map((id) => (
          <Line key={id}>{nameOf(id)}</Line>
        ))}
      </Lines>
      {others.length === 0 ? (
        <p>{words.nobody}</p>
      ) : (
        <Checklist
          name="who"
          label={words.who}
          options={others.map(({ id, name, employer }) => ({ value: id, label: name, hint: employer ?? undefined }))}
          value={draft.value}
          onChange={draft.set}
          error={errorOf(errors, 'who')}
        />
      )}
    </Page>
  );
}
