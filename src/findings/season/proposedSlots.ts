/** Whom to plan for: everyone of a small crew, as many by lot as the crew rule asks for of a larger one, or one worker with the reason written. */
import type { PlanRecord } from '#records/book.ts';
import type { CrewSample } from './crewSample.ts';

type Slot = { readonly workerId: string; readonly workOn: string | null };

export interface Proposal {
  /** Workers of whom the book knows the name, in a steady order. */
  readonly crew: readonly string[];
  /** How many do this work, named or not. */
  readonly crewCount: number;
  readonly choice: PlanRecord['choice'];
  /** With `highest`: who is expected to breathe most. */
  readonly highestId: string | null;
  readonly days: readonly string[];
  /** Days for each worker; those beyond `days` stay open. */
  readonly daysEachCount: number;
  /** From 0 up to 1, one for each worker drawn at least; findings draw no lots of their own. */
  readonly draws: readonly number[];
}

export interface ProposedSlots {
  readonly slots: readonly Slot[];
  readonly workerIds: readonly string[];
  /** How many are asked for, and how many of them nobody named yet. */
  readonly neededCount: number;
  readonly unnamedCount: number;
  readonly crewSample: CrewSample;
}

export function proposedSlots(proposal: Proposal): ProposedSlots {
  void proposal;
  throw new Error('not written yet');
}
