/**
 * What may follow on what, on a day with few pumps and many thumbs: written down a second time, plainly, as the trade has it, and with
 * nothing of the code under test. All that is done in one round happens at one moment.
 */

/** Taps upon one cassette that say no more than that. */
export type OnSample = 'putOn' | 'look' | 'leave' | 'enter' | 'takeOff' | 'putBackOn' | 'stop' | 'seal' | 'void';

/** A tap, with what its page showed when it was made. */
export type Tap =
  | {
      readonly kind: 'prepare';
      readonly sampleId: string;
      readonly pumpId: string;
      readonly workerId: string;
      readonly lotId: string;
      /** null: the book gives the next free one. */
      readonly number: string | null;
    }
  | { readonly kind: 'issue'; readonly boxId: string; readonly revision: number }
  | { readonly kind: 'pack'; readonly sampleId: string; readonly boxId: string }
  | { readonly kind: 'photo'; readonly sampleId: string }
  | { readonly kind: 'remark'; readonly sampleId: string; readonly text: string }
  | { readonly kind: 'correctLot'; readonly sampleId: string; readonly old: string; readonly to: string }
  | { readonly kind: 'result'; readonly sampleId: string; readonly report: string }
  | { readonly kind: OnSample; readonly sampleId: string };

export interface Cassette {
  readonly pumpId: string;
  readonly workerId: string;
  readonly preparedId: string;
  readonly number: string;
  lotId: string;
  onRound: number | null;
  stopRound: number | null;
  /** What was done on the worker, with its round. */
  readonly line: { readonly kind: string; readonly round: number }[];
  sealed: boolean;
  void: boolean;
  boxed: boolean;
  readonly reports: Set<string>;
}

export interface Day {
  readonly cassettes: Map<string, Cassette>;
  /** Box -> the last revision of its sheet. */
  readonly boxes: Map<string, number>;
}

export function cassetteOf({ cassettes }: Day, sampleId: string): Cassette {
  const found = cassettes.get(sampleId);
  if (found === undefined) throw new Error(`no cassette ${sampleId}`);
  return found;
}

const runs = ({ onRound, stopRound, void: isVoid }: Cassette): boolean =>
  onRound !== null && stopRound === null && !isVoid;

type Place = 'atLead' | 'away' | 'off';

/** At one moment the careful order: what takes the pump off the worker, or away from the lead, comes last. */
const atOneMoment = ['putBackOn', 'enter', 'leave', 'takeOff'] as const;
const moves: Readonly<Record<(typeof atOneMoment)[number], (from: Place) => Place>> = {
  putBackOn: (from) => (from === 'off' ? 'atLead' : from),
  enter: (from) => (from === 'away' ? 'atLead' : from),
  leave: (from) => (from === 'atLead' ? 'away' : from),
  takeOff: () => 'off',
};

/** Where the pump is now. */
function placeOf({ line }: Cassette): Place {
  let place: Place = 'atLead';
  for (const round of new Set(line.map((each) => each.round)))
    for (const kind of atOneMoment)
      for (const each of line) if (each.round === round && each.kind === kind) place = moves[kind](place);
  return place;
}

/** What does not fit the place where the pump is now. */
const misplaced: Readonly<Record<string, (where: Place) => string | null>> = {
  look: () => null,
  leave: (where) => ({ atLead: null, away: 'alreadyAway', off: 'alreadyOff' })[where],
  enter: (where) => (where === 'away' ? null : 'notAway'),
  takeOff: (where) => (where === 'off' ? 'alreadyOff' : null),
  putBackOn: (where) => (where === 'off' ? null : 'notOff'),
};

function whyNotOnWorker(kind: string, one: Cassette, round: number): string | null {
  const { onRound, stopRound } = one;
  if (onRound === null) return 'notPutOn';
  // At the very minute of the stop it still was on; a minute later it was not.
  if (stopRound !== null) return round > stopRound ? 'afterStopped' : null;
  return misplaced[kind]?.(placeOf(one)) ?? null;
}

function whyNotPutOn(one: Cassette, { cassettes }: Day): string | null {
  if (one.void) return 'sampleVoid';
  if (one.onRound !== null) return 'alreadyPutOn';
  const others = [...cassettes.values()].filter((other) => other !== one && runs(other));
  if (others.some(({ pumpId }) => pumpId === one.pumpId)) return 'pumpRunningElsewhere';
  return others.some(({ workerId }) => workerId === one.workerId) ? 'workerWearsAnother' : null;
}

function whyNotStop({ onRound, stopRound }: Cassette, round: number): string | null {
  if (onRound === null) return 'notPutOn';
  if (stopRound !== null) return 'alreadyStopped';
  return onRound === round ? 'zeroMinutes' : null;
}

function whyNotSeal({ stopRound, sealed }: Cassette): string | null {
  if (stopRound === null) return 'sealBeforeStop';
  return sealed ? 'alreadySealed' : null;
}

function whyNotPack(one: Cassette): string | null {
  if (one.boxed) return 'sampleInOtherBox';
  return runs(one) ? 'stillRunning' : null;
}

/** The reason why this cannot follow on what was done so far; null when it can. */
export function whyNot(day: Day, tap: Tap, round: number): string | null {
  if (tap.kind === 'issue') return day.boxes.get(tap.boxId) === tap.revision - 1 ? null : 'sheetRevisionNotNext';
  if (tap.kind === 'prepare')
    return [...day.cassettes.values()].some(({ number }) => number === tap.number) ? 'numberUsed' : null;
  const one = cassetteOf(day, tap.sampleId);
  switch (tap.kind) {
    case 'putOn':
      return whyNotPutOn(one, day);
    case 'stop':
      return whyNotStop(one, round);
    case 'seal':
      return whyNotSeal(one);
    case 'void':
      return one.void ? 'alreadyVoid' : null;
    case 'pack':
      return whyNotPack(one);
    case 'correctLot':
      return one.lotId === tap.old ? null : 'valueChangedMeanwhile';
    case 'result':
      return one.reports.has(tap.report) ? 'resultAlreadyIn' : null;
    case 'photo':
    case 'remark':
      return null;
    default:
      return whyNotOnWorker(tap.kind, one, round);
  }
}

function change(day: Day, one: Cassette, tap: Exclude<Tap, { kind: 'prepare' | 'issue' }>, round: number): void {
  if (tap.kind === 'putOn') one.onRound = round;
  if (tap.kind === 'stop') one.stopRound = round;
  if (tap.kind === 'seal') one.sealed = true;
  if (tap.kind === 'void') one.void = true;
  if (tap.kind === 'correctLot') one.lotId = tap.to;
  if (tap.kind === 'result') one.reports.add(tap.report);
  if (tap.kind === 'pack') {
    one.boxed = true;
    day.boxes.set(tap.boxId, 0);
  }
  if (one.stopRound === null) one.line.push({ kind: tap.kind, round });
}

/** Does it. `written`: the entry's id, and what the label bears. */
export function doTap(day: Day, tap: Tap, round: number, written: { factId: string; number: string }): void {
  if (tap.kind === 'issue') day.boxes.set(tap.boxId, tap.revision);
  else if (tap.kind === 'prepare') {
    const { sampleId, pumpId, workerId, lotId } = tap;
    const fresh = {
      onRound: null,
      stopRound: null,
      where: 'atLead',
      sealed: false,
      void: false,
      boxed: false,
    } as const;
    const labelled = { number: written.number, preparedId: written.factId, reports: new Set<string>(), line: [] };
    day.cassettes.set(sampleId, { pumpId, workerId, lotId, ...labelled, ...fresh });
  } else change(day, cassetteOf(day, tap.sampleId), tap, round);
}
