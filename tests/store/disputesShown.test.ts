/** Before anything is taken in: what both devices changed, and the value that judges meanwhile. And how far the pictures are. */
import { beforeEach, expect, test } from 'vitest';
import type { NewFact } from '#records/fact.ts';
import { writeBookText } from '#records/fileFormat.ts';
import type { JournalRow } from '#store/database.ts';
import type { Preview, Progress } from '#store/handOver/handOver.ts';
import { lookInto } from '#store/handOver/looking.ts';
import { takeIn } from '#store/handOver/taking.ts';
import { derivedRows } from '#store/lookup.ts';
import { newBook, openBooks } from '#store/opening.ts';
import { sampleBook } from '#store/reading.ts';
import { theSession } from '#store/session.ts';
import { fitted, hours, piece, result, soundDay, workdayId } from '../findings/carefulStory.ts';
import { corrects, ids, journal, office, phone, wanted } from '../records/facts.ts';
import { newDevice, pickUp, testClock } from './device.ts';
import { mustWrite, photoOf, pictureOf } from './faultGround.ts';
import { makeBackup } from './handOvers.ts';
import { entry, library } from './scenario.ts';

const day = soundDay(24).filter(({ kind }) => kind !== 'bookOpened.v1');
const rowsOf = (entries: ReturnType<typeof journal>): JournalRow[] =>
  entries.map(({ id, text, link }) => ({ id, about: (JSON.parse(text) as JournalRow).about, text, link }));
const idOf = (kind: string, at = 0): string =>
  journal(day, phone).filter(({ text }) => text.includes(`"kind":"${kind}"`))[at]?.id ?? '';
const checkId = 'f00000000002';
const reading = (flowLPerMin: number) => ({ lowLPerMin: flowLPerMin, highLPerMin: flowLPerMin });
const mass = (massUg: number) => ({ kind: 'measured', massUg });

beforeEach(async () => {
  testClock().forward(30 * 3_600_000);
  await pickUp(newDevice());
  await newBook({ firmName: 'Old Sash & Steel', practice: false });
});

/** This device holds the day and what it wrote; the file brings what the other wrote. */
async function shownFor(here: readonly NewFact[], there: readonly NewFact[]): Promise<Preview> {
  const { db, bookId } = theSession();
  const held = rowsOf(journal([...day, ...here], phone));
  await db.journal.bulkPut(held);
  await db.records.bulkPut([...derivedRows(held).values()]);
  const file = writeBookText({ bookId, practice: false, writtenBy: '0.1.0' }, journal(there, office));
  const looked = await lookInto(new Blob([file]));
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  return looked;
}

const massTo = (massUg: number) => corrects(idOf('resultReceived.v1'), '/mass', mass(24), mass(massUg));
const flowTo = (flowLPerMin: number) =>
  corrects(idOf('flowChecked.v1', 1), '/readings/0', reading(2), reading(flowLPerMin), null, [`flowCheck:${checkId}`]);
const notRegular = wanted('dayDescribed.v1', { workdayId, regular: 'no', reason: null });
const [eight, ten] = [[piece('12:00', '20:00')], [piece('12:00', '22:00')]];
/** Stated on the phone already: only the other side's statement is new. */
const own: readonly NewFact[] = [];

test.each<[string, readonly NewFact[], readonly NewFact[], string, unknown, unknown, unknown]>([
  ['mass: the heavier', [massTo(30)], [massTo(12)], '/mass', mass(30), mass(12), mass(30)],
  ['mass, the other way about', [massTo(12)], [massTo(30)], '/mass', mass(12), mass(30), mass(30)],
  ['flow: the lower', [flowTo(1.9)], [flowTo(1.8)], '/readings/0', reading(1.9), reading(1.8), reading(1.8)],
  ['one report keyed in twice: the heavier', own, [result(20)], '/mass', mass(24), mass(20), mass(24)],
  ['hours: the longer', own, [hours(...ten)], '/pieces', eight, ten, ten],
  ['a regular day: not', own, [notRegular], '/regular', 'yes', 'no', 'no'],
])('%s', async (_, here, there, path, mine, theirs, judges) => {
  const before = await theSession().db.journal.count();
  const shown = await shownFor(here, there);
  expect(shown.bothChanged).toMatchObject([{ path, here: [mine], there: [theirs], judges }]);
  // Looking changed nothing; what judges after taking in is what was shown.
  expect(await theSession().db.journal.count()).toBe(before + day.length + here.length);
  expect(await takeIn(shown)).toMatchObject({ kind: 'takenIn', bothChangedCount: 1 });
  const book = await sampleBook(theSession().db, ids.one);
  const workday = book?.workdays.get(workdayId);
  const standing: Readonly<Record<string, unknown>> = {
    '/mass': book?.samples.get(ids.one)?.results.at(-1)?.mass,
    '/readings/0': book?.flowChecks.get(checkId)?.readings[0],
    '/pieces': workday?.pieces,
    '/regular': workday?.regular?.regular,
  };
  expect(standing[path]).toEqual(judges);
});

test('a fitting with a point missed on one side: that one', async () => {
  const shown = await shownFor(own, [fitted(ids.one, { breathingZone: false })]);
  expect(shown.bothChanged).toMatchObject([{ path: '/points', judges: { breathingZone: false } }]);
  await takeIn(shown);
  const book = await sampleBook(theSession().db, ids.one);
  expect(book?.samples.get(ids.one)?.fitting?.points.breathingZone).toBe(false);
});

test('how far the pictures are is told', async () => {
  const lib = library();
  await mustWrite([lib.siteAdded(entry())]);
  for (let at = 0; at < 15; at += 1) {
    const picture = pictureOf(at, 1000 + at);
    await mustWrite([photoOf(picture, `site:${lib.siteId}`)], [picture]);
  }
  const { blob } = await makeBackup();
  await pickUp(newDevice());
  await openBooks();
  const looked = await lookInto(blob);
  if (looked.kind !== 'preview') throw new Error(JSON.stringify(looked));
  const told: Progress[] = [];
  expect(await takeIn(looked, { onProgress: (one) => told.push(one) })).toMatchObject({ filesCount: 15 });
  expect(told.filter(({ total, step }) => total === 15 && step === 'taking').map(({ done }) => done)).toEqual(
    Array.from({ length: 15 }, (_, at) => at + 1),
  );
});
