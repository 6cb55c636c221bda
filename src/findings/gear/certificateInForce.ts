/**
 * Which certificate of a flow meter judges a flow check: the newest one whose day is not after the day of the check, that of the meter's
 * entry among them. A newer certificate changes nothing before its day.
 */
import type { Certificate, MeterRecord, RecordBase } from '#records/book.ts';

/** What one certificate says of a meter, from its entry or entered later. */
export interface CertificateSaid {
  readonly certificateOn: string | null;
  readonly dueOn: string | null;
  readonly by: string | null;
  readonly calibrationTemperatureC: number | null;
  readonly calibrationPressureKPa: number | null;
  readonly pairs: MeterRecord['pairs'];
  /** Facts that it stands in. */
  readonly because: readonly string[];
}

export interface CertificateInForce extends CertificateSaid {
  /** Others that may be in force as well and say otherwise: of the same day, or of no day at all. A doubt; the careful one judges. */
  readonly differing: readonly CertificateSaid[];
}

/** The facts of the entry: those of newer certificates, of doubts and of whose it is change nothing in it. */
function entryFactIds({ factIds, certificates = [], doubts = [], held }: MeterRecord): readonly string[] {
  const beside = new Set(certificates.map(({ factId }) => factId));
  for (const { factId, settled } of doubts) {
    beside.add(factId);
    if (settled) beside.add(settled.factId);
  }
  if (held) beside.add(held.factId);
  return beside.size === 0 ? factIds : factIds.filter((id) => !beside.has(id));
}

export const certificateOfEntry = (meter: MeterRecord): CertificateSaid => ({
  certificateOn: meter.certificateOn,
  dueOn: meter.dueOn,
  by: null,
  calibrationTemperatureC: meter.calibrationTemperatureC,
  calibrationPressureKPa: meter.calibrationPressureKPa,
  pairs: meter.pairs,
  because: entryFactIds(meter),
});

const said = (one: Certificate): CertificateSaid => ({
  certificateOn: one.certificateOn,
  dueOn: one.dueOn,
  by: one.by,
  calibrationTemperatureC: one.calibrationTemperatureC,
  calibrationPressureKPa: one.calibrationPressureKPa,
  pairs: one.pairs,
  because: [one.factId],
});

/** Those of one day that did not know of each other: the record holds one of them, and all in its conflict. */
const inConflict = ({ conflicts }: MeterRecord, certificateOn: string | null): CertificateSaid[] =>
  conflicts
    .filter(({ path }) => path === `/certificates/${certificateOn}`)
    .flatMap(({ candidates }) => candidates)
    .map(({ correctionId, value }) => said({ ...(value as Omit<Certificate, 'factId'>), factId: correctionId }));

/**
 * Conflicts of the record that bear on a flow check: not whose the meter is, nor what is said of certificates and doubts, which are
 * judged by themselves.
 */
export const besideCertificates = ({
  conflicts,
  notUnderstood,
}: MeterRecord): Pick<RecordBase, 'conflicts' | 'notUnderstood'> => ({
  conflicts: conflicts.filter(({ path }) => !/^\/(held$|certificates\/|doubts\/)/.test(path)),
  notUnderstood,
});

/** What of a certificate a flow check is held to. */
const heldTo = ({ dueOn, calibrationTemperatureC, calibrationPressureKPa, pairs }: CertificateSaid): string =>
  JSON.stringify([
    dueOn,
    calibrationTemperatureC,
    calibrationPressureKPa,
    pairs.map(({ readLPerMin, trueLPerMin }) => [readLPerMin, trueLPerMin]).sort(([a = 0], [b = 0]) => a - b),
  ]);

const saysNothing = ({ dueOn, calibrationTemperatureC, calibrationPressureKPa, pairs }: CertificateSaid): boolean =>
  dueOn === null && calibrationTemperatureC === null && calibrationPressureKPa === null && pairs.length === 0;

/** A certificate of no day may be the newest, unless it was due before the other one was made. */
const mayBeNewest = (undated: CertificateSaid, day: string): boolean =>
  !saysNothing(undated) && !(undated.dueOn !== null && undated.dueOn <= day);

/** Newest last; of one day the one with the earlier due day, then that of the lower id, so that the order of entry decides nothing. */
const order = (one: CertificateSaid): string =>
  `${one.certificateOn ?? ''} ${one.dueOn === null ? '~' : inverted(one.dueOn)} ${one.because[0] ?? ''}`;
const inverted = (day: string): string => day.replace(/\d/g, (digit) => String(9 - Number(digit)));

/** The one that judges flow checks of `onDay` (calendar day). */
export function certificateInForce(meter: MeterRecord, onDay: string): CertificateInForce {
  const entry = certificateOfEntry(meter);
  const { certificates = [] } = meter;
  if (certificates.length === 0) return { ...entry, differing: [] };
  const made = [entry, ...certificates.map(said)]
    .filter(({ certificateOn }) => certificateOn !== null && certificateOn <= onDay)
    .sort((a, b) => (order(a) < order(b) ? -1 : 1));
  const newest = made.at(-1);
  if (!newest) return { ...entry, differing: [] };
  const others = made.slice(0, -1).filter(({ certificateOn }) => certificateOn === newest.certificateOn);
  others.push(...inConflict(meter, newest.certificateOn));
  if (entry.certificateOn === null && mayBeNewest(entry, newest.certificateOn ?? '')) others.push(entry);
  return { ...newest, differing: others.filter((one) => heldTo(one) !== heldTo(newest)) };
}

/** Of two certificates that differ the one that asks for more: no due day, then the earlier one. */
export function judgingDueOn({ dueOn, differing }: CertificateInForce): string | null {
  const days = [dueOn, ...differing.map((one) => one.dueOn)];
  return days.includes(null) ? null : (days.sort()[0] ?? null);
}
