/** Whom to plan for: everyone of a small crew, as many by lot as the crew rule asks for of a larger one, or one worker with the reason written. */
import type { PlanRecord } from '#records/book.ts';
import { type CrewSample, crewSample } from './crewSample.ts';

type Slot = { readonly workerId: string; readonly workOn: string | null };

export interface Proposal {
  /** Workers whose names the book knows, in an order that does not change. */
  readonly crew: readonly string[];
  /** How many do this work, named or not. */
  readonly crewCount: number;
  readonly choice: PlanRecord['choice'];
  /** With `highest`: who is expected to breathe most. */
  readonly highestId: string | null;
  readonly days: readonly string[];
  /** Days for each worker; those beyond `days` stay open. */
  readonly daysEachCount: number;
  /** From 0 up to 1, one for each worker drawn at least: findings draw no lots of their own. Read with `random` alone. */
  readonly draws: readonly number[];
}

export interface ProposedSlots {
  readonly slots: readonly Slot[];
  readonly workerIds: readonly string[];
  /** How many are asked for, and how many of them nobody has named yet. */
  readonly neededCount: number;
  readonly unnamedCount: number;
  readonly crewSample: CrewSample;
}

/** The first `count` of a fair shuffle: one draw for each place. Throws (a bug) where draws are missing or outside 0 up to 1. */
function drawn(crew: readonly string[], count: number, draws: readonly number[]): readonly string[] {
  const left = [...crew];
  const found: string[] = [];
  for (let place = 0; place < count; place++) {
    const draw = draws[place];
    if (draw === undefined || !(draw >= 0 && draw < 1)) throw new Error(`draw ${place} of ${count} is ${draw}`);
    found.push(...left.splice(Math.floor(draw * left.length), 1));
  }
  // in the order of the crew, so that the page does not read as a ranking
  return crew.filter((id) => found.includes(id));
}

function workersOf(proposal: Proposal, { sampleCount }: CrewSample): readonly string[] {
  const { choice, highestId, draws } = proposal;
  const crew = [...new Set(proposal.crew)];
  if (choice === 'highest') return highestId === null ? [] : [highestId];
  if (choice === 'all' || sampleCount >= crew.length) return crew;
  return drawn(crew, sampleCount, draws);
}

/** Every worker on days of their own choosing in turn: neighbours begin on neighbouring days, and nobody has one day twice. */
function spread(workerIds: readonly string[], days: readonly string[], daysEachCount: number): readonly Slot[] {
  const apart = Math.max(1, Math.floor(days.length / daysEachCount));
  return workerIds.flatMap((workerId, place) => {
    const own = new Set<string>();
    for (let k = 0; k < daysEachCount && own.size < days.length; k++) {
      const from = place + k * apart;
      // the next free day from there on
      const on = days.map((_, step) => days[(from + step) % days.length]).find((day) => day && !own.has(day));
      if (on) own.add(on);
    }
    const open = daysEachCount - own.size;
    const known = [...own].sort().map((workOn): Slot => ({ workerId, workOn }));
    return [...known, ...Array.from({ length: open }, (): Slot => ({ workerId, workOn: null }))];
  });
}

export function proposedSlots(proposal: Proposal): ProposedSlots {
  const { crewCount, choice, days, daysEachCount } = proposal;
  const rule = crewSample(crewCount);
  const workerIds = workersOf(proposal, rule);
  const neededCount = choice === 'highest' ? 1 : choice === 'all' ? crewCount : rule.sampleCount;
  return {
    slots: spread(workerIds, [...new Set(days)].sort(), daysEachCount),
    workerIds,
    neededCount,
    unnamedCount: Math.max(0, neededCount - workerIds.length),
    crewSample: rule,
  };
}
