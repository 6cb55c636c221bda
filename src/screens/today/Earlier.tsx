/** What is still open from before today: pumps never stopped, cassettes not sealed, boxes on their way, results that are not in. */
import { dayOf } from '#core/calendar.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import type { RunSheet } from '#store/runSheet.ts';
import { formatDayFrom } from '#words/quantity.ts';
import { en as words } from '#words/today.ts';

export interface EarlierProps {
  readonly sheet: RunSheet;
  readonly boxes: readonly BoxRecord[];
  readonly today: string;
  readonly now: string;
}

/** A box that has been away longer than this is found under Boxes, not here. */
const boxesShown = 5;

export function Earlier({ sheet, boxes, today }: EarlierProps) {
  const earlier = sheet.unfinished.filter(({ workOn }) => workOn < today);
  const open = boxes.filter(({ handedOver, arrivedAt }) => handedOver === null || arrivedAt === null);
  const awaitingCount = sheet.awaitingCount - todaysAwaiting(sheet, today);
  if (earlier.length + open.length + awaitingCount <= 0) return null;
  return (
    <Lines heading={words.earlier}>
      {earlier.map((sample) => (
        <Line key={sample.id} to={placeOf(sample)}>
          {sentenceOf(sample, sheet, today)}
        </Line>
      ))}
      {open.slice(0, boxesShown).map((box) => (
        <Line key={box.id} to={`/box/${box.id}`}>
          {boxSentence(box, sheet, today)}
        </Line>
      ))}
      {awaitingCount > 0 && (
        <Line key="awaiting" to="/results" detail={words.awaitingDetail}>
          {words.awaiting(awaitingCount)}
        </Line>
      )}
    </Lines>
  );
}

/** Cassettes of today have no result because the day is not over: they are not what is left from before. */
const todaysAwaiting = ({ book }: RunSheet, today: string): number =>
  [...book.samples.values()].filter((s) => s.workOn >= today && s.results.length === 0 && s.voided === null).length;

const placeOf = ({ id, stopped }: SampleRecord): string => (stopped === null ? `/sample/${id}` : `/sample/${id}/after`);

function sentenceOf(sample: SampleRecord, { book }: RunSheet, today: string): string {
  const worker = book.people.get(sample.workerId ?? '')?.name ?? '';
  const day = formatDayFrom(today, sample.workOn);
  if (sample.putOn === null) return words.earlierNotPutOn(worker, sample.sampleNumber, day);
  const say = sample.stopped === null ? words.earlierNotStopped : words.earlierNotSealed;
  return say(worker, sample.sampleNumber, day);
}

function boxSentence(box: BoxRecord, { book }: RunSheet, today: string): string {
  const count = box.packed.sampleIds.length;
  const laboratory = book.laboratories.get(box.packed.laboratoryId)?.name ?? '';
  if (box.handedOver === null) return words.boxNotSent(count, laboratory);
  return words.boxAway(count, laboratory, formatDayFrom(today, dayOf(box.handedOver.at, deviceZone())));
}
