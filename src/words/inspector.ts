/** One site at the door: what was measured, who, told, determined, and where papers lie. Read by an inspector beside the supervisor. */
import type { InspectorSample } from '#findings/duties/list/inspector.ts';
import { formatDay } from './quantity.ts';

const count = (n: number, one: string, many: string): string => (n === 1 ? `one ${one}` : `${n} ${many}`);

export const en = {
  heading: 'Somebody asks at the door',
  over: 'One site, and nothing of any other',
  intro: 'Choose the site. What is shown can be printed.',
  none: 'No site is in the book yet.',
  looking: 'Looking through the book. This may take some seconds the first time.',
  gone: { heading: 'Not in this book', text: 'This site is not in the book on this device.', action: 'To the sites' },
  siteHeading: (site: string) => site,
  siteOver: (firm: string, day: string) => `${firm}, ${formatDay(day, 'en', 'weekday')}`,
  rule: (document: string, actionLevel: string, pel: string) =>
    `Held against ${document}: action level ${actionLevel}, permissible exposure limit ${pel}, 8-hour averages without regard to respirators.`,
  notHeld:
    'The rule that governs here is not held complete in this tool; figures are shown, and its duties are not listed.',
  print: 'Print this page',
  measured: 'Measured',
  measuredNone: 'Nothing was measured at this site.',
  measurement: (worker: string, day: string) => `${worker}, ${day}`,
  someWorker: 'A worker who is not in this book',
  reported: {
    sampled: '',
    consultant: 'reported by a consultant',
    ownEarlier: 'our own earlier one, reported',
    inspector: 'reported by an inspector',
    otherEmployer: 'reported by another employer',
    other: 'reported by others',
  },
  noFigure: 'no figure yet',
  band: {
    belowActionLevel: 'below the action level',
    actionLevelToPel: 'at or above the action level, not above the PEL',
    abovePel: 'above the PEL',
    open: 'open: nothing low is proven',
  },
  owed: 'a result is owed',
  sample: (number: string, quality: InspectorSample['quality']) =>
    `sample ${number}, ${{ good: 'good', doubtful: 'doubtful', void: 'void', open: 'open' }[quality]}`,
  relied: 'Earlier measurements that the job rests on',
  reliedLine: (day: string) => `Measured ${day}`,
  people: 'Who works here',
  peopleNone: 'Nobody is written down for this site.',
  ofEmployer: (employer: string) => `of ${employer}`,
  elsewhere: (n: number) =>
    `${count(n, 'more person is', 'more people are')} named in papers and never worked here; not shown.`,
  notices: 'Notices of results',
  noticesNone: 'No result is there to tell.',
  notice: (day: string, told: number, of: number) => `Result of ${day}: ${told} of ${of} told`,
  noticeDue: (day: string) => `by ${day}`,
  noticeOverdue: (day: string) => `was due ${day}`,
  noticeLate: 'told after the last day',
  determinations: 'Initial determinations',
  determinationsNone: 'None of these tasks was determined.',
  outcome: {
    negativeMayBeWritten: 'nothing stands against a negative one; not written',
    positive: 'positive',
    open: 'open',
    negativeWritten: 'negative, written',
    positiveWritten: 'positive, written',
    differs: 'written on other facts than there are now',
  },
  respirators: 'Respirators',
  respiratorsNone: 'What was worn is not noted.',
  respiratorLine: (worn: string, workers: string) => `${worn}: ${workers}`,
  programme: 'Signs, programme, hygiene, training',
  programmeNone: 'Nothing is listed for this site.',
  lies: (place: string) => `lies: ${place}`,
  doneOn: (day: string) => `done ${day}`,
  notDone: (when: string) => `${when}; not noted as done`,
  ofPeople: 'For its people',
  sheets: 'Custody sheets',
  sheetsNone: 'No box went to a laboratory from this site.',
  sheet: (cassettes: number, laboratory: string) => `${count(cassettes, 'cassette', 'cassettes')} for ${laboratory}`,
  sheetDetail: (revisions: number, handedOver: string | null) =>
    `${revisions === 0 ? 'no sheet yet' : count(revisions, 'sheet', 'revisions of the sheet')}${handedOver === null ? '' : `, handed over ${handedOver}`}`,
  days: 'Days of work',
  /** 'October 2026: 12 days, 2 to 3 workers' */
  month: (month: string, days: number, least: number, most: number) =>
    `${month}: ${count(days, 'day', 'days')}, ${least === most ? count(most, 'worker', 'workers') : `${least} to ${most} workers`}`,
  carriedBy: (name: string) => `measured on ${name}`,
};
