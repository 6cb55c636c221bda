/** The notice of results that workers read, in plain words: 29 CFR 1926.62(d)(8). English and Spanish. */
import type { Verdict } from '#findings/standing.ts';
import { es } from './noticeEs.ts';
import { formatDay, formatInWorking } from './quantity.ts';

type Which = 'actionLevel' | 'pel';
type NoticeVerdict = Verdict | 'notKnown';

export const en = {
  short: 'Notice of results',
  title: 'Notice: lead in the air at work',
  lead: (firm: string, day: string) =>
    `${firm} measured the air that workers breathed in on ${formatDay(day, 'en', 'weekday')}.`,
  leadReported: (firm: string, day: string) =>
    `${firm} was given a measurement of the air that workers breathed in on ${formatDay(day, 'en', 'weekday')}.`,
  documentTitle: (site: string, day: string, revision: string) =>
    `Notice of results, ${site}, ${day}, revision ${revision}`,
  average: 'Lead in the air, average over 8 hours',
  averageNone: 'No figure yet',
  averageText:
    'This is the air itself, as if nobody wore a respirator. µg/m³ means micrograms (millionths of a gram) of lead in each cubic meter of air.',
  atLeast: '“At least” means: so much is certain, and it may be more.',
  lessThan:
    '“Less than” means: the laboratory could not see any lower. It may be anything from none up to this figure.',
  between: '“Between” means: it lies somewhere from the first figure to the second.',
  owed: 'A part of the day has no result yet. A new notice follows when it comes.',
  standing: 'Where it stands',
  limitHead: 'Limit',
  verdictHead: 'This result',
  limitTextHead: 'What the limit is',
  limit: (which: Which, limit: number) =>
    `${which === 'pel' ? 'Permissible exposure limit (PEL)' : 'Action level'}, ${formatInWorking(limit, 'µg/m³')}`,
  limitText: {
    actionLevel: 'from here on the rule asks for more, such as measuring again and training',
    pel: 'the most that the rule allows as an average over 8 hours',
  },
  verdicts: {
    below: 'Below it',
    exactlyAt: 'Exactly at it',
    above: 'Above it',
    atOrAbove: 'At it or above it; how far above is not known',
    unresolved: 'Not settled: it may have been reached',
    atLeastBelow: 'Not settled: what is known is below it, and the rest is not known',
    notKnown: 'Not known yet',
  } satisfies Record<NoticeVerdict, string>,
  longDay: (hours: string, allowable: string, average: string | null) =>
    `The work day was ${hours} long. Over so long a day the average may reach no more than ${allowable}${average === null ? '.' : `; it was ${average}.`}`,
  pelHeadings: { was: 'At or above the limit', mayHaveBeen: 'It may be at or above the limit' },
  pelStatement: {
    was: (limit: number) =>
      `Exposure was at or above the permissible exposure limit of ${formatInWorking(limit, 'µg/m³')}, without regard to respirators.`,
    mayHaveBeen: (limit: number) =>
      `Exposure may have been at or above the permissible exposure limit of ${formatInWorking(limit, 'µg/m³')}, without regard to respirators. The measurement does not settle it.`,
  },
  corrective: 'What was done about it, or will be done, to bring it down',
  correctiveAlso: 'What was done about it, or will be done',
  correctiveIn: 'In the words of the firm, in English:',
  measured: 'What was measured',
  day: 'Day',
  site: 'Place',
  siteNone: 'not in this book',
  task: 'Work',
  samples: 'Samples',
  by: 'Measured by',
  respirator: 'Respirator worn',
  received: 'Results received',
  standsFor: 'Whom this result stands for',
  standsForText:
    'The measured worker carried the pump. The others did the same work on the same day, or are named in writing.',
  standsForOne: 'The worker carried the pump; the result is this worker’s own.',
  columns: {
    who: 'Worker',
    number: 'Worker’s number, or job and hours',
    what: 'How',
    employer: 'Firm',
    given: 'Received: initials and date',
  },
  carriedPump: 'carried the pump',
  sameWork: 'same work',
  ownFirm: 'this firm',
  writeHere: '______________',
  next: 'What comes next',
  nextText: {
    none: () => 'No further measurement has a date now. If the work changes, it is measured again.',
    byDate: (on: string | null) =>
      on === null ? 'A further measurement is due.' : `The next measurement is due by ${formatDay(on, 'en')}.`,
    beforeNextTime: (_on: string | null) =>
      'The next measurement is due before or on the first day this work is done again.',
    now: (_on: string | null) => 'A new measurement is due now.',
  },
  nextOpen: 'When the next measurement is due is not settled yet.',
  rights: 'Your rights',
  rightsLines: [
    'You may see the records of your exposure and get a copy. The first copy costs nothing. So may anyone whom you name in writing.',
    'If you cannot see them within 15 working days of asking, the firm must tell you within those days why, and when you will.',
    'When air is measured, you or someone who speaks for you may watch, have it explained, and write down or be given the results.',
  ],
  questions: 'Questions',
  askText: (who: string) => `Ask ${who}.`,
  askOpen: 'Ask: ____________________________________',
  posted: (places: string) => `Posted at: ${places}`,
  postedOpen: 'Posted at: ____________________________________',
  signFor: 'For the firm',
  signRead: 'Read aloud to, or handed to, those who are named above',
  notHeld:
    'A rule of this state may govern that is not held complete here. The figures stand; that rule decides what must be done.',
  basis: (document: string, paragraph: string) =>
    `Given under ${document}${paragraph === '' ? '' : `, paragraph ${paragraph}`}. The current text of the rule, and state and local rules, decide.`,
};

export type NoticeWords = typeof en;

export const noticeWords = { en, es } as const;
