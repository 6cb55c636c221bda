/** What they must wear and why; for the crew in their language; beside it how long it lasts and whose rule it is. */
import { addDays, dayOf } from '#core/calendar.ts';
import { findFirstDay } from '#findings/duties/protecting/firstDay.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { stateByCode } from '#reference/states.ts';
import { deviceZone, now } from '#store/device.ts';
import { useBookMeta, useBookState } from '#store/hooks.ts';
import { formatDay } from '#words/quantity.ts';
import { en } from '#words/wear.ts';
import { Conditions, RespiratorLines } from './Choices.tsx';
import { Crew } from './Crew.tsx';
import { Factor } from './Factor.tsx';
import { Governs } from './Governs.tsx';
import { PresumedLevel } from './PresumedLevel.tsx';
import { type WearAnswers, wearPath } from './wearAddress.ts';

const words = en.answer;

export function Answer({ answers }: { readonly answers: WearAnswers }) {
  const isOpen = useBookState().kind === 'open';
  const ownPelUgPerM3 = useBookMeta()?.book?.limits?.ownPelUgPerM3 ?? null;
  const on = addDays(dayOf(now(), deviceZone()), 1);
  const { stateCode, taskIds, paint, shiftHours } = answers;
  const first = findFirstDay({ stateCode, taskIds, on, shiftHours, paintLead: paint, ownPelUgPerM3 });
  const state = stateByCode(stateCode)?.name ?? stateCode;
  return (
    <Page
      heading={words.heading}
      over={words.over(state, formatDay(on, 'en', 'weekday'))}
      back={wearPath(answers, false)}
      backText={words.change}
      action={<MainAction to={isOpen ? '/' : '/start'}>{isOpen ? words.measure : words.begin}</MainAction>}
      aside={<Governs first={first} state={state} />}
    >
      <PresumedLevel first={first} />
      <Factor first={first} />
      {first.advice.choices.length > 0 && (
        <>
          <RespiratorLines advice={first.advice} />
          <Conditions first={first} />
        </>
      )}
      {first.sign !== null && (
        <Lines>
          <Line detail={words.signText}>{words.sign}</Line>
        </Lines>
      )}
      <Crew first={first} />
    </Page>
  );
}
