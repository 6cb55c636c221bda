/**
 * Who is to wear what, as it was said the evening before or this morning: a tap leads to the form with all of it in place; whoever does
 * not wear one today is noted in two taps, and stays to do. Fetched only where a day was made ready.
 */
import { useState } from 'react';
import { namesIn } from '#findings/naming.ts';
import type { ReadyWearer } from '#findings/season/readyWearers.ts';
import { ErrorSummary, type FieldError } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { StandingMark } from '#parts/StandingMark.tsx';
import type { FactBody } from '#records/fact.ts';
import { happenedNow } from '#store/device.ts';
import { useWrite } from '#store/hooks/useWrite.ts';
import { newFact } from '#store/newFact.ts';
import { spacedDigits } from '#words/digits.ts';
import { tasksInWords } from '#words/groupInWords.ts';
import { missedKinds, en as planWords } from '#words/planScreen.ts';
import { notWritten } from '#words/saving.ts';
import { en } from '#words/tomorrowScreen.ts';
import type { ShiftDay } from './useShift.ts';
import { useStillToWear } from './useStillToWear.ts';

const words = en.ready;
const missedWords = planWords.slot.missed;

export function ReadyDay({ day }: { readonly day: ShiftDay }) {
  const { book, place } = day;
  const { shift } = place;
  const still = useStillToWear(day);
  const name = ({ workerId }: ReadyWearer): string => book.people.get(workerId)?.name ?? '';
  if (still === undefined) return null;
  return (
    <>
      <Lines heading={words.heading}>
        {still.wearers.map((wearer) => (
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
        {still.notToday.map(({ wearer, missed }) => (
          <Line key={`${wearer.workerId} missed`} to={`/plan/${wearer.planId}`}>
            {words.missed(name(wearer), missedWords[missed.because])}
          </Line>
        ))}
        <Line to={`/tomorrow/${shift.id}`}>{words.again}</Line>
      </Lines>
      <NotToday wearers={still.wearers} nameOf={name} day={day} />
    </>
  );
}

interface NotTodayProps {
  readonly wearers: readonly ReadyWearer[];
  readonly nameOf: (wearer: ReadyWearer) => string;
  readonly day: ShiftDay;
}

/** The first tap opens the reasons, the second one is the entry. */
function NotToday({ wearers, nameOf, day: { place, by } }: NotTodayProps) {
  const [openId, setOpenId] = useState<string | null>(null);
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const writing = useWrite();
  const note = async ({ planId, workerId }: ReadyWearer, because: FactBody<'plannedDayMissed.v1'>['because']) => {
    if (planId === null) return;
    const body = { planId, workerId, workOn: place.shift.workOn, because, remark: null };
    const entry = { happened: happenedNow(place.zone), by };
    const written = await writing.run([newFact('plannedDayMissed.v1', body, entry)]);
    if (written === null) return;
    setErrors(notWritten(written));
    setOpenId(null);
  };
  const chosen = wearers.find(({ workerId }) => workerId === openId);
  if (wearers.length === 0) return null;
  return (
    <>
      <ErrorSummary errors={errors} />
      {chosen === undefined ? (
        <Lines heading={words.notNow}>
          {wearers.map((wearer) =>
            wearer.planId === null ? (
              <Line key={wearer.workerId} to={`/tomorrow/${place.shift.id}`} detail={words.notPlanned}>
                {nameOf(wearer)}
              </Line>
            ) : (
              <Line key={wearer.workerId} onClick={() => setOpenId(wearer.workerId)}>
                {nameOf(wearer)}
              </Line>
            ),
          )}
        </Lines>
      ) : (
        <Lines heading={words.notNowOf(nameOf(chosen))}>
          {missedKinds.map((kind) => (
            <Line key={kind} onClick={() => void note(chosen, kind)}>
              {missedWords[kind]}
            </Line>
          ))}
          <Line onClick={() => setOpenId(null)}>{words.leaveOut}</Line>
        </Lines>
      )}
    </>
  );
}
