/** Where a sample stands, as a sentence and a mark. */
import { dayOf, wallTimeOf } from '#core/calendar.ts';
import type { Standing } from '#parts/StandingMark.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import { formatDayFrom } from '#words/quantity.ts';
import { en as words } from '#words/samples.ts';

export interface Where {
  readonly zone: string;
  readonly today: string;
  readonly box: BoxRecord | undefined;
  readonly laboratory: string;
}

export interface SampleStanding {
  readonly mark: Standing;
  readonly text: string;
}

const text = words.standing;

function inBox(box: BoxRecord, { zone, today, laboratory }: Where): SampleStanding {
  if (box.handedOver === null) return { mark: 'due', text: text.packed };
  return { mark: 'waiting', text: text.away(laboratory, formatDayFrom(today, dayOf(box.handedOver.at, zone))) };
}

function onSite(sample: SampleRecord, { zone, today }: Where): SampleStanding {
  const local = (at: string): string => {
    const { day, time } = wallTimeOf(at, zone);
    return day === today ? time : `${time} ${formatDayFrom(today, day)}`;
  };
  if (sample.sampleKind === 'blank') return { mark: 'due', text: text.opened };
  if (sample.putOn === null) return { mark: 'due', text: text.prepared };
  if (sample.stopped === null) return { mark: 'waiting', text: text.onWorker(local(sample.putOn.at)) };
  if (sample.sealed === null) return { mark: 'due', text: text.stopped(local(sample.stopped.at)) };
  return { mark: 'due', text: text.sealed };
}

export function sampleStanding(sample: SampleRecord, where: Where): SampleStanding {
  const result = sample.results.at(-1);
  if (sample.voided !== null)
    return { mark: 'void', text: (result ? text.voidWithResult : text.void)(sample.voided.why) };
  if (result) return { mark: 'done', text: text.result(result.reportNumber) };
  return where.box ? inBox(where.box, where) : onSite(sample, where);
}
