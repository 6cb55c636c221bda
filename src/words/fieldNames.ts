/** What each value of a fact is called where it is shown by itself: struck, corrected, in dispute. Read by supervisor and office. */
import { en as conditions } from './conditions.ts';
import { namesOfDuties } from './fieldNamesOfDuties.ts';
import { namesOfSeason } from './fieldNamesOfSeason.ts';
import { nameInWords } from './quantity.ts';

const names: Readonly<Record<string, string>> = {
  at: 'Time',
  pumpMin: "The pump's own minutes",
  reason: 'Reason',
  remark: 'Remark',
  openedWhere: 'Where it was opened',
  lockedIn: 'Locked in where',
  lockedById: 'Locked in by',
  labelled: 'Labelled',
  pumpId: 'Pump',
  lotId: 'Lot',
  meterId: 'Flow meter',
  workerId: 'Worker',
  siteId: 'Site',
  laboratoryId: 'Laboratory',
  jobClassificationId: 'Job classification',
  samplerId: 'Who sampled',
  sampleId: 'Cassette',
  sampleIds: 'Cassettes in the box',
  sampleNumber: 'Number on the cassette',
  taskIds: 'Tasks',
  follows: 'Cassette before it',
  mode: 'Who fitted it',
  points: 'Fitting points',
  pumpSecured: 'Pump secured',
  tubingSecured: 'Tubing secured',
  breathingZone: 'Filter in the breathing zone',
  outsideRespirator: 'Filter outside the respirator',
  insideHelmet: 'Filter inside the helmet',
  inletDown: 'Inlet pointing down',
  plugsOff: 'Plugs off',
  running: 'Pump running',
  inPlace: 'Filter in its place',
  observationOffered: 'Right to watch offered',
  initials: 'Initials',
  language: 'Language',
  stillRunning: 'Pump ran on',
  awayFromLead: 'Away from the lead area',
  fault: 'What was wrong with the pump',
  mishap: 'What happened to the cassette',
  use: 'Which flow counts',
  readings: 'Readings of the flow',
  inLine: 'What was in line',
  purpose: 'When the flow was checked',
  temperatureC: 'Temperature at the check',
  pressureKPa: 'Station pressure',
  pieces: 'Hours of work',
  startedAt: 'began',
  endedAt: 'ended',
  place: 'Place',
  employer: 'Employer',
  callOut: 'A call-out',
  secondSite: 'Work at a second site',
  secondEmployer: 'Work for a second employer',
  fromAt: 'From',
  toAt: 'To',
  otherWork: 'Other work that day',
  conditions: 'Conditions of the day',
  as: 'What the minutes were',
  regular: 'A regular day',
  mass: 'Lead on the filter',
  massUg: 'Lead on the filter',
  reportingLimitUg: 'Reporting limit',
  reportNumber: 'Report number',
  accreditation: 'Accreditation',
  methodId: 'Method',
  receivedOn: 'Received on',
  reportedOn: 'Date of the report',
  analysedOn: 'Analysed on',
  blankCorrected: 'Blanks subtracted by the laboratory',
  wallDeposit: 'Wall deposit included',
  laboratoryVolumeL: "The laboratory's volume",
  laboratoryConcentrationUgPerM3: "The laboratory's concentration",
  saeFraction: 'Sampling and analytical error',
  analysis: 'Analysis',
  includeWallDeposit: 'Wall deposit asked for',
  callBeforeReanalysis: 'Call before re-analysis',
  turnaround: 'Results wanted within',
  workersShownAs: 'Workers on the sheet',
  name: 'Name',
  firmName: 'Name of the firm',
  identifier: "The firm's own number",
  stateCode: 'State',
  setting: 'Indoors or outdoors',
  altitudeM: 'Altitude',
  zone: 'Time zone',
  serial: 'Serial number',
  model: 'Make and model',
  meterKind: 'Kind of flow meter',
  certificateOn: 'Date of the certificate',
  dueOn: 'Calibration due on',
  calibrationTemperatureC: 'Temperature it was calibrated at',
  calibrationPressureKPa: 'Pressure it was calibrated at',
  pairs: 'Lines of the certificate',
  lotNumber: 'Lot number',
  media: 'Filter and cassette',
  expiresOn: 'Use before',
  address: 'Address',
  ...conditions.labels,
  stands: 'Does the sample stay void',
  to: 'Handed over to',
  trackingNumber: 'Tracking number',
  sealed: 'Sealed',
  text: 'What was written',
  ...namesOfDuties,
  ...namesOfSeason,
};

/** What stands in a list of its own: readings, pieces of work, lines of a certificate. */
const inLists: Readonly<Record<string, (n: number, inside: string) => string>> = {
  readings: (n, inside) =>
    `Reading ${n}${inside === 'lowLPerMin' ? ', lowest' : inside === 'highLPerMin' ? ', highest' : ''}`,
  pieces: (n, inside) => `Piece of work ${n}${inside === '' ? '' : `: ${nameOfField(inside)}`}`,
  slots: (n, inside) => `Worker and day ${n}${inside === '' ? '' : `: ${nameOfField(inside)}`}`,
  wearers: (n, inside) => `Wearer ${n}${inside === '' ? '' : `: ${nameOfField(inside)}`}`,
  labels: (n, inside) => `Label ${n}${inside === '' ? '' : `: ${nameOfField(inside)}`}`,
  pairs: (n, inside) =>
    `Certificate line ${n}${inside === 'readLPerMin' ? ', read' : inside === 'trueLPerMin' ? ', true flow' : ''}`,
};

const ownOf = (table: Readonly<Record<string, string>>, key: string): string | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** A field of any fact; one of a newer version by its own name in words. */
export function nameOfField(field: string): string {
  const words = nameInWords(field);
  return ownOf(names, field) ?? words.charAt(0).toUpperCase() + words.slice(1);
}

/** A place in a list, a day or the id of a record: tells which one, not what it is. */
const namesOne = /^\d+$|^\d{4}-\d\d-\d\d$|^(?=.*\d)[0-9a-hjkmnp-tv-z]{12}$/;

/** What the value at a place (a JSON pointer into a fact) is called. */
export function labelOf(path: string): string {
  const [first = '', index = '', inside = ''] = path.split('/').slice(1);
  const list = /^\d+$/.test(index) && Object.hasOwn(inLists, first) ? inLists[first] : undefined;
  if (list) return list(Number(index) + 1, inside);
  const last = path.split('/').findLast((part) => part !== '' && !namesOne.test(part));
  return nameOfField(last ?? first);
}
