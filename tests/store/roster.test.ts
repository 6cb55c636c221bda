/** Roster, notices and duties in the store: found by index, written in few requests, and their papers known by hash. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { Book } from '#records/book.ts';
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import { newId } from '#store/device.ts';
import { flushDraft, setDraft } from '#store/drafts.ts';
import { hashOf } from '#store/files.ts';
import { recordBook } from '#store/hooks/useFactsAbout.ts';
import { missingFilesIn } from '#store/hooks/useMissingFiles.ts';
import { newFact } from '#store/newFact.ts';
import { newBook } from '#store/opening.ts';
import { personBook, rosterBook, shiftBook, workdayBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { type WriteOptions, write } from '#store/write.ts';
import { recordName } from '#words/recordNames.ts';
import { counting } from './countRequests.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { entry, library, openingFacts, sampleOf } from './scenario.ts';

let clock: ReturnType<typeof testClock>;
let day: ReturnType<typeof library>;
const today = '2026-11-25';
const yesterday = '2026-11-24';

const act = <K extends FactKind>(kind: K, body: FactBody<K>, why: string | null = null): NewFact =>
  newFact(kind, body, { ...entry(day.personId), why });

async function wrote(facts: readonly NewFact[], options: WriteOptions = {}): Promise<readonly string[]> {
  clock.forward(60_000);
  const outcome = await write(facts, options);
  expect(outcome).toMatchObject({ kind: 'written' });
  return outcome.kind === 'written' ? outcome.factIds : [];
}

const worked = (workerId: string, on = today, siteId = day.siteId, taskIds = ['handScraping']): NewFact =>
  act('workNoted.v1', {
    ...{ workdayId: `${workerId}.${on}`, shiftId: `${siteId}.${on}`, taskIds },
    ...{ jobClassificationId: null, respirator: null },
  });
const opened = (on: string, siteId = day.siteId): NewFact =>
  act('shiftOpened.v1', { shiftId: `${siteId}.${on}`, siteId, workOn: on });
const person = (personId: string, name: string): NewFact =>
  act('personAdded.v1', {
    ...{ personId, name, identifier: null, language: 'en', jobClassificationId: null, employer: 'Sill & Co' },
  } as FactBody<'personAdded.v1'>);

const pdf = new TextEncoder().encode('%PDF-1.7 notice');
const issued = { pdfHash: hashOf(pdf), editions: { app: '1', rules: '1', formulas: '1' }, heads: [] };
const files = [{ hash: issued.pdfHash, type: 'application/pdf', bytes: pdf }];
const notice = (measurementId: string, workerIds: string[], revision = '1', noticeId = newId()) =>
  act('noticeIssued.v1', {
    ...{ noticeId, measurementId, revision, resultFactIds: [], receivedOn: today, workerIds, form: 'inWriting' },
    ...{ places: [], shownAs: 'name', languages: ['en'], pelStatement: false, correctiveAction: null, notice: {} },
    ...issued,
  } as FactBody<'noticeIssued.v1'>);
const reported = (reportedId: string) =>
  act('measurementReported.v1', {
    ...{ reportedId, from: 'consultant', fromName: 'Harbor Air', reportNumber: null, workerId: day.personId },
    ...{ siteId: day.siteId, setting: 'indoors', workOn: yesterday, receivedOn: today, taskIds: ['handScraping'] },
    ...{ jobClassificationId: null, average: { kind: 'lessThan', twa8UgPerM3: 5 }, workedHours: null },
    ...{ fullShift: 'yes', ownFirm: 'yes', accuracy: 'yes', remark: null },
  } as FactBody<'measurementReported.v1'>);

beforeEach(async () => {
  clock = testClock();
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
  day = library();
  await wrote(openingFacts(day));
});

const daysIn = (book: Book | null): string[] => [...(book?.workdays.keys() ?? [])].sort();
const db = () => theSession().db;

describe('who works here', () => {
  test('a shift holds the days of everyone who worked there, with or without a pump', async () => {
    const ben = newId();
    await wrote([person(ben, 'Ben Sill')]);
    await wrote([worked(day.personId), worked(ben)]);
    const days = [`${day.personId}.${today}`, `${ben}.${today}`].sort();
    expect(daysIn(await shiftBook(db(), day.shiftId))).toEqual(days);
    expect(daysIn(await rosterBook(db(), day.shiftId))).toEqual(days);
  });

  test('the last earlier day of the same site with a roster is there for the same as yesterday', async () => {
    const other = newId();
    await wrote([opened('2026-11-20'), opened('2026-11-23'), opened(yesterday), opened(yesterday, other)]);
    await wrote([worked(day.personId, '2026-11-20')]);
    await wrote([worked(day.personId, '2026-11-23', day.siteId, ['windowTakeOut'])]);
    await wrote([worked(day.personId, yesterday, other)]);
    const book = await rosterBook(db(), day.shiftId);
    expect([...(book?.shifts.keys() ?? [])].sort()).toEqual([day.shiftId, `${day.siteId}.2026-11-23`].sort());
    expect(daysIn(book)).toEqual([`${day.personId}.2026-11-23`]);
    expect(await rosterBook(db(), `${other}.2026-11-01`)).toBeNull();
  });

  test('a struck entry is found at that shift no longer', async () => {
    const [noted = ''] = await wrote([worked(day.personId)]);
    await wrote([act('workStruck.v1', { workdayId: `${day.personId}.${today}`, noted }, 'he was at the bridge')]);
    expect(daysIn(await shiftBook(db(), day.shiftId))).toEqual([]);
  });

  test('one person: days, samples with their shift whole, what was reported and told', async () => {
    const sample = sampleOf(day);
    const reportedId = newId();
    await wrote([sample.prepared(entry())]);
    await wrote([worked(day.personId)]);
    await wrote([reported(reportedId)]);
    await wrote([notice(reportedId, [day.personId])], { files });
    const book = await personBook(db(), day.personId);
    expect(daysIn(book)).toEqual([`${day.personId}.${today}`]);
    expect([...(book?.samples.keys() ?? [])]).toEqual([sample.sampleId]);
    expect(book?.shifts.has(day.shiftId)).toBe(true);
    expect(book?.reported.has(reportedId)).toBe(true);
    expect(book?.notices.size).toBe(1);
    expect(book?.takingIn).toBe(false);
    expect(await personBook(db(), newId())).toBeNull();
    // The registers stay what they are: people, places and gear.
    expect((await workdayBook(db(), `${day.personId}.2026-11-01`)) ?? 'none').toBe('none');
    expect((await shiftBook(db(), day.shiftId))?.notices.size).toBe(0);
    const [noticeId = ''] = book?.notices.keys() ?? [];
    const around = await recordBook(db(), `notice:${noticeId}`);
    expect(around && recordName(`notice:${noticeId}`, around)).toBe(
      'The notice, revision 1: The measurement of 24 November 2026 that Harbor Air reported',
    );
  });
});

describe('requests', () => {
  const draftKey = 'typing';

  async function requestsOf(fact: NewFact, options: WriteOptions = {}): Promise<readonly string[]> {
    clock.forward(60_000);
    if (options.draftKey) {
      setDraft(draftKey, 'x');
      await flushDraft(draftKey);
    }
    const counted = await counting(() => write([fact], options));
    expect(counted.result).toMatchObject({ kind: 'written' });
    expect(counted.durabilities).toEqual(['strict']);
    return counted.requests.length <= 6 ? [] : counted.requests;
  }

  test('every act on site and in the office makes at most 6, with its draft or its paper', async () => {
    const { personId, shiftId, siteId } = day;
    const workdayId = `${personId}.${today}`;
    const [reportedId, noticeId, ben] = [newId(), newId(), newId()];
    const withDraft = { draftKey };
    const tasks = { taskIds: ['handScraping'], jobClassificationId: null };
    const alike = {
      processes: 'alike',
      material: 'alike',
      controls: 'alike',
      practices: 'alike',
      environment: 'alike',
    };
    const asked = { equipment: 'no', process: 'no', control: 'no', personnel: 'no', newTask: 'no' };
    const dutyId = `programme.${siteId}`;
    const acts: readonly (readonly [string, () => NewFact, WriteOptions])[] = [
      ['roster', () => worked(personId), withDraft],
      ['what is new', () => act('changesAsked.v1', { shiftId, ...asked } as FactBody<'changesAsked.v1'>), withDraft],
      ['works here', () => act('employmentStated.v1', { personId, fromOn: today, toOn: null }), withDraft],
      ['stands for', () => act('representsStated.v1', { workdayId, workerIds: [ben] }), {}],
      ['reported', () => reported(reportedId), withDraft],
      [
        'relied on',
        () =>
          act('measurementReliedOn.v1', {
            ...{ relianceId: newId(), measurementId: reportedId, shiftId, ...tasks, ...alike, ownFirm: 'yes' },
          } as FactBody<'measurementReliedOn.v1'>),
        {},
      ],
      ['notice', () => notice(workdayId, [personId], '1', noticeId), { files }],
      ['next notice', () => notice(workdayId, [personId], '2'), { files }],
      [
        'given',
        () =>
          act('noticeGiven.v1', {
            ...{ noticeId, workerId: personId, how: 'handedOver', place: null, language: 'en', initials: 'AQ' },
          } as FactBody<'noticeGiven.v1'>),
        withDraft,
      ],
      [
        'negative determination',
        () =>
          act('determinationWritten.v1', {
            ...{ determinationId: newId(), outcome: 'negative', siteId, shiftId, location: 'Reading room' },
            ...{
              determinedOn: today,
              ...tasks,
              measurementIds: [workdayId],
              relianceIds: [],
              monitoredIds: [personId],
            },
            ...{ standsForIds: [personId], observations: null, earlierMeasurements: null, complaints: null },
            ...{ determination: {}, ...issued },
          } as FactBody<'determinationWritten.v1'>),
        { files },
      ],
      [
        'exposure record',
        () => act('exposureRecordIssued.v1', { workdayId, revision: '1', to: 'Ada', record: {}, ...issued }),
        { files },
      ],
      [
        'done',
        () => act('dutyDone.v1', { dutyId, doneOn: today, doneById: personId, whereItLies: null, remark: null }),
        withDraft,
      ],
      ['not done', () => act('dutyReopened.v1', { dutyId }, 'the wrong one'), withDraft],
      [
        'limits',
        () => {
          const own = { ownActionLevelUgPerM3: 20, ownPelUgPerM3: null };
          return act('limitsChosen.v1', { bookId: theSession().bookId, besideIds: [], ...own });
        },
        {},
      ],
      [
        'asked',
        () =>
          act('recordsRequested.v1', {
            ...{ requestId: newId(), askedOn: today, by: 'Ada Quill', personId, as: 'worker', remark: null },
          } as FactBody<'recordsRequested.v1'>),
        withDraft,
      ],
    ];
    for (const [name, fact, options] of acts) expect([name, ...(await requestsOf(fact(), options))]).toEqual([name]);
    // Two notices of one measurement made with knowledge of each other.
    expect((await personBook(db(), personId))?.notices.size).toBe(2);
  });
});

test('a paper that is named and not here is counted as missing, whatever paper it is', async () => {
  await wrote([worked(day.personId)]);
  await wrote([notice(`${day.personId}.${today}`, [day.personId])], { files });
  expect(await missingFilesIn(db())).toBe(0);
  await db().files.clear();
  expect(await missingFilesIn(db())).toBe(1);
});
