/** The supervisor at the end of the day: eight taps on how it was. A later job is compared by these. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { type ChosenConditions, ConditionChoices } from '#parts/ConditionChoices.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { fieldReader } from '#parts/fieldReader.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { FactBody } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { useDraft, useShifts } from '#store/hooks.ts';
import { newFact } from '#store/newFact.ts';
import { conditionKeys, en as words } from '#words/conditions.ts';
import { en as partsWords } from '#words/parts.ts';
import { formatDay } from '#words/quantity.ts';
import { notWritten } from '#words/saving.ts';
import { DayPictures } from './DayPictures.tsx';
import { type ShiftDay, useShift } from './useShift.ts';

type Body = FactBody<'conditionsNoted.v1'>;
interface ConditionsDraft {
  readonly chosen: ChosenConditions;
  readonly remark: string;
}

export function Conditions({ shiftId = '' }: { readonly shiftId?: string }) {
  const day = useShift(shiftId);
  if (day === undefined) return null;
  if (day === null)
    return (
      <Page heading={words.heading} back="/">
        <p>{words.noShift}</p>
      </Page>
    );
  return <ConditionsForm day={day} />;
}

const chosenOf = (body: Body | null): ChosenConditions =>
  body === null ? {} : Object.fromEntries(conditionKeys.map((key) => [key, body[key]]));

const earlierShown = 12;

/** The last day at this site that has its conditions written down. */
function useEarlier({ place }: ShiftDay) {
  const shifts = useShifts(earlierShown) ?? [];
  return shifts.find(
    ({ id, siteId, workOn, conditions }) =>
      id !== place.shift.id && siteId === place.shift.siteId && workOn <= place.shift.workOn && conditions !== null,
  );
}

function ConditionsForm({ day }: { readonly day: ShiftDay }) {
  const { place, by } = day;
  const { shift } = place;
  const name = `shift:${shift.id}/conditions`;
  const draft = useDraft<ConditionsDraft>(name, {
    chosen: chosenOf(shift.conditions),
    remark: shift.conditions?.remark ?? '',
  });
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const [, go] = useLocation();
  const writing = useWrite();
  const earlier = useEarlier(day);
  const { chosen, remark } = draft.value;

  const submit = async () => {
    const read = fieldReader(partsWords);
    for (const key of conditionKeys) read.chosen(key, words.labels[key], chosen[key]);
    const more = read.text('remark', words.remark, remark, { optional: true, most: 2000 });
    setErrors(read.errors);
    if (read.errors.length > 0) return;
    const body = { shiftId: shift.id, ...chosen, remark: more } as Body;
    const fact = newFact('conditionsNoted.v1', body, { happened: happenedNow(place.zone), by });
    const written = await writing.run([fact], { draftKey: name });
    if (written === null) return;
    if (written.kind !== 'written') return setErrors(notWritten(written));
    go(`/shift/${shift.id}`);
  };

  return (
    <Page
      heading={words.heading}
      over={place.site.name}
      back={`/shift/${shift.id}`}
      action={
        <MainAction busy={writing.state === 'saving'} onClick={() => void submit()}>
          {shift.conditions === null ? words.save : words.saveAgain}
        </MainAction>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.hint}</p>
      {earlier !== undefined && (
        <div>
          <QuietAction onClick={() => draft.set({ chosen: chosenOf(earlier.conditions), remark })}>
            {words.same(formatDay(earlier.workOn, 'en', 'short'))}
          </QuietAction>
        </div>
      )}
      <ConditionChoices chosen={chosen} onChange={(picked) => draft.set({ chosen: picked, remark })} errors={errors} />
      <TextField
        name="remark"
        label={words.remark}
        rows={2}
        value={remark}
        onChange={(text) => draft.set({ chosen, remark: text })}
        error={errorOf(errors, 'remark')}
      />
      <DayPictures day={day} />
    </Page>
  );
}
