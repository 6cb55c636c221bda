/** Sheets of the example firm: windows restored in an old library. People and places are invented. */
import { readFileSync } from 'node:fs';
import { absent, type CustodyRow, type CustodySheet } from '#records/custodySheet.ts';

export const fonts = {
  regular: new Uint8Array(readFileSync('src/documents/fonts/DejaVuSans.ttf')),
  bold: new Uint8Array(readFileSync('src/documents/fonts/DejaVuSans-Bold.ttf')),
};

const crew = ['Íñigo Muñoz Güemes', 'Ana Belén Peñalver', 'Tomáš Dvořák', 'Joe Whitlock', 'Marisol Ibáñez Ruiz'];
const two = (value: number): string => String(value).padStart(2, '0');
const idOf = (index: number): string => `a${String(index).padStart(11, '0')}`;

/** A sample of a working day with figures a pump at 2 L/min gives; every figure differs, so that a test can find each one. */
export function airRow(index: number, worker = crew[index % crew.length] ?? ''): CustodyRow {
  const durationMin = 401 + index;
  const flowBeforeLPerMin = Number((2.011 + index / 1000).toFixed(3));
  const flowAfterLPerMin = Number((1.951 + index / 1000).toFixed(3));
  const averageFlowLPerMin = (flowBeforeLPerMin + flowAfterLPerMin) / 2;
  return {
    sampleId: idOf(index),
    sampleNumber: String(410_010 + index),
    sampleKind: 'air',
    workOn: '2026-05-12',
    worker,
    lotNumber: 'K2417',
    startedAt: `2026-05-12T07:${two(index % 60)}:00-04:00`,
    stoppedAt: `2026-05-12T14:${two((index * 7) % 60)}:00-04:00`,
    durationMin,
    flowBeforeLPerMin,
    flowAfterLPerMin,
    averageFlowLPerMin,
    volumeL: averageFlowLPerMin * durationMin,
    remarks: index % 6 === 4 ? ['Pump fault, two pieces of time'] : [],
    mishaps: [],
    void: false,
  };
}

export const blankRow = (index: number): CustodyRow => ({
  sampleId: idOf(index),
  sampleNumber: String(410_010 + index),
  sampleKind: 'blank',
  workOn: '2026-05-12',
  worker: absent('noAirDrawn'),
  lotNumber: 'K2417',
  startedAt: absent('noAirDrawn'),
  stoppedAt: absent('noAirDrawn'),
  durationMin: absent('noAirDrawn'),
  flowBeforeLPerMin: absent('noAirDrawn'),
  flowAfterLPerMin: absent('noAirDrawn'),
  averageFlowLPerMin: absent('noAirDrawn'),
  volumeL: absent('noAirDrawn'),
  remarks: [],
  mishaps: [],
  void: false,
});

/** Stopped without a reading afterwards, past midnight. */
export const openRow = (index: number): CustodyRow => ({
  ...airRow(index),
  stoppedAt: '2026-05-13T00:41:00-04:00',
  flowAfterLPerMin: absent('notTaken'),
  averageFlowLPerMin: absent('notAveraged'),
  volumeL: absent('notAveraged'),
  remarks: ['No reading after: pump fell'],
});

export const sheetOf = (rows: CustodyRow[], change: Partial<CustodySheet> = {}): CustodySheet => ({
  sheetFormat: 'custodySheet.v1',
  boxId: 'b00000000001',
  revision: '1',
  why: absent('notStated'),
  issuedAt: '2026-05-12T16:40:00-04:00',
  practice: false,
  firmName: 'Harrow & Daughter Window Restoration',
  site: {
    name: 'Old Public Library, reading rooms',
    place: '4 Mill Street, Eastwick',
    stateCode: 'VT',
    setting: 'indoors',
    zone: 'America/New_York',
  },
  samplerName: 'Wilhelmina Harrow',
  laboratory: {
    name: 'Stillwater Industrial Hygiene Laboratory',
    address: '200 Assay Road\nStillwater, VT',
    accreditation: 'ISO/IEC 17025, certificate 0000 (invented)',
  },
  analysis: 'Lead, total, in µg on each filter',
  method: 'NIOSH 7303',
  reportingLimitUg: 0.75,
  includeWallDeposit: true,
  callBeforeReanalysis: true,
  turnaround: '5 working days',
  remark: absent('notStated'),
  workersShownAs: 'name',
  lots: [{ lotNumber: 'K2417', media: 'MCE 0.8 µm, 37 mm, closed face' }],
  rows,
  counts: {
    airCount: rows.filter((row) => row.sampleKind === 'air').length,
    blankCount: rows.filter((row) => row.sampleKind === 'blank').length,
  },
  heads: [
    { factId: 'k3v9q0d7h2mn.00000214', link: '9f2c4b7e1d6a3805c4e7f1b2a9d8063c5e4f7a1b2c3d9e8f70615243a4b5c6d7' },
    { factId: 't8x1c5r4w6ez.00000031', link: '03b8e6d1c2f4a5970b1e3d5c7f9a2b4d6e8f0a1c3b5d7e9f1a2c4b6d8e0f1a3c' },
  ],
  editions: { app: '0.1.0', rules: '2026-11', formulas: '1' },
  issuedInstant: '2026-05-12T20:40:00.000Z',
  ...change,
});

/** A sheet of this many cassettes, the last two of them field blanks. */
export const sheetWith = (count: number, change: Partial<CustodySheet> = {}): CustodySheet =>
  sheetOf(
    Array.from({ length: count }, (_, index) => (count > 2 && index >= count - 2 ? blankRow(index) : airRow(index))),
    change,
  );
