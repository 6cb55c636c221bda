/** Entries of the book counted by what they tell: '2 samples', '5 results'. Read by the office before a file is taken in. */
import type { FactKind } from '#records/fact.ts';

type Named = readonly [one: string, many: string];

const namedByKind: Readonly<Record<FactKind, Named>> = {
  'bookOpened.v1': ['beginning of the book', 'beginnings of the book'],
  'siteAdded.v1': ['site', 'sites'],
  'personAdded.v1': ['person', 'people'],
  'jobClassificationAdded.v1': ['job classification', 'job classifications'],
  'pumpAdded.v1': ['pump', 'pumps'],
  'meterAdded.v1': ['flow meter', 'flow meters'],
  'lotAdded.v1': ['lot of cassettes', 'lots of cassettes'],
  'laboratoryAdded.v1': ['laboratory', 'laboratories'],
  'nameChanged.v1': ['change of a name', 'changes of names'],
  'noteMade.v1': ['note', 'notes'],
  'shiftOpened.v1': ['shift', 'shifts'],
  'flowChecked.v1': ['flow check', 'flow checks'],
  'conditionsNoted.v1': ['note of the conditions of a day', 'notes of the conditions of a day'],
  'samplePrepared.v1': ['sample', 'samples'],
  'fittingChecked.v1': ['fitting', 'fittings'],
  'pumpPutOn.v1': ['pump put on', 'pumps put on'],
  'pumpLookedAt.v1': ['look at a pump', 'looks at a pump'],
  'leadAreaLeft.v1': ['leaving of the lead area', 'leavings of the lead area'],
  'leadAreaEntered.v1': ['return to the lead area', 'returns to the lead area'],
  'pumpTakenOff.v1': ['pump taken off for a while', 'pumps taken off for a while'],
  'pumpPutBackOn.v1': ['pump put back on', 'pumps put back on'],
  'pumpFaulted.v1': ['pump fault', 'pump faults'],
  'mishapNoted.v1': ['mishap with a cassette', 'mishaps with cassettes'],
  'pumpStopped.v1': ['pump stopped', 'pumps stopped'],
  'stoppedByMistake.v1': ['stop by mistake', 'stops by mistake'],
  'cassetteSealed.v1': ['cassette sealed', 'cassettes sealed'],
  'blankOpened.v1': ['field blank', 'field blanks'],
  'flowDecided.v1': ['decision about a flow', 'decisions about flows'],
  'sampleVoided.v1': ['sample declared void', 'samples declared void'],
  'remarkMade.v1': ['remark', 'remarks'],
  'clockSetBackNoticed.v1': ['clock set back', 'clocks set back'],
  'workHoursStated.v1': ['statement of hours of work', 'statements of hours of work'],
  'otherWorkAsked.v1': ['answer about other work', 'answers about other work'],
  'minutesExplained.v1': ['word on minutes without a sample', 'words on minutes without a sample'],
  'dayDescribed.v1': ['word on a regular day', 'words on regular days'],
  'resultReceived.v1': ['result', 'results'],
  'boxPacked.v1': ['box packed', 'boxes packed'],
  'custodySheetIssued.v1': ['custody sheet', 'custody sheets'],
  'boxHandedOver.v1': ['box handed over', 'boxes handed over'],
  'boxArrived.v1': ['box arrived', 'boxes arrived'],
  'valueCorrected.v1': ['correction', 'corrections'],
  'correctionSettled.v1': ['settled correction', 'settled corrections'],
  'photoTaken.v1': ['picture', 'pictures'],
  'voidReviewed.v1': ['word on a void sample with a result', 'words on void samples with results'],
  'sheetDifferenceKept.v1': ['custody sheet left as it is', 'custody sheets left as they are'],
  'missingEntriesAccepted.v1': ['word on missing entries', 'words on missing entries'],
  'workNoted.v1': ['entry of the roster', 'entries of the roster'],
  'workStruck.v1': ['struck entry of the roster', 'struck entries of the roster'],
  'employmentStated.v1': ['word on who works here', 'words on who works here'],
  'changesAsked.v1': ['answer on what is new at a job', 'answers on what is new at a job'],
  'representsStated.v1': ['word on whom a measurement stands for', 'words on whom a measurement stands for'],
  'measurementReported.v1': ['measurement reported to us', 'measurements reported to us'],
  'measurementReliedOn.v1': ['job that rests on an earlier measurement', 'jobs that rest on an earlier measurement'],
  'noticeIssued.v1': ['notice of results', 'notices of results'],
  'noticeGiven.v1': ['notice given or posted', 'notices given or posted'],
  'determinationWritten.v1': ['written determination', 'written determinations'],
  'exposureRecordIssued.v1': ['exposure record handed out', 'exposure records handed out'],
  'dutyDone.v1': ['thing done that the rule asks', 'things done that the rule asks'],
  'dutyReopened.v1': ['thing that was not done after all', 'things that were not done after all'],
  'limitsChosen.v1': ['choice of limits', 'choices of limits'],
  'recordsRequested.v1': ['request to see records', 'requests to see records'],
  'measurementPlanned.v1': ['plan to measure', 'plans to measure'],
  'plannedDayMissed.v1': ['planned day that did not come about', 'planned days that did not come about'],
  'planDropped.v1': ['plan given up', 'plans given up'],
  'dayPrepared.v1': ['day made ready', 'days made ready'],
  'labelsMade.v1': ['printing of labels', 'printings of labels'],
  'gearHeld.v1': ['word on whose gear it is', 'words on whose gear it is'],
  'pumpCharged.v1': ['charge of a pump', 'charges of pumps'],
  'certificateEntered.v1': ['newer certificate of a flow meter', 'newer certificates of flow meters'],
  'gearDoubted.v1': ['gear found bad', 'gear found bad'],
  'gearDoubtSettled.v1': ['decision on gear found bad', 'decisions on gear found bad'],
  'pricesStated.v1': ['list of prices', 'lists of prices'],
  'moneySpent.v1': ['entry of money', 'entries of money'],
  'spendingStruck.v1': ['struck entry of money', 'struck entries of money'],
};

const ofNewer: Named = ['entry of a newer version', 'entries of a newer version'];

/** What the office looks for first stands first; the small steps of a day follow. */
const first: readonly string[] = [
  'samplePrepared.v1',
  'blankOpened.v1',
  'resultReceived.v1',
  'valueCorrected.v1',
  'sampleVoided.v1',
  'custodySheetIssued.v1',
  'noticeIssued.v1',
  'determinationWritten.v1',
  'photoTaken.v1',
];

export const counted = (count: number, [one, many]: Named): string =>
  `${count.toLocaleString('en-US')} ${count === 1 ? one : many}`;

export const entries = (count: number): string => counted(count, ['entry', 'entries']);
export const filesText = (count: number): string => counted(count, ['paper or picture', 'papers and pictures']);

const nameOf = (kind: string): Named => (Object.hasOwn(namedByKind, kind) ? namedByKind[kind as FactKind] : ofNewer);

const rank = (kind: string): number => {
  const at = first.indexOf(kind);
  return at >= 0 ? at : Object.hasOwn(namedByKind, kind) ? first.length + Object.keys(namedByKind).indexOf(kind) : 999;
};

/** One line a kind, in the order in which an office asks. */
export const countedKinds = (countByKind: Readonly<Record<string, number>>): readonly string[] =>
  Object.entries(countByKind)
    .filter(([, count]) => count > 0)
    .sort(([a], [b]) => rank(a) - rank(b))
    .map(([kind, count]) => counted(count, nameOf(kind)));
