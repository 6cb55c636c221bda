/**
 * A season before the two days of the practice book: the library indoors, a footbridge outdoors. Written through the same door as
 * anything else, in few writes; what a person must know of to say (a void that stays void, papers, duties done) comes after the rest.
 */
import { daysBetween } from '#core/calendar.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { findDuties } from '#findings/duties/findDuties.ts';
import type { NewFact } from '#records/fact.ts';
import { editions } from '#reference/editions.ts';
import { occasionHere } from '#store/issuing.ts';
import { theSession } from '#store/session.ts';
import { wholeBook } from '#store/wholeBook.ts';
import { type FailedWhy, type WriteOptions, write } from '#store/write.ts';
import { practice } from '#words/practice.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { Began, PracticeIds } from '../practiceBook.ts';
import type { PracticeClock } from '../practiceClock.ts';
import { planGivenUp, seasonAhead } from './seasonAhead.ts';
import { type SeasonClock, seasonClock } from './seasonClock.ts';
import { chargedPumps, seasonGear, seasonGearEntries } from './seasonGear.ts';
import { type SeasonIds, seasonIds } from './seasonIds.ts';
import { pricesAnew, seasonMoney } from './seasonMoney.ts';
import { seasonPapers } from './seasonPapers.ts';
import { measuredShifts, otherShifts, restingShift } from './seasonPlan.ts';
import { seasonRegisters } from './seasonRegisters.ts';
import { seasonReports, seasonRevised } from './seasonReports.ts';
import { seasonShift } from './seasonShift.ts';
import { seasonTomorrow } from './seasonTomorrow.ts';

/** The first weeks of the season ended so many days ago. */
const firstWeeksEndDaysAgo = 100;

interface Put {
  readonly why: FailedWhy | null;
  readonly factIds: readonly string[];
}

async function put(facts: readonly NewFact[], options: WriteOptions = {}): Promise<Put> {
  const written = await write(facts, options);
  if (written.kind === 'written') return { why: null, factIds: written.factIds };
  if (written.kind === 'refused') console.error(written.refusals);
  return { why: written.kind === 'failed' ? written.why : 'unknown', factIds: [] };
}

/** Its void was found wet, its result is high: it stays void and keeps what it shows. */
function staysVoid(facts: readonly NewFact[], factIds: readonly string[], { at, fact }: SeasonClock): NewFact[] {
  const place = facts.findIndex(({ kind }) => kind === 'sampleVoided.v1');
  const voided = facts[place];
  if (voided?.kind !== 'sampleVoided.v1') return [];
  const { sampleId } = voided.body;
  const known = facts.flatMap((one, index) =>
    one.kind === 'resultReceived.v1' && one.body.sampleId === sampleId ? [factIds[index] ?? ''] : [],
  );
  const review = fact(at(48, '11:00'), 'voidReviewed.v1', {
    ...{ sampleId, voidFactId: factIds[place] ?? '', stands: true, knew: known },
  });
  return [{ ...review, why: words.staysVoid }];
}

/** Where the paper of a duty lies; of the others nothing needs to be filed. */
const lies: Readonly<Record<string, string>> = { programme: words.programmeLies, training: words.trainingLies };

/** Rex was offered a blood test and told of the records: both lead on to what is asked next. */
const doneForRex: readonly string[] = ['bloodTests', 'recordsTold'];

/** What the first weeks asked was done on the day that it was due, and everybody was trained; what came later is left to do. */
function dutiesDone({ duties }: DutiesOfBook, ids: SeasonIds, { at, fact, on, today }: SeasonClock): NewFact[] {
  const untilOn = on(firstWeeksEndDaysAgo);
  const toDo = duties.filter(({ kind, done, dueOn, workerIds }) => {
    if (done !== null || kind === 'notice') return false;
    if (doneForRex.includes(kind)) return workerIds.includes(ids.rex);
    return dueOn !== null && (kind === 'training' || dueOn <= untilOn);
  });
  return toDo.map(({ id, kind, dueOn }) => {
    const doneOn = dueOn !== null && dueOn <= untilOn ? dueOn : untilOn;
    const whereItLies = lies[kind] ?? null;
    return fact(at(daysBetween(doneOn, today), '17:00'), 'dutyDone.v1', {
      ...{ dutyId: id, doneOn, doneById: ids.supervisor, whereItLies, remark: words.notedRemark },
    });
  });
}

/** The season is written before the two days; what lies ready for tomorrow comes after them. */
export async function writeSeason(practiceIds: PracticeIds, given: PracticeClock): Promise<Began> {
  const ids = seasonIds(practiceIds);
  const why = await writeBefore(ids, seasonClock(given));
  return { why, later: [...chargedPumps(ids, given), ...seasonTomorrow(ids, given)] };
}

/** null when it is written; else why not. */
async function writeBefore(ids: SeasonIds, clock: SeasonClock): Promise<FailedWhy | null> {
  const shifts = [...measuredShifts, restingShift, ...otherShifts].map((shift, count) =>
    seasonShift(shift, count, ids, clock),
  );
  const facts = [
    ...seasonRegisters(ids, clock),
    ...seasonGearEntries(ids, clock),
    ...shifts.flatMap((shift) => shift.facts),
    ...seasonReports(ids, clock),
    ...seasonAhead(ids, clock),
    ...seasonGear(ids, clock),
    ...seasonMoney(shifts, ids, clock),
  ];
  const written = await put(facts);
  if (written.why !== null) return written.why;
  const reviewed = await put([...staysVoid(facts, written.factIds, clock), planGivenUp(ids, clock), pricesAnew(clock)]);
  if (reviewed.why !== null) return reviewed.why;
  const book = await wholeBook(theSession().db);
  const duties = findDuties(book, clock.today);
  const occasion = await occasionHere({
    firmName: practice.firm,
    practice: true,
    zone: clock.zone,
    editions: editions(),
  });
  const papers = await seasonPapers({ book, duties, occasion, ids, clock });
  const told = await put([...papers.facts, ...dutiesDone(duties, ids, clock)], { files: papers.files });
  if (told.why !== null) return told.why;
  return (await put(seasonRevised(book, ids, clock))).why;
}
