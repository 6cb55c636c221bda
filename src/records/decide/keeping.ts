/** Pictures, and what a person settles after two devices came together. */
import type { BookRecord } from '../book.ts';
import { keyOf } from '../common.ts';
import { missingWithout } from '../exchange.ts';
import type { NewFact } from '../fact.ts';
import { type Ask, needsWhy } from './ask.ts';
import { knownRecords } from './registers.ts';
import { knownSample } from './sample.ts';

/** A picture stands beside something that is in the book, and once. */
function photoTaken(ask: Ask<'photoTaken.v1'>): void {
  const { photoId, hash } = ask.fact.body;
  for (const { key, photos = [] } of knownRecords(ask as Ask)) {
    if (photos.some((photo) => photo.photoId === photoId)) ask.refuse('alreadyInBook', ['body/photoId'], { key });
    else if (photos.some((photo) => photo.hash === hash)) ask.refuse('alreadyInBook', ['body/hash'], { key });
  }
}

/** As many as the fact holds; a sample with more is never settled, and stays void. */
const mostKnown = 50;
const isResult = /"kind":\s*"resultReceived\.v1"/;
const isReview = /"kind":\s*"voidReviewed\.v1"/;

/**
 * Whether a sample stays void, said by whoever sees void and result. What they knew of is filled in here, from the book as it is now, so
 * that a result which comes later, or a review on another device, is told from one that was known.
 */
export function voidReviewDecided(ask: Ask<'voidReviewed.v1'>): NewFact {
  const { fact, view } = ask;
  needsWhy(ask as Ask);
  const sample = knownSample(ask as Ask);
  if (!sample) return fact;
  const { sampleNumber, voided, voidAgainstResult } = sample;
  if (voided === null || voidAgainstResult !== true) ask.refuse('voidNotOpen', ['body/sampleId'], { sampleNumber });
  else if (voided.factId !== fact.body.voidFactId)
    ask.refuse('valueChangedMeanwhile', ['body/voidFactId'], { sampleNumber });
  const held = sample.factIds.map((id) => ({ id, text: view.fresh.facts.get(id) ?? '' }));
  const known = [isResult, isReview].flatMap((kind) => held.filter(({ text }) => kind.test(text)).map(({ id }) => id));
  return { ...fact, body: { ...fact.body, knew: known.slice(0, mostKnown) } };
}

/** Only of the sheet that was issued last: an earlier one was replaced already. */
function differenceKept(ask: Ask<'sheetDifferenceKept.v1'>): void {
  needsWhy(ask as Ask);
  const { boxId, revision } = ask.fact.body;
  const box = ask.view.box(boxId);
  if (!box) {
    ask.refuse('recordUnknown', ['body/boxId'], { key: keyOf('box', boxId) });
    return;
  }
  const last = Math.max(0, ...box.issues.map((issue) => Number(issue.revision)));
  if (last === 0) ask.refuse('sheetNotIssued', ['body/boxId']);
  else if (revision !== String(last)) ask.refuse('sheetNotLast', ['body/revision'], { revision, last: String(last) });
}

/** Only what is known to be missing may be given up: what was never heard of is not thereby ruled out. */
function missingAccepted(ask: Ask<'missingEntriesAccepted.v1'>): void {
  needsWhy(ask as Ask);
  const { bookId, writer, fromCount, toCount } = ask.fact.body;
  const key = keyOf('book', bookId);
  const book = ask.view.record(key);
  if (!book) {
    ask.refuse('recordUnknown', ['body/bookId'], { key });
    return;
  }
  const missing = missingWithout(ask.view.fresh.missing ?? [], (book as BookRecord).accepted ?? []);
  const isMissing = missing.some(
    (range) =>
      range.writer === writer && range.fromCount <= fromCount && fromCount <= toCount && toCount <= range.toCount,
  );
  if (!isMissing) ask.refuse('notMissing', ['body/fromCount', 'body/toCount']);
}

export const keepingCases = {
  'photoTaken.v1': photoTaken,
  'sheetDifferenceKept.v1': differenceKept,
  'missingEntriesAccepted.v1': missingAccepted,
};

const relaxingKinds: readonly string[] = [
  'correctionSettled.v1',
  'flowDecided.v1',
  'sheetDifferenceKept.v1',
  'missingEntriesAccepted.v1',
  'workStruck.v1',
  'employmentStated.v1',
  'representsStated.v1',
  'measurementReliedOn.v1',
  'dutyDone.v1',
  'limitsChosen.v1',
  'gearDoubtSettled.v1',
];

/** Takes a doubt away, or may: asks for the whole of a file that is being taken in. */
export function relaxes({ kind, body }: NewFact): boolean {
  if (kind === 'voidReviewed.v1') return !body.stands;
  if (kind === 'determinationWritten.v1') return body.outcome === 'negative';
  if (kind === 'valueCorrected.v1') return /^\/(stands|fromOn|untilOn)$/.test(body.path);
  return relaxingKinds.includes(kind);
}

/** While a file is half taken in, what speaks against it may still be in the other half. */
export function refuseWhileTakingIn({ fact, view, refuse }: Ask): void {
  if (view.fresh.takingIn === true && relaxes(fact)) refuse('takingIn');
}
