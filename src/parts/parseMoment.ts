/** A wall time typed afterwards, to the instant it stands for at the site. A time that does not exist, exists twice or lies ahead is asked about. */
import { instantsOfWallTime } from '#core/calendar.ts';
import { en as words } from '#words/moment.ts';
import { en as partsWords } from '#words/parts.ts';
import type { FieldError } from './ErrorSummary.tsx';
import { fieldReader } from './fieldReader.ts';

/** What is typed, as typed. `which` is only asked for where the wall time comes twice. */
export interface MomentDraft {
  readonly day: string;
  readonly time: string;
  readonly from: string;
  readonly which: 'first' | 'second' | null;
}

export interface MomentPlace {
  /** IANA zone of the site. */
  readonly zone: string;
  /** The instant now, and the day at the site. */
  readonly now: string;
  readonly today: string;
}

export type TypedMoment = {
  readonly at: string;
  readonly zone: string;
  readonly offsetMin: number;
  readonly entry: 'typed';
  readonly from: string | null;
};

export type ParsedMoment =
  | { readonly kind: 'value'; readonly happened: TypedMoment }
  | { readonly kind: 'errors'; readonly errors: readonly FieldError[]; readonly twice?: true };

/** Does this wall time come twice there? Then the form asks which. */
export function comesTwice(draft: MomentDraft, place: MomentPlace): boolean {
  const read = fieldReader(partsWords);
  const time = read.clock('time', '', draft.time);
  const day = read.day('day', '', draft.day, place.today);
  return time !== null && day !== null && instantsOfWallTime(day, time, place.zone).kind === 'twice';
}

/** Fields are named `<name>-time`, `<name>-day`, `<name>-from`, `<name>-which`. */
export function parseMoment(name: string, draft: MomentDraft, place: MomentPlace): ParsedMoment {
  const read = fieldReader(partsWords);
  const time = read.clock(`${name}-time`, words.time, draft.time);
  const day = read.day(`${name}-day`, words.day, draft.day, place.today);
  const from = read.text(`${name}-from`, words.from, draft.from, { optional: true });
  if (time === null || day === null || read.errors.length > 0) return { kind: 'errors', errors: read.errors };
  const meaning = instantsOfWallTime(day, time, place.zone);
  const refuse = (field: string, text: string): ParsedMoment => ({
    kind: 'errors',
    errors: [{ field: `${name}-${field}`, text }],
  });
  if (meaning.kind === 'doesNotExist') return refuse('time', words.doesNotExist(time, meaning.clockJumpsToTime));
  if (meaning.kind === 'twice' && draft.which === null) return refuse('which', words.twice(time));
  const { at, offsetMin } = meaning.kind === 'once' ? meaning : meaning[draft.which ?? 'first'];
  if (at > place.now) return refuse('time', words.future(words.typedAt(day, time)));
  return { kind: 'value', happened: { at, zone: place.zone, offsetMin, entry: 'typed', from } };
}
