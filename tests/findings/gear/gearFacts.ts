/** Doubts, settlements and certificates as the records of gear have them. Plainly invented. */
import type { Certificate, GearDoubt, MeterRecord } from '#records/book.ts';
import { factId } from '../sliceRegisters.ts';

type Gear = GearDoubt['gear'];
type Settled = NonNullable<GearDoubt['settled']>;

export const doubt = (gear: Gear, gearId: string, more: Partial<GearDoubt> = {}): GearDoubt => ({
  gear,
  gearId,
  doubtId: 'd00000000001',
  foundOn: '2027-01-10',
  fromOn: null,
  untilOn: null,
  found: 'reads 8 % high against the soap film',
  factId: factId(),
  settled: null,
  ...more,
});

export const settled = (
  decision: Settled['decision'],
  trueOverRead: number | null = null,
  more: Partial<Settled> = {},
): Settled => ({ decision, trueOverRead, why: 'compared anew with a soap film', factId: factId(), ...more });

export const certificate = (certificateOn: string, more: Partial<Certificate> = {}): Certificate => ({
  certificateOn,
  dueOn: null,
  by: null,
  calibrationTemperatureC: null,
  calibrationPressureKPa: null,
  pairs: [],
  factId: factId(),
  ...more,
});

/** The meter with certificates entered later, their facts among its own. */
export const withCertificates = (meter: MeterRecord, ...certificates: readonly Certificate[]): MeterRecord => ({
  ...meter,
  factIds: [...meter.factIds, ...certificates.map((one) => one.factId)],
  certificates,
});
