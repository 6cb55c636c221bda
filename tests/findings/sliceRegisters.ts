/** People, places and gear of the slices, and the ids that everything else refers to. Plainly invented. */
import type { LotRecord, MeterRecord, PersonRecord, ShiftRecord, SiteRecord } from '#records/book.ts';

export const workOn = '2026-11-25';
export const siteId = 's00000000001';
export const workerId = 'p00000000001';
export const shiftId = `${siteId}.${workOn}`;
export const workdayId = `${workerId}.${workOn}`;
export const boxId = 'x00000000001';
export const lotId = 'h00000000001';
export const laboratoryId = 'a00000000001';
/** An instant of the day in UTC: `at('07:00')`. */
export const at = (time: string): string => `${workOn}T${time}:00.000Z`;

let facts = 0;
/** A fresh fact id; nothing may depend on its value. */
export const factId = (): string => `wwwwwwwwwwww.${String(++facts).padStart(8, '0')}`;
export const base = (kind: string, id: string) => ({
  key: `${kind}:${id}`,
  id,
  factIds: [factId()],
  strikes: [],
  conflicts: [],
  notUnderstood: [],
});

export const site = (more: Partial<SiteRecord> = {}): SiteRecord => ({
  ...base('site', siteId),
  siteId,
  name: 'Old public library',
  stateCode: 'TX',
  setting: 'indoors',
  altitudeM: 0,
  zone: 'America/Chicago',
  ...more,
});

export const meter = (more: Partial<MeterRecord> = {}): MeterRecord => ({
  ...base('meter', 'm00000000001'),
  meterId: 'm00000000001',
  meterKind: 'dryPiston',
  serial: 'P-1',
  certificateOn: '2026-06-01',
  dueOn: '2027-06-01',
  calibrationTemperatureC: 25,
  calibrationPressureKPa: 101.325,
  pairs: [],
  ...more,
});

export const lot = (more: Partial<LotRecord> = {}): LotRecord => ({
  ...base('lot', lotId),
  lotId,
  lotNumber: 'L-7',
  media: 'MCE 0.8 µm, 37 mm, closed face',
  expiresOn: null,
  ...more,
});

export const shift = (more: Partial<ShiftRecord> = {}): ShiftRecord => ({
  ...base('shift', shiftId),
  siteId,
  workOn,
  openedAt: at('06:30'),
  conditions: null,
  ...more,
});

export const person = (id: string, name: string): PersonRecord => ({
  ...base('person', id),
  personId: id,
  name,
  identifier: 'W-1',
  language: 'en',
  jobClassificationId: null,
  employer: null,
});
