/** Tomorrow's sheet as values: what is printed and what is attached to the PDF. Names are put in here, as the reader may see them. */
import { dayOf } from '#core/calendar.ts';
import { dutyNames } from '#findings/duties/list/calendar.ts';
import { namesIn } from '#findings/naming.ts';
import type { Tomorrow, TomorrowCaution, TomorrowPump } from '#findings/season/tomorrow.ts';
import type { Book } from '#records/book.ts';
import { byWhen, whatToDo } from '#words/duties.ts';
import { formatList } from '#words/quantity.ts';
import { tomorrowCautionText } from '#words/tomorrowCautions.ts';
import { type Occasion, occasionOf, type Printing } from './occasion.ts';

export interface TomorrowPumpText {
  readonly serial: string;
  /** Day at the site on which it was last charged to the full. */
  readonly chargedOn: string | null;
}

export interface TomorrowRow {
  /** null = room to write. */
  readonly who: string | null;
  readonly tasks: readonly string[];
  readonly pump: TomorrowPumpText | null;
  readonly lotNumber: string | null;
  readonly sampleNumber: string | null;
  /** Minutes on the worker until a result below the reporting limit can show anything. */
  readonly leastMin: number | null;
}

export interface TomorrowValues extends Occasion {
  readonly tomorrowFormat: 'tomorrow.v1';
  readonly siteName: string;
  readonly workOn: string;
  readonly asked: Tomorrow['asked'];
  readonly rows: readonly TomorrowRow[];
  readonly sparePumps: readonly TomorrowPumpText[];
  readonly spareCassettesCount: number;
  readonly spareNumbers: readonly string[];
  readonly blanksCount: number;
  readonly cassettesCount: number;
  readonly blankNumbers: readonly string[];
  readonly chargedBy: string | null;
  readonly meters: readonly { readonly serial: string; readonly dueOn: string | null }[];
  readonly remark: string | null;
  /** Sentences, as printed. */
  readonly cautions: readonly string[];
  readonly duties: readonly string[];
}

export interface TomorrowInput extends Occasion, Printing {
  readonly tomorrow: Tomorrow;
  /** For names: the slice that the finding was made from. */
  readonly book: Book;
  /** By worker: minutes until a sample can prove anything, where a plan says flow and reporting limit. */
  readonly leastMinByWorker: ReadonlyMap<string, number>;
  readonly shownAs: 'name' | 'identifier';
}

/** One sentence for all workers whom the same caution is about. */
function cautionTexts(cautions: readonly TomorrowCaution[], nameOf: (id: string) => string): string[] {
  const groups = new Map<string, TomorrowCaution[]>();
  for (const one of cautions) {
    const key = JSON.stringify([one.key, one.params]);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    const people = [...new Set(group.flatMap(({ workerId }) => (workerId === null ? [] : [nameOf(workerId)])))];
    const whole = { ...first, workerId: people.length === 0 ? null : formatList(people) };
    return [tomorrowCautionText(whole, (shown) => shown)];
  });
}

/** 'Measure Ana Sash again …, by 4 December 2026.' */
const dutyTexts = ({ tomorrow: { duties }, book, shownAs }: TomorrowInput): string[] => {
  const names = dutyNames(book, shownAs === 'name' ? 'names' : 'identifiers');
  return duties.map((duty) => `${whatToDo(duty, names)}, ${byWhen(duty)}`);
};

export function tomorrowValues(input: TomorrowInput): TomorrowValues {
  const { tomorrow, book, shownAs, leastMinByWorker, zone } = input;
  const named = namesIn(book);
  const person = (id: string) => book.people.get(id)?.[shownAs] ?? null;
  // who has no identifier of the firm's is told by the work, never by a name that was not to be shown
  const mentioned = (id: string) => person(id) ?? '…';
  const siteZone = book.sites.get(tomorrow.siteId)?.zone ?? zone;
  const pumpText = ({ serial, chargedAt }: TomorrowPump): TomorrowPumpText => ({
    serial,
    chargedOn: chargedAt === null ? null : dayOf(chargedAt, siteZone),
  });
  return {
    tomorrowFormat: 'tomorrow.v1',
    ...occasionOf(input),
    siteName: named(tomorrow.siteId) ?? tomorrow.siteId,
    workOn: tomorrow.workOn,
    asked: tomorrow.asked,
    rows: tomorrow.wearers.map(({ workerId, taskIds, pump, lot, sampleNumber }) => ({
      who: person(workerId),
      tasks: taskIds.map((id) => named(id) ?? id),
      pump: pump && pumpText(pump),
      lotNumber: lot?.lotNumber ?? null,
      sampleNumber,
      leastMin: leastMinByWorker.get(workerId) ?? null,
    })),
    sparePumps: tomorrow.sparePumps.map(pumpText),
    spareCassettesCount: tomorrow.spareCassettesCount,
    spareNumbers: tomorrow.spareNumbers,
    blanksCount: tomorrow.blanks.count,
    cassettesCount: tomorrow.cassettesCount,
    blankNumbers: tomorrow.blankNumbers,
    chargedBy: tomorrow.chargedById === null ? null : person(tomorrow.chargedById),
    meters: tomorrow.meters.map(({ serial, dueOn }) => ({ serial, dueOn })),
    remark: tomorrow.remark,
    cautions: cautionTexts(tomorrow.cautions, mentioned),
    duties: dutyTexts(input),
  };
}
