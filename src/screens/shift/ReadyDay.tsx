/**
 * Who is to wear what, as it was said the evening before or this morning: a tap leads to the form with all of it in place; whoever does
 * not wear one today is noted in two taps, and stays to do. Fetched only where a day was made ready.
 */
import { useState } from 'react';
import { namesIn } from '#findings/naming.ts';
import { type ReadyWearer, readyWearers } from '#findings/season/readyWearers.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuietAction } from '#parts/QuietAction.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { FactBody } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useRecordsNamed } from '#store/hooks/useRecordsNamed.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { newFact } from '#store/newFact.ts';
import { spacedDigits } from '#words/digits.ts';
import { tasksInWords } from '#words/groupInWords.ts';
import { missedKinds, en as planWords } from '#words/planScreen.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/tomorrowScreen.ts';
import type { ShiftDay } from './useShift.ts';

const words = en.ready;
const missedWords = planWords.slot.missed;

export function ReadyDay({ day }: { readonly day: ShiftDay }) {
  const { book, place } = day;
  const { shift } = place;
  const wearers = readyWearers(book, shift.id);
  const plans = useRecordsNamed(wearers.flatMap(({ planId }) => (planId === null ? [] : [`plan:${planId}`])))?.plans;
  const missedOf = ({ planId, workerId }: ReadyWearer) =>
    plans?.get(planId ?? '')?.missed.findLast((one) => one.workerId === workerId && one.workOn === shift.workOn);
  const name = ({ workerId }: ReadyWearer): string => book.people.get(workerId)?.name ?? '';
  const open = wearers.filter((wearer) => missedOf(wearer) === undefined);
  return (
    <>
      <Lines heading={words.heading}>
        {open.map((wearer) => (
          <Line
            key={wearer.workerId}
            to={`/shift/${shift.id}/fit?wearer=${wearer.workerId}`}
            detail={words.detail(
              tasksInWords(wearer.taskIds, namesIn(book)),
              wearer.sampleNumber === null ? null : spacedDigits(wearer.sampleNumber),
            )}
            end={<StandingMark standing="due" />}
          >
            {words.line(name(wearer), book.pumps.get(wearer.pumpId ?? '')?.serial ?? null)}
          </Line>
        ))}
        {wearers.map((wearer) => {
          const missed = missedOf(wearer);
          return missed === undefined ? null : (
            <Line key={`${wearer.workerId} missed`} to={`/plan/${wearer.planId}`}>
              {words.missed(name(wearer), missedWords[missed.because])}
            </Line>
          );
        })}
        <Line to={`/tomorrow/${shift.id}`}>{words.again}</Line>
      </Lines>
      {open
        .filter(({ planId }) => planId !== null)
        .map((wearer) => (
          <NotToday key={wearer.workerId} wearer={wearer} name={name(wearer)} day={day} />
        ))}
    </>
  );
}

interface NotTodayProps {
  readonly wearer: ReadyWearer;
  readonly name: string;
  readonly day: ShiftDay;
}

/** The first tap opens the reasons, the second one is the entry. */
function NotToday({ wearer, name, day: { place, by } }: NotTodayProps) {
  const [open, setOpen] = useState(false);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const note = async (because: FactBody<'plannedDayMissed.v1'>['because']) => {
    const { planId, workerId } = wearer;
    if (planId === null) return;
    const body = { planId, workerId, workOn: place.shift.workOn, because, remark: null };
    const written = await writing.run([
      newFact('plannedDayMissed.v1', body, { happened: happenedNow(place.zone), by }),
    ]);
    if (written !== null) setErrors(notWritten(written));
  };
  if (!open)
    return (
      <div>
        <QuietAction onClick={() => setOpen(true)}>{words.notNowOf(name)}</QuietAction>
      </div>
    );
  return (
    <>
      <ErrorSummary errors={errors} />
      <Lines heading={words.notNowOf(name)}>
        {missedKinds.map((kind) => (
          <Line key={kind} onClick={() => void note(kind)}>
            {missedWords[kind]}
          </Line>
        ))}
        <Line onClick={() => setOpen(false)}>{words.leaveOut}</Line>
      </Lines>
    </>
  );
}
