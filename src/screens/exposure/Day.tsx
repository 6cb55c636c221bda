/**
 * One worker's day: the office with the result, or the supervisor the evening before it is there. Every minute is accounted for or said
 * to be unknown, each figure opens, and where the day stands is told in words and a shape. Afterwards nothing about the day is open.
 */
import { type ReactNode, useState } from 'react';
import { findWorkday, type Segment } from '#findings/workday.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { useRegisters, useWorkdayBook } from '#store/hooks.ts';
import { en as words } from '#words/exposure.ts';
import { formatDay } from '#words/quantity.ts';
import { DayPage } from './DayPage.tsx';
import { type DayOn, dayOn } from './dayOn.ts';
import { ExplainMinutes } from './ExplainMinutes.tsx';
import { Hours } from './Hours.tsx';
import { OtherWork } from './OtherWork.tsx';
import { RegularDay } from './RegularDay.tsx';

/** What of the day is being written down; null: the day itself is shown. */
export type Part = 'hours' | 'other' | 'regular' | Segment | null;

export function Day({ workdayId = '' }: { readonly workdayId?: string }) {
  const book = useWorkdayBook(workdayId);
  const registers = useRegisters();
  const [part, setPart] = useState<Part>(null);
  if (book === undefined || registers === undefined) return <Page heading={words.heading('')} />;
  if (book === null)
    return (
      <Page heading={words.noDay.heading} action={<MainAction to="/samples">{words.noDay.action}</MainAction>}>
        <p>{words.noDay.text}</p>
      </Page>
    );
  const finding = findWorkday(workdayId, book);
  const day = dayOn(workdayId, book, finding);
  const heading = words.heading(day.worker);
  const over = `${formatDay(finding.workOn, 'en', 'weekday')}${day.siteName === '' ? '' : `, ${day.siteName}`}`;
  if (part === null) return <DayPage day={day} heading={heading} over={over} onPart={setPart} />;
  return formOf(part, day, `${day.worker}, ${over}`, () => setPart(null));
}

function formOf(part: Exclude<Part, null>, day: DayOn, over: string, onDone: () => void): ReactNode {
  const shared = { day, over, onDone };
  if (part === 'hours') return <Hours {...shared} />;
  if (part === 'other') return <OtherWork {...shared} />;
  if (part === 'regular') return <RegularDay {...shared} />;
  return <ExplainMinutes segment={part} {...shared} />;
}
