/** Limits: which judge, what was read of each and what was not, which are shown beside, and the firm's own stricter ones. */
import type { EditionDifference } from '#findings/duties/limits/editionDifference.ts';
import type { Verdict } from '#findings/workday.ts';
import type { BesideSetFile } from '#reference/besideSet.ts';
import { formatDay, formatInWorking } from './quantity.ts';

type DifferenceKey = BesideSetFile['differs'][number]['key'];

interface SetWords {
  /** What was read, and where. */
  readonly verified: string;
  /** What was not, in one plain sentence. */
  readonly notVerified: string;
}

/** By id of the set. */
export const sets: Readonly<Record<string, SetWords>> = {
  'us-fed-constr-lead': {
    verified:
      'The whole rule in the 2015 annual edition: limits, presumed tasks, determination, monitoring, notices, respirators, records. Three later amendments too: 2019, 2020 and 2022.',
    notVerified: 'Today’s text was not compared paragraph by paragraph. No change of the two limits since was found.',
  },
  'us-ca-constr-lead': {
    verified:
      'In the text in force since 1 January 2025: action level, limit, the limit for abrasive blasting with its last day, and hours of dry blasting before an assessment.',
    notVerified:
      'Its lists of tasks, how often to measure again, the notice and how long to keep records were not read. So there is no list of duties.',
  },
  'us-fed-gi-lead': {
    verified: 'Limits and these differences, in the 2015 annual edition.',
    notVerified: 'It does not apply to construction, so it judges nothing here. Later amendments were not read.',
  },
  'us-ca-gi-lead': {
    verified: 'The action level in the text; the limit in a summary of it.',
    notVerified: 'The rest of the rule was not read. It does not apply to construction.',
  },
  'us-wa-constr-lead': {
    verified: 'The action level, in the state’s text of 20 May 2016.',
    notVerified: 'Its limit was not read in the text, so none is shown. Whether the rule changed since is not known.',
  },
  'us-mi-constr-lead': {
    verified:
      'The state takes over the federal construction rule as amended on 18 February 2020, and replaces some provisions.',
    notVerified: 'The replaced provisions were not read one by one. So there is no list of duties.',
  },
  'niosh-rel': {
    verified: 'On the page of NIOSH, of 2018.',
    notVerified: 'Under review since 2018; whether it changed was not checked. Advice, not law.',
  },
  'acgih-tlv': {
    verified: 'In a table of the National Academies.',
    notVerified: 'That is not the current edition, and the current one was not checked. Advice, not law.',
  },
  'eu-2024-869': {
    verified: 'That the directive is there, and its figure in a summary.',
    notVerified:
      'Which part of the dust it is measured in was not checked, nor the law of any country. National law governs.',
  },
  'uk-claw': {
    verified: 'The figure, in a booklet about the regulations.',
    notVerified: 'Today’s text was not read, and a change was under consultation in 2026.',
  },
  'au-wes': {
    verified: 'The figure, in two summaries: in force since 27 April 2018.',
    notVerified:
      'It is replaced on 1 December 2026; the figure that follows was not seen, so none is shown from then on.',
  },
};

const limitNames = { actionLevel: 'Action level', pel: 'Permissible exposure limit' } as const;

const besideName = (kind: 'own' | 'otherRule' | 'advice', which: 'actionLevel' | 'pel', value: number): string => {
  const own = { actionLevel: 'our own action level', pel: 'our own limit' };
  const other = { actionLevel: 'its action level', pel: 'its limit' };
  return `${(kind === 'own' ? own : other)[which]}, ${formatInWorking(value, 'µg/m³')}`;
};

const verdictWords: Readonly<Record<Verdict, (limit: string) => string>> = {
  below: (limit) => `Below ${limit}`,
  exactlyAt: (limit) => `Exactly at ${limit}`,
  above: (limit) => `Above ${limit}`,
  atOrAbove: (limit) => `At or above ${limit}; how far is not known`,
  unresolved: (limit) => `Not settled against ${limit}`,
  atLeastBelow: (limit) => `What is known lies under ${limit}; that proves nothing yet`,
};

export const en = {
  heading: 'Limits and whose rule',
  intro:
    'One rule judges a day: that of the state where the work was done. Others may stand beside it. They are told and change nothing that the rule asks.',
  judges: 'What judges',
  held: 'Rules held here',
  siteLine: (site: string, state: string) => `${site}, ${state}`,
  complete: 'Held with its duties',
  figuresOnly: 'Figures only; the state says what must be done',
  limit: (which: 'actionLevel' | 'pel', value: number) => `${limitNames[which]} ${formatInWorking(value, 'µg/m³')}`,
  besideLimit: (which: 'actionLevel' | 'pel', value: number) =>
    `${which === 'pel' ? 'Limit' : limitNames.actionLevel} ${formatInWorking(value, 'µg/m³')}`,
  sign: { actionLevel: 'at or above counts', pel: 'above counts' },
  eightHours: '8-hour average',
  from: (day: string) => `from ${formatDay(day)}`,
  since: (day: string) => `since ${formatDay(day)}`,
  until: (day: string) => `until ${formatDay(day)}`,
  longShift: (dose: number) =>
    `Of a day over 8 hours the average over the shift may reach ${formatInWorking(dose, 'µg·h/m³')} divided by the hours worked. The action level does not change.`,
  ofTask: {
    abrasiveBlasting: 'Abrasive blasting',
    dryBlastingBeforeAssessment: 'Dry abrasive blasting before the exposure is assessed',
  } as Readonly<Record<string, string>>,
  ofTaskLine: (task: string, value: string, until: string, after: string) => `${task}: ${value}${until}${after}`,
  hoursADay: (hours: number) => `at most ${formatInWorking(hours, 'h')} a day`,
  amended: (on: string, what: string) => `${on}: ${what}`,
  verified: 'Read',
  notVerified: 'Not read',
  sources: 'Where it was read',
  second: 'in a second-hand text',
  beside: 'Shown beside the rule',
  besideHint: 'Reference values: check locally before anything rests on one.',
  besideNone: 'no figure known for today',
  kind: { otherRule: 'another rule', advice: 'advice', rule: 'rule' },
  differs: 'How it differs from the construction rule',
  difference: {
    notConstruction: 'It leaves construction work out.',
    sevenHours: 'A full shift is at least seven hours in a row, sampled in each shift.',
    noTriggerTasks: 'No task is presumed to be above the limit.',
    bandBelowPel: 'Every six months only while below the limit, not at it.',
    noticeFifteen: 'Notices within fifteen working days.',
    noticeExceeded: 'The statement about the limit only when it was exceeded.',
    accuracyTwenty: 'Measured to 20 % instead of 25 %.',
    retentionForty: 'Records for 40 years, or employment and 20 years, whichever is longer.',
  } satisfies Record<DifferenceKey, string>,
  leftOut:
    'Left out, because its figure was not checked: Ontario. For the same reason Washington’s limit, and the level at which the British rule calls an exposure significant.',
  own: {
    heading: 'Our own stricter limits',
    intro: 'Where a firm holds itself to less, days are told against that too. It tightens and never relaxes.',
    actionLevel: 'Our action level',
    pel: 'Our limit',
    hint: (value: number) => `Below ${formatInWorking(value, 'µg/m³')}; may stay blank`,
    notStricter: (value: number) =>
      `Write less than ${formatInWorking(value, 'µg/m³')}: an own limit that is not stricter than the rule changes nothing`,
    aboveOwnPel: (value: number) =>
      `The action level must not lie above our own limit of ${formatInWorking(value, 'µg/m³')}: write one as well`,
    stricterStates: 'Where a state’s rule is stricter still, that one stands.',
  },
  save: 'Keep this choice',
  saved: 'Kept: days show it from now on',
  noBook: 'Which are shown beside, and own limits, are chosen once a book is open.',
  begin: 'Begin a book',
  done: 'Go to Today',
  day: {
    heading: 'Beside the rule',
    intro: 'Told, and changing nothing that the rule asks.',
    own: 'Our own stricter limit',
    ofTask: (document: string, until: string | null) =>
      `${document}, for abrasive blasting alone${until === null ? '' : `, until ${formatDay(until)}`}`,
    set: (jurisdiction: string, document: string) => `${jurisdiction}: ${document}`,
    none: 'No figure is known for that day.',
    verdict: (verdict: Verdict, kind: 'own' | 'otherRule' | 'advice', which: 'actionLevel' | 'pel', value: number) =>
      verdictWords[verdict](besideName(kind, which, value)),
    check: 'Reference value: check locally.',
    choose: 'Choose what is shown beside',
  },
  edition: {
    differs: (then: string, now: string) =>
      `It was made with the rules of ${then}; today those of ${now} are held. The paper stands as it was made.`,
    limit: (which: 'actionLevel' | 'pel', then: number, now: number) =>
      `${limitNames[which]} then ${formatInWorking(then, 'µg/m³')}, now ${formatInWorking(now, 'µg/m³')}.`,
    sameLimits: 'The limits that it was made with are the same today.',
  },
};

export type LimitsBesideWords = typeof en;

/** What differs between the rules that a paper was made with and those of today; null where nothing does. */
export function editionText(difference: EditionDifference | null): string | null {
  if (difference === null) return null;
  const { rulesThen, rulesNow, limits } = difference;
  const { edition } = en;
  const first = edition.differs(rulesThen, rulesNow);
  if (limits === null) return first;
  if (limits.length === 0) return `${first} ${edition.sameLimits}`;
  const changed = limits.map(({ which, thenUgPerM3, nowUgPerM3 }) => edition.limit(which, thenUgPerM3, nowUgPerM3));
  return [first, ...changed].join(' ');
}
