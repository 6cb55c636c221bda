/** Pieces of work as typed, and reading them. An end before its start means the next day; a time that comes twice is asked about. */
import { addDays, instantsOfWallTime, wallTimeOf } from '#core/calendar.ts';
import type { FieldReader } from '#parts/fieldReader.ts';
import { parseClock } from '#parts/parseClock.ts';
import type { FactBody } from '#records/fact.ts';
import { en as words } from '#words/exposure.ts';
import { en as moment } from '#words/moment.ts';
import { refusals } from '#words/refusals.ts';

export type Which = 'first' | 'second';
export interface PieceText {
  readonly from: string;
  readonly to: string;
  readonly place: string;
  readonly employer: string;
  /** Only where the clocks go back. */
  readonly fromWhich: Which | null;
  readonly toWhich: Which | null;
}
export type Piece = FactBody<'workHoursStated.v1'>['pieces'][number];

export const emptyPiece: PieceText = {
  from: '',
  to: '',
  place: '',
  employer: '',
  fromWhich: null,
  toWhich: null,
};

export const pieceField = (at: number, field: string): string => `piece-${at}-${field}`;

/** As it would be typed again. */
export function pieceText({ startedAt, endedAt, place, employer }: Piece, zone: string): PieceText {
  return {
    ...emptyPiece,
    from: wallTimeOf(startedAt, zone).time,
    to: wallTimeOf(endedAt, zone).time,
    place: place ?? '',
    employer: employer ?? '',
  };
}

/** The day on which the end lies: the next one when it is not after the start. */
const endDay = (workOn: string, from: string, to: string): string => (to <= from ? addDays(workOn, 1) : workOn);

interface WallTime {
  readonly day: string;
  readonly time: string;
  readonly which: Which | null;
}

/** Where the clocks go back and nobody said which: then the form asks. */
export function asksWhich(piece: PieceText, end: 'from' | 'to', workOn: string, zone: string): boolean {
  const [from, to] = [parseClock(piece.from), parseClock(piece.to)];
  if (from.kind !== 'value') return false;
  if (end === 'from') return instantsOfWallTime(workOn, from.value, zone).kind === 'twice';
  if (to.kind !== 'value') return false;
  return instantsOfWallTime(endDay(workOn, from.value, to.value), to.value, zone).kind === 'twice';
}

function readInstant(read: FieldReader, field: string, { day, time, which }: WallTime, zone: string): string | null {
  const meaning = instantsOfWallTime(day, time, zone);
  if (meaning.kind === 'once') return meaning.at;
  if (meaning.kind === 'doesNotExist') return read.add(field, moment.doesNotExist(time, meaning.clockJumpsToTime));
  if (which === null) return read.add(`${field}-which`, words.hours.twice(time));
  return meaning[which].at;
}

const optional = { optional: true } as const;

function readPiece(read: FieldReader, piece: PieceText, at: number, workOn: string, zone: string): Piece | null {
  const [fromField, toField] = [pieceField(at, 'from'), pieceField(at, 'to')];
  const from = read.clock(fromField, words.hours.from, piece.from);
  const to = read.clock(toField, words.hours.to, piece.to);
  const place = read.text(pieceField(at, 'place'), words.hours.place, piece.place, optional);
  const employer = read.text(pieceField(at, 'employer'), words.hours.employer, piece.employer, optional);
  if (from === null || to === null) return null;
  const startedAt = readInstant(read, fromField, { day: workOn, time: from, which: piece.fromWhich }, zone);
  const end = { day: endDay(workOn, from, to), time: to, which: piece.toWhich };
  const endedAt = readInstant(read, toField, end, zone);
  return startedAt === null || endedAt === null ? null : { startedAt, endedAt, place, employer };
}

/** All pieces, in the order typed; two that overlap are told at the later one. */
export function readPieces(read: FieldReader, pieces: readonly PieceText[], workOn: string, zone: string): Piece[] {
  const found: Piece[] = [];
  for (const [at, piece] of pieces.entries()) {
    const one = readPiece(read, piece, at, workOn, zone);
    if (one === null) continue;
    if (found.some(({ startedAt, endedAt }) => startedAt < one.endedAt && one.startedAt < endedAt))
      read.add(pieceField(at, 'from'), refusals.piecesOverlap({}));
    found.push(one);
  }
  return found;
}
