/** What the custody sheet says to a courier and a laboratory. English only: the worker does not read this paper. */
import type { Absence, CustodyRow, CustodySheet } from '#records/custodySheet.ts';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

const absent: Record<Absence, string> = {
  notTaken: 'not taken',
  notStated: 'not stated',
  noAirDrawn: 'no air drawn',
  notAveraged: 'no average',
};

export const en = {
  lang: 'en-US',
  title: 'Custody sheet',
  documentTitle: (site: string, day: string, revision: string) =>
    `Custody sheet, ${site}, ${day}, revision ${revision}`,
  inBox: (airCount: number, blankCount: number) =>
    `${counted(airCount + blankCount, 'filter cassette', 'filter cassettes')} in this box: ${counted(airCount, 'air sample', 'air samples')}, ${blankCount === 0 ? 'no field blank' : counted(blankCount, 'field blank', 'field blanks')}`,
  example: 'EXAMPLE',
  exampleNote:
    'EXAMPLE from a practice book: nothing on this sheet was sampled. Do not analyze, do not keep as a record.',
  madeOn: (day: string, time: string) => `Made ${day} at ${time}`,
  revision: (revision: string) => `revision ${revision}`,
  replaces: (revision: string, before: string, why: string) =>
    `Revision ${revision} replaces revision ${before}, which no longer holds. What changed and why: ${why}`,
  absent,
  sentBy: 'Sent by',
  firm: 'Firm',
  site: 'Site',
  place: 'Place',
  placeIs: (place: string, stateCode: string) => `${place}, ${stateCode}`,
  placeUnstated: (stateCode: string) => stateCode,
  setting: 'Work was done',
  settings: { indoors: 'indoors', outdoors: 'outdoors' },
  sampler: 'Sampler',
  zone: 'Times',
  zoneIs: (zone: string) => `local, ${zone}`,
  to: 'To the laboratory',
  laboratory: 'Laboratory',
  address: 'Address',
  accreditation: 'Accreditation',
  lots: 'Cassettes, lot',
  lotIs: (lotNumber: string, media: string) => `${lotNumber}: ${media}`,
  asked: 'What is asked',
  analysis: 'Analysis',
  method: 'Method',
  reportingLimit: 'Reporting limit',
  reportingLimitIs: (figure: string) => `${figure} µg on each filter`,
  wallDeposit: 'Wall deposit',
  wallDepositIs: { yes: 'include it in the result', no: 'do not include it' },
  reanalysis: 'Re-analysis',
  reanalysisIs: { yes: 'call before any', no: 'no call needed' },
  turnaround: 'Turnaround',
  remark: 'Remark',
  columns: {
    sampleNumber: ['Sample', 'number'],
    workOn: ['Work day'],
    worker: ['Worker'],
    workerIdentifier: ['Worker', '(identifier)'],
    lotNumber: ['Lot'],
    startedAt: ['Start'],
    stoppedAt: ['Stop'],
    durationMin: ['Worn', 'min'],
    flowBeforeLPerMin: ['Flow', 'before', 'L/min'],
    flowAfterLPerMin: ['Flow', 'after', 'L/min'],
    averageFlowLPerMin: ['Average', 'flow', 'L/min'],
    volumeL: ['Volume', 'L'],
    remarks: ['Remarks'],
  },
  fieldBlank: 'Field blank',
  blankRow: 'no air drawn: analyze, report in µg',
  mishaps: {
    wet: 'got wet',
    dropped: 'was dropped',
    overloaded: 'filter overloaded',
    inletUp: 'inlet pointed up',
    opened: 'was opened',
    other: 'mishap',
  } satisfies Record<CustodyRow['mishaps'][number], string>,
  markedVoid: 'marked void by the firm',
  nextDay: 'next day',
  noRemarks: 'none',
  seeNote: (note: number) => `note ${note}`,
  notes: 'Notes',
  note: (note: number, subject: string, text: string) => `Note ${note}, ${subject}: ${text}`,
  ofSample: (sampleNumber: string, subject: string) => `sample ${sampleNumber}, ${subject}`,
  bracketNote:
    'Figures in square brackets, such as [U+1F600], stand for letters or signs that this typeface does not hold, by their Unicode numbers. The data attached to this file keep them as they were written.',
  handOver: 'Hand-over',
  handOverNote: 'On a sealed box the carrier’s tracking number stands for the carrier’s signature.',
  handOverColumns: {
    from: ['Handed over by'],
    fromSigned: ['Signature'],
    fromWhen: ['Date and time'],
    to: ['Received by'],
    toSigned: ['Signature, or carrier', 'and tracking number'],
    toWhen: ['Date and time'],
    seal: ['Seal whole?'],
  },
  sealBoxes: '☐ yes   ☐ no',
  arrival: (count: number) =>
    `On arrival at the laboratory · cassettes counted ________ of ${count} · plugs in place ☐ yes ☐ no · remarks ____________________________________`,
  attached: 'The data of this sheet are attached to the PDF file as custody-sheet.json.',
  /** Stands beside the attached record, not on the page. */
  attachedRecord: {
    name: 'The record that this sheet rests on, one entry a line. Fullshift rebuilds the shift from it where the phone was lost. It names the people who were sampled.',
    identifier:
      'The record that this sheet rests on, one entry a line. Fullshift rebuilds the shift from it where the phone was lost. Entries that name people are left out, as on the sheet; remarks stand as they were written.',
  } satisfies Record<CustodySheet['workersShownAs'], string>,
  heads: (heads: string) => `Record heads when this sheet was made: ${heads === '' ? 'none' : heads}`,
  headsShort: (heads: string) => `record heads ${heads === '' ? 'none' : heads}`,
  editions: (app: string, rules: string, formulas: string) =>
    `Fullshift ${app} · rules ${rules} · formulas ${formulas}`,
  page: (number: number, count: number) => `page ${number} of ${count}`,
  goesOn: 'Custody sheet, continued',
};

/** Decimals as printed: flows to 0.001 L/min, volumes to 0.1 L, minutes whole where they are. The attached data keep every digit. */
export const figures = {
  flow: (flowLPerMin: number): string => flowLPerMin.toFixed(3),
  volume: (volumeL: number): string => volumeL.toFixed(1),
  minutes: (durationMin: number): string => String(Number(durationMin.toFixed(1))),
  mass: (massUg: number): string => String(Number(massUg.toPrecision(6))),
};

/** A local time with offset as a day and a clock time; any other text as it stands. */
export const wallTimeInWords = (text: string): string =>
  /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(text) ? `${text.slice(0, 10)} ${text.slice(11, 16)}` : text;
