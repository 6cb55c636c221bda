/** The box for the laboratory: what goes in, what is asked, the custody sheet, and the hand-over. Read by supervisor and office. */
import type { GapKey } from '#findings/gaps.ts';
import { formatQuantity } from './quantity.ts';

type Params = Readonly<Record<string, string | number>>;
/** Gaps of a day are told on the day's page. */
export type BoxGapKey = Exclude<
  GapKey,
  | 'noSample'
  | 'hoursNotStated'
  | 'otherWorkNotAsked'
  | 'resultAwaited'
  | 'minutesUnknown'
  | 'regularNotSaid'
  | 'conditionsMissing'
>;

const cassettes = (count: number): string => (count === 1 ? 'one cassette' : `${count} cassettes`);
const blanks = (count: number): string => (count === 1 ? 'one field blank' : `${count} field blanks`);

export const gapSentences: Readonly<Record<BoxGapKey, (p: Params) => string>> = {
  boxNotPacked: () => 'This box is not in the book on this device.',
  siteMissing: () => 'The site of this box is not in the book on this device. Take in the file of the other device.',
  laboratoryMissing: () => 'The laboratory is not in the book on this device. Take in the file of the other device.',
  samplerMissing: () => 'Who sampled is not in the book on this device. Take in the file of the other device.',
  firmMissing: () => 'The firm has no name in this book.',
  methodNotStated: () => 'No method is asked for: the laboratory will choose one.',
  reportingLimitNotStated: () =>
    'No reporting limit is asked for: a low result may come back too coarse to prove anything.',
  accreditationMissing: () => 'The accreditation of the laboratory is not written down.',
  addressMissing: () => 'The address of the laboratory is not written down.',
  sampleMissing: (p) =>
    `${Number(p.missingCount) === 1 ? 'One cassette' : `${p.missingCount} cassettes`} of this box are not in the book on this device. Take in the file of the other device.`,
  numberTwice: (p) => `Two cassettes in this box bear the number ${p.sampleNumber}. Give one of them another number.`,
  sampleNotStarted: (p) =>
    `${p.sampleNumber} was never put on. Take it out of the box, or write down when it was put on.`,
  sampleOpen: (p) => `${p.sampleNumber} still runs on the worker. Write down when it was stopped.`,
  flowBeforeMissing: (p) => `${p.sampleNumber}: no flow before. The sheet says "not taken" and gives no volume.`,
  flowAfterMissing: (p) => `${p.sampleNumber}: no flow after. The sheet says "not taken" and gives no volume.`,
  identifierMissing: (p) => `${p.sampleNumber}: this worker has no number of the firm. The sheet says "not stated".`,
  lotMissing: (p) =>
    `${p.sampleNumber}: its lot is not in the book on this device. Take in the file of the other device.`,
  notSealed: (p) => `${p.sampleNumber}: not written down as sealed.`,
  notLabelled: (p) => `${p.sampleNumber}: not written down as labelled.`,
  blanksMissing: (p) =>
    Number(p.blanksCount) === 0
      ? `No field blank is in this box; ${blanks(Number(p.wantedCount))} should go with it.`
      : `${blanks(Number(p.blanksCount))} in this box; ${p.wantedCount} should go with it.`,
  blankLotMissing: () => 'No field blank is of the same lot as some of the samples.',
};

export const en = {
  boxes: {
    heading: 'Boxes for the laboratory',
    empty: 'No box has been packed yet.',
    waiting: (count: number) =>
      count === 0 ? 'Nothing waits to be sent.' : `${cassettes(count)} ${count === 1 ? 'waits' : 'wait'} to be sent.`,
    pack: 'Pack a box',
    toToday: 'Go to Today',
    list: 'Newest first',
    line: (count: number, laboratory: string) => `${cassettes(count)} for ${laboratory}`,
    detail: (site: string, day: string) => `${site}, packed ${day}`,
    standing: {
      noSheet: 'packed, no sheet yet',
      sheet: 'sheet made, not handed over',
      away: (to: string, when: string) => `with ${to} since ${when}`,
      arrived: (when: string) => `arrived ${when}`,
    },
  },
  pack: {
    heading: 'Pack a box for the laboratory',
    changeHeading: 'Change what is in the box or asked',
    site: 'Cassettes of which site',
    samples: 'What goes into the box',
    samplesHint: 'Compare each number with the cassette in your hand.',
    sample: (number: string, who: string) => `${number}, ${who}`,
    blank: 'field blank',
    notSealed: 'not written down as sealed',
    marked: 'marked void; it goes along all the same',
    onDay: (day: string) => `sampled ${day}`,
    opened: (day: string) => `opened ${day}`,
    running: (numbers: string) => `Not stopped yet, so not in the list: ${numbers}.`,
    nothing: 'No stopped cassette waits to be sent. Stop the pump first, then pack the box.',
    counts: (air: number, blank: number, wanted: number) =>
      `${air === 1 ? 'One air sample' : `${air} air samples`}, ${blank === 0 ? 'no field blank' : blanks(blank)}. ${blank >= wanted ? 'Enough blanks.' : `${wanted} field blanks should go with them.`}`,
    noneChosen: 'Choose at least one cassette',
    laboratory: 'Which laboratory',
    addLaboratory: 'Add a laboratory',
    sampler: 'Who sampled',
    analysis: 'Analysis',
    analysisUsual: 'Lead, total, in µg on each filter',
    method: 'Method',
    noMethod: 'Left to the laboratory',
    reportingLimit: 'Reporting limit asked, on each filter',
    reportingLimitHint: 'May stay empty. The lower it is, the less air can prove a day to be low.',
    wallDeposit: 'Include the dust on the inner wall of the cassette?',
    reanalysis: 'Call before analyzing anything again?',
    answers: { yes: 'Yes', no: 'No' },
    turnaround: 'Results wanted within',
    turnaroundHint: 'Such as: 5 working days',
    shownAs: 'Workers on the sheet',
    shownAsChoices: { name: 'By name', identifier: "By the firm's own number" },
    remark: 'Remark for the laboratory, if any',
    save: 'The box is packed',
    change: 'Write the change down',
    why: 'Why is it changed?',
    whyHint: 'The sheet made before no longer holds; the reason stays with the book.',
    nothingChanged: 'Nothing was changed.',
  },
  box: {
    heading: (laboratory: string) => `Box for ${laboratory}`,
    unknownLaboratory: 'a laboratory not in this book',
    gone: 'This box is not in the book on this device.',
    over: (site: string, day: string) => `${site}, packed ${day}`,
    stops: 'Before a sheet can be made',
    open: 'Missing, and said on the sheet',
    noSheet: 'No custody sheet has been made yet.',
    paper: 'Paper',
    papers: { letter: 'Letter', a4: 'A4' },
    make: 'Make the custody sheet',
    makeRevision: (revision: string) => `Make revision ${revision}`,
    making: 'Making the sheet',
    sheets: 'Custody sheet',
    issue: (revision: string, paper: string, when: string) => `Revision ${revision} on ${paper}, made ${when}`,
    issueWhy: (why: string) => `Because: ${why}`,
    handOut: (revision: string) => `Hand out revision ${revision}`,
    handOutAgain: 'Hand this one out',
    notHere: 'Its PDF is not on this device.',
    failed:
      'The sheet could not be made on this device. Nothing was written down. Load the page again, then try again.',
    differs: 'The sheet differs from the record: raise its revision',
    why: 'What changed, and why?',
    whyMissing: 'Say what changed and why: the laboratory holds the sheet made before',
    whyHint: 'Printed on the new revision, for the laboratory.',
    difference: (what: string, onSheet: string, onRecord: string) => `${what}: sheet ${onSheet}, record ${onRecord}`,
    incomplete: 'The record is no longer complete enough for a sheet',
    change: 'Change what is in the box or asked',
    inside: 'In the box',
    asked: 'Asked of the laboratory',
    outcome: {
      shared: 'Handed over to the device. Print it, and put it into the box before you seal it.',
      saved: 'Saved where you said. Print it, and put it into the box before you seal it.',
      downloaded: 'Handed to the browser as a download. Print it, and put it into the box before you seal it.',
      cancelled: 'Not handed out. The sheet is still here.',
      tapAgain: 'The device waited too long. Tap once more; the sheet is still ready.',
      cannotShareHere: 'This device cannot hand the file on from here. Open the book in a browser window instead.',
      unknown: 'The device did not say why, but the sheet was not handed out. It is still here; try again.',
    },
    handOver: {
      heading: 'Hand-over to the carrier',
      to: 'Handed over to',
      toHint: 'The carrier, or whoever took the box',
      tracking: 'Tracking number, if there is one',
      sealed: 'Is the box sealed?',
      save: 'Handed over now',
      done: (to: string, when: string) => `Handed over to ${to} ${when}`,
      withTracking: (number: string) => `Tracking number ${number}`,
      isSealed: 'The box was sealed.',
      notSealed: 'The box was not sealed.',
    },
    arrived: 'It has arrived',
    arrivedOn: (when: string) => `Arrived at the laboratory ${when}`,
    results: 'Key in the results',
    fileName: (day: string, revision: string) => `custody-sheet-${day}-revision-${revision}.pdf`,
  },
  /** What differs, by the name of the value in the sheet's data. */
  values: {
    firmName: 'Firm',
    name: 'Name',
    stateCode: 'State',
    setting: 'Indoors or outdoors',
    zone: 'Time zone',
    samplerName: 'Sampler',
    address: 'Address of the laboratory',
    accreditation: 'Accreditation',
    analysis: 'Analysis',
    method: 'Method',
    reportingLimitUg: 'Reporting limit, µg',
    includeWallDeposit: 'Wall deposit',
    callBeforeReanalysis: 'Call before re-analysis',
    turnaround: 'Turnaround',
    remark: 'Remark',
    workersShownAs: 'Workers shown',
    worker: 'worker',
    workOn: 'work day',
    lotNumber: 'lot',
    media: 'Filter and cassette',
    startedAt: 'start',
    stoppedAt: 'stop',
    durationMin: 'minutes',
    flowBeforeLPerMin: 'flow before, L/min',
    flowAfterLPerMin: 'flow after, L/min',
    averageFlowLPerMin: 'average flow, L/min',
    volumeL: 'volume, L',
    remarks: 'remarks',
    mishaps: 'what happened to it',
    void: 'marked void',
    sampleNumber: 'number',
    airCount: 'Air samples',
    blankCount: 'Field blanks',
  } as Readonly<Record<string, string>>,
  other: 'A value',
  ofSample: (number: string, what: string) => `${number}, ${what}`,
  takenOut: (number: string) => `${number} is no longer in the box`,
  putIn: (number: string) => `${number} is new in the box`,
  nothing: 'nothing',
  yesNo: (value: boolean) => (value ? 'yes' : 'no'),
  absent: { notTaken: 'not taken', notStated: 'not stated', noAirDrawn: 'no air drawn', notAveraged: 'no average' },
  limitText: (massUg: number) => formatQuantity(massUg, 'µg'),
};
