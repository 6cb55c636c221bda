/**
 * What would a day look like? Minutes per task, each with what like work was found to be, give a predicted 8-hour average and the least
 * protection, with the spread behind it. It is a prediction: it proves nothing, ends no presumption and no duty.
 */
import { sideOf } from '#core/comparison.ts';
import { atLeast, type Estimate, exactly, lessThan, lowerOf, upperOf } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { hoursWorked, twa8 } from '#core/twa.ts';
import type { Book } from '#records/book.ts';
import { type LimitsHere, limitSetOn } from '#reference/limits.ts';
import { type Presumption, presumptionFor } from '#reference/presumption.ts';
import type { DutiesOfBook } from '../duties/dutiesOfBook.ts';
import { ofPel } from '../duties/protecting/presumedFactor.ts';
import type { RespiratorAdvice } from '../duties/protecting/respirator.ts';
import { respiratorFor } from '../duties/protecting/respirators.ts';
import type { DayAhead, DayAheadInput, LikeSample, PieceAhead } from './dayAheadFinding.ts';
import { highestSeen, highestShown, isOpenAbove, samplesByTasks, spreadEstimate, spreadOf } from './likeWork.ts';

export type { DayAhead, DayAheadInput, LikeSample, PieceAhead } from './dayAheadFinding.ts';

/** What the rule presumes stands in as an upper figure, or as *at least* where it states none. Samples in doubt may raise it. */
function presumedEstimate(presumption: Presumption, doubtful: readonly LikeSample[], limits: LimitsHere): Estimate {
  const pel = limits.set.pel.value;
  const { presumedAbove, presumedUpTo } = presumption;
  const open = atLeast(presumedAbove === null ? 0 : ofPel(presumedAbove.value, pel));
  if (presumedUpTo === null) return open;
  const upTo = ofPel(presumedUpTo.value, pel);
  return isOpenAbove(doubtful, upTo) ? open : lessThan(Math.max(upTo, highestShown(doubtful)));
}

type Piece = DayAheadInput['pieces'][number];

function pieceAhead({ taskIds, durationMin }: Piece, samples: readonly LikeSample[], limits: LimitsHere): PieceAhead {
  const presumption = presumptionFor(taskIds);
  const spread = spreadOf(samples);
  const from = spread ? 'known' : presumption.tier === 'none' ? 'notKnown' : 'presumed';
  const estimate = spread ? spreadEstimate(spread) : presumedEstimate(presumption, samples, limits);
  const because = samples.map(({ sampleId }) => `sample:${sampleId}`);
  const name = { known: 'likeWork', presumed: 'presumedLevel', notKnown: 'notKnown' }[from];
  const concentration = recorded(name, 'µg/m³', estimate, because);
  return { taskIds, durationMin, from, concentration, samples, spread, presumption };
}

const minutesOf = ({ durationMin }: PieceAhead): Term => recorded('minutesOfPiece', 'min', exactly(durationMin), []);

/** Of the advice by each figure the highest: what one of them leaves open stays open. */
function highestAdvice(all: readonly RespiratorAdvice[]): RespiratorAdvice | undefined {
  const height = ({ beyond, floorApf }: RespiratorAdvice): number =>
    beyond ? Number.POSITIVE_INFINITY : (floorApf ?? 0);
  const [first, ...others] = all;
  if (!first) return;
  const best = others.reduce((top, one) => (height(one) > height(top) ? one : top), first);
  const noFactor = all.some(({ leastApf, floorApf }) => leastApf === null && floorApf !== null);
  return {
    ...best,
    unbounded: all.some(({ unbounded }) => unbounded),
    leastApf: noFactor ? null : best.leastApf,
  };
}

function adviceOf(pieces: readonly PieceAhead[], average: Term | null, limits: LimitsHere, book: Book) {
  const presumption = presumptionFor([...new Set(pieces.flatMap(({ taskIds }) => taskIds))]);
  const hours = pieces.length === 0 ? null : hoursWorked.of({ t: pieces.map(minutesOf) });
  const ownPelUgPerM3 = book.book?.limits?.ownPelUgPerM3 ?? null;
  const by = (figure: Term | null): RespiratorAdvice =>
    respiratorFor({
      measurement: null,
      presumption,
      limits,
      hoursWorked: hours,
      taskUgPerM3: figure,
      ownPelUgPerM3,
    });
  // what was once seen must be held off, whatever the spread of the sound ones says
  const seen = pieces.flatMap(({ samples }) => {
    const highest = highestSeen(samples);
    return highest ? [recorded('highestSeen', 'µg/m³', highest, [])] : [];
  });
  // a presumed level is no figure that was found: the rule says what is enough for it, as where a worker is prepared
  const found = pieces.filter(({ from }) => from !== 'presumed').map(({ concentration }) => concentration);
  const figures = [null, ...found, ...(average ? [average] : []), ...seen];
  return highestAdvice(figures.map(by)) ?? by(null);
}

/** Minutes that no piece names count as none: whoever asks names the whole day. Pieces of no minutes are left out. */
export function dayAhead(input: DayAheadInput, book: Book, duties: DutiesOfBook): DayAhead {
  const limits = limitSetOn(input.on, input.stateCode ?? '');
  const samplesOf = samplesByTasks(book, duties, input.setting ?? null);
  const pieces = input.pieces
    .filter(({ durationMin }) => durationMin > 0)
    .map((piece) => pieceAhead(piece, samplesOf(piece.taskIds), limits));
  const average =
    pieces.length === 0
      ? null
      : twa8.of({ C: pieces.map(({ concentration }) => concentration), t: pieces.map(minutesOf) });
  const upper = average === null ? 0 : upperOf(average.estimate);
  const durationMin = pieces.reduce((sum, one) => sum + one.durationMin, 0);
  const count = (from: PieceAhead['from']): number => pieces.filter((one) => one.from === from).length;
  return {
    kind: 'prediction',
    limits,
    pieces,
    durationMin,
    twa8: average,
    upperUgPerM3: average !== null && Number.isFinite(upper) ? upper : null,
    lowerUgPerM3: average === null ? 0 : lowerOf(average.estimate),
    mayReach: {
      actionLevel: sideOf(upper, limits.set.actionLevel.value) >= 0,
      pel: sideOf(upper, limits.set.pel.value) >= 0,
    },
    advice: adviceOf(pieces, average, limits, book),
    knownCount: count('known'),
    presumedCount: count('presumed'),
    notKnownCount: count('notKnown'),
    longDay: durationMin > 480,
  };
}
