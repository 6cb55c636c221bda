/** How the firm's gear stands on a day: pumps, flow meters, lots; what is due, what is doubtful, what is no longer in use. */

import { addMonths } from '#core/calendar.ts';
import type { Book, MeterRecord, PumpRecord, SampleRecord } from '#records/book.ts';
import { type CertificateInForce, certificateInForce } from './certificateInForce.ts';
import { isDoubted } from './doubtsOf.ts';
import { flowPointOf, wornWith } from './flowHistory.ts';
import { changesAtAGlance, recalibrationMonths } from './gearNumbers.ts';
import { dueOf, headOf, newestFirst } from './headStanding.ts';
import { byLot, lotStanding } from './lotStanding.ts';
import { indexOf } from './restsOn.ts';
import type { GearHeadStanding, GearStanding, MeterStanding, PumpStanding } from './standings.ts';

export type {
  GearHeadStanding,
  GearStanding,
  LotStanding,
  MeterDue,
  MeterStanding,
  PumpStanding,
} from './standings.ts';

/** The end of the last time it was on a worker. */
const lastWornAt = (runs: readonly SampleRecord[]): string | null =>
  runs
    .flatMap(({ stopped }) => (stopped ? [stopped.at] : []))
    .reduce<string | null>((last, at) => (last === null || at > last ? at : last), null);

/** Null where it was never worn and no charge noted, and while it is on a worker. */
function chargedSince(runs: readonly SampleRecord[], filledAt: string | null, anyNoted: boolean) {
  if (runs.some(({ stopped }) => !stopped)) return null;
  const worn = lastWornAt(runs);
  if (worn === null) return anyNoted ? filledAt !== null : null;
  return filledAt !== null && filledAt >= worn;
}

function pumpStanding(pump: PumpRecord, book: Book, today: string): PumpStanding {
  const runs = indexOf(book).runsByPump.get(pump.id)?.runs ?? [];
  const charges = [...(pump.charges ?? [])].sort((a, b) => (a.at < b.at ? -1 : 1));
  const last = charges.at(-1);
  const filled = charges.filter(({ full }) => full).at(-1);
  const changes = wornWith(pump.id, book).slice(-changesAtAGlance).reverse();
  return {
    ...headOf('pump', pump, today),
    make: pump.model,
    lastCharge: last ? { at: last.at, full: last.full, by: last.by } : null,
    lastWornOn: runs.reduce<string | null>((day, { workOn }) => (day === null || workOn > day ? workOn : day), null),
    chargedSinceWorn: chargedSince(runs, filled?.at ?? null, last !== undefined),
    lastChanges: changes.flatMap((sample) => {
      const point = flowPointOf(sample, book);
      return point ? [{ sampleId: sample.id, workOn: sample.workOn, changePct: point.changePct }] : [];
    }),
  };
}

/** As stated, the earliest of those that may hold; else twelve months after the certificate. */
function dueDayOf({ dueOn, certificateOn, differing }: CertificateInForce) {
  const stated = [dueOn, ...differing.map((one) => one.dueOn)].filter((day) => day !== null).sort()[0];
  if (stated !== undefined) return { dueOn: stated, dueFrom: 'stated' as const, dueSource: null };
  if (certificateOn === null) return { dueOn: null, dueFrom: null, dueSource: null };
  const { value, source } = recalibrationMonths;
  return { dueOn: addMonths(certificateOn, value), dueFrom: 'twelveMonths' as const, dueSource: source };
}

function meterStanding(meter: MeterRecord, today: string): MeterStanding {
  const certificate = certificateInForce(meter, today);
  const due = dueDayOf(certificate);
  return {
    ...headOf('meter', meter, today),
    meterKind: meter.meterKind,
    certificate,
    ...due,
    due: dueOf(due.dueOn, today),
    certificatesCount: (meter.certificates ?? []).length,
  };
}

const inOrder = <T extends GearHeadStanding>(found: readonly T[]): readonly T[] =>
  [...found].sort(
    (a, b) =>
      Number(a.retired) - Number(b.retired) ||
      a.number.localeCompare(b.number, 'en', { numeric: true }) ||
      (a.id < b.id ? -1 : 1),
  );

export function gearStanding(book: Book, today: string): GearStanding {
  const lots = byLot(book);
  const standing = {
    pumps: inOrder([...book.pumps.values()].map((pump) => pumpStanding(pump, book, today))),
    meters: inOrder([...book.meters.values()].map((meter) => meterStanding(meter, today))),
    lots: inOrder([...book.lots.values()].map((lot) => lotStanding(lot, lots.get(lot.id) ?? [], book, today))),
  };
  const all = [...standing.pumps, ...standing.meters, ...standing.lots].flatMap(({ doubts }) => doubts);
  return {
    ...standing,
    doubtful: all
      .filter(({ doubt }) => isDoubted(doubt))
      .sort(newestFirst)
      .reverse(),
  };
}
