/**
 * Notices and determinations of the season. Their values come from what follows from the book; their bytes are a short example sheet,
 * since a whole paper takes a second to make. Those of yesterday and of the last results are left for whoever practises.
 */

import { addDays, daysBetween } from '#core/calendar.ts';
import type { NoticeToldInput } from '#documents/noticeValues.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import type { NoticeOwed } from '#findings/duties/telling/notice.ts';
import { doubtsOnMeasurements } from '#findings/gear/doubtsOnPaper.ts';
import { peopleOnPaper } from '#findings/peopleOnPaper.ts';
import type { NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { hashOf } from '#store/files.ts';
import { practice } from '#words/practice.ts';
import { season as words } from '#words/practiceSeason.ts';
import { type Around, loadValues, type Makers, named, type Papers } from './seasonAround.ts';
import { seasonDeterminations } from './seasonDeterminations.ts';

/** Results of the last so many days are not told yet. */
const leftDays = 13;
/** Told much later than five working days after the receipt. */
const lateDays = 20;

function figureOf({ twa8UgPerM3 }: Measurement): string {
  if (twa8UgPerM3 === null) return '';
  const value = twa8UgPerM3.kind === 'exact' ? twa8UgPerM3.value : twa8UgPerM3.lower;
  return value.toFixed(1);
}

const correctiveOf = (measurement: Measurement, { ids, clock }: Around) =>
  measurement.siteId === ids.site
    ? words.hygiene.misting
    : measurement.workOn === clock.on(112)
      ? words.hygiene.bridgeOpen
      : words.hygiene.vacuum;

function toldInput(
  measurement: Measurement,
  owed: NoticeOwed,
  around: Around,
  posted: boolean,
  at: string,
): NoticeToldInput {
  const { book, occasion } = around;
  return {
    ...{
      ...occasion,
      issuedInstant: at,
      measurement,
      siteName: book.sites.get(measurement.siteId ?? '')?.name ?? null,
    },
    ...{
      tasks: named(measurement.taskIds),
      people: peopleOnPaper(book, owed.affectedIds),
      workerIds: owed.affectedIds,
    },
    ...{ revision: '1', why: null, receivedOn: owed.receivedOn, form: posted ? 'posted' : 'inWriting' },
    ...{ places: posted ? [words.siteHut] : [], shownAs: 'name', languages: ['en', 'es'] },
    correctiveAction: owed.correctiveActionNeeded ? correctiveOf(measurement, around) : null,
    ...{ respirator: null, next: null, questionsTo: practice.people.supervisor },
    measuredBy: book.reported.get(measurement.id)?.fromName ?? null,
    gearDoubts: doubtsOnMeasurements([measurement], book),
  };
}

/** The first one is posted; one is given late; one worker would not sign, one has it read aloud. */
function oneNotice(measurement: Measurement, owed: NoticeOwed, around: Around, [notice, , note]: Makers): Papers {
  const { ids, clock, occasion } = around;
  const { fact, on, today } = clock;
  const posted = measurement.workOn === on(112);
  const isLate = measurement.workOn === on(78);
  const daysAgo = daysBetween(owed.receivedOn, today) - (isLate ? lateDays : 1);
  const [at, givenAt] = [clock.at(daysAgo, '16:00'), clock.at(daysAgo, '16:20')];
  const input = toldInput(measurement, owed, around, posted, at);
  const values = notice.noticeValues(input);
  const worker = around.book.people.get(measurement.workerId ?? '')?.name ?? '';
  const { paper } = words;
  const lines = [
    paper.note,
    paper.notice,
    paper.worker(worker, measurement.workOn),
    paper.average(figureOf(measurement)),
    paper.short,
  ];
  const bytes = note.exampleNote(paper.title, lines);
  const [noticeId, pdfHash] = [newId(), hashOf(bytes)];
  const issued = fact(at, 'noticeIssued.v1', {
    ...{ noticeId, measurementId: measurement.id, revision: '1', receivedOn: owed.receivedOn, pdfHash },
    resultFactIds: measurement.receipts.map(({ factId }) => factId),
    ...{ workerIds: [...owed.affectedIds], form: input.form, places: [...input.places], shownAs: input.shownAs },
    ...{ languages: [...input.languages], pelStatement: owed.pelStatement },
    correctiveAction: input.correctiveAction?.en ?? null,
    notice: JSON.parse(JSON.stringify(values)) as Record<string, unknown>,
    ...{ editions: { ...occasion.editions }, heads: occasion.heads.map((head) => ({ ...head })) },
  });
  const given = (workerId: string): NewFact => {
    const how = isLate && workerId === ids.sam ? 'refusedToSign' : workerId === ids.second ? 'readAloud' : 'handedOver';
    const language = around.book.people.get(workerId)?.language ?? 'en';
    return fact(givenAt, 'noticeGiven.v1', { noticeId, workerId, how, place: null, language, initials: null });
  };
  const hung = {
    noticeId,
    workerId: null,
    how: 'posted',
    place: words.siteHut,
    language: 'en',
    initials: null,
  } as const;
  return {
    facts: [issued, ...(posted ? [fact(givenAt, 'noticeGiven.v1', hung)] : owed.affectedIds.map(given))],
    files: [{ hash: pdfHash, type: 'application/pdf', bytes }],
  };
}

export async function seasonPapers(around: Around): Promise<Papers> {
  const makers = await loadValues();
  const { duties, clock } = around;
  const told = duties.notices.filter(({ receivedOn }) => receivedOn < addDays(clock.today, -leftDays));
  const made = told.flatMap((owed) => {
    const measurement = duties.measurements.get(owed.measurementId);
    return measurement ? [oneNotice(measurement, owed, around, makers)] : [];
  });
  const papers = [...made, ...seasonDeterminations(around, makers)];
  return { facts: papers.flatMap(({ facts }) => facts), files: papers.flatMap(({ files }) => files) };
}
