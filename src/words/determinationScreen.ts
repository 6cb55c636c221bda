/** Writing an initial determination: what stands against a negative one and where it is mended. Read by the office. */
import type { DeterminationBlockKey } from '#findings/duties/determining/determination.ts';
import { blockSentences } from './determination.ts';

type Params = Readonly<Record<string, string | number>>;

const terms: Readonly<Record<string, string>> = {
  processes: 'processes',
  material: 'type of material',
  controls: 'control methods',
  practices: 'work practices',
  environment: 'environmental conditions',
  jobClassification: 'job classification',
};

/** The reason as a sentence, with which of the five comparisons it is where it is one. */
export function blockText(key: DeterminationBlockKey, params: Params): string {
  const term = terms[String(params.term ?? '')];
  return term === undefined ? blockSentences[key] : `${blockSentences[key].replace(/\.$/, '')}: ${term}.`;
}

/** Where each is mended, as the text of its link. */
export const mendTexts = {
  day: 'Mend it on the day',
  look: 'See the day',
  sample: 'Look at the sample',
  results: 'Key in the result',
  measure: 'Measure on the next shift',
  jobStart: 'Answer what is new at the job',
  takeIn: 'Go on taking in',
  settle: 'See what is missing',
  reported: 'Look at the reported measurement',
  reliance: 'Look at what the job rests on',
} as const;

export const en = {
  heading: 'Initial determination',
  looking: 'Looking through the book. This may take some seconds the first time.',
  choose: {
    over: (site: string) => site,
    intro: 'One for each task group: a job classification, indoors or outdoors, and its tasks.',
    none: 'Nothing was done at this site yet that could be determined. Write down who did what, or measure.',
    outcome: {
      negativeMayBeWritten: 'a negative one may be written',
      positive: 'positive',
      open: 'neither may be written yet',
    },
    written: 'written',
    differs: 'written on other facts than there are now',
  },
  gone: {
    heading: 'Nothing to determine',
    text: 'This site or this task group is not in the book.',
    action: 'To the list',
  },
  group: (tasks: string, job: string | null, setting: 'indoors' | 'outdoors') =>
    `${tasks}${job === null ? '' : `, ${job}`}, ${setting}`,
  outcome: {
    negativeMayBeWritten:
      'Nothing stands against a negative initial determination: no worker at or above the action level.',
    positive: 'The possibility of exposure at or above the action level is there: the determination is positive.',
    open: 'A negative initial determination may not be written yet.',
  },
  blocks: 'What stands against a negative one',
  highest: 'Highest 8-hour average',
  measured: 'Measured',
  standsFor: 'It stands for',
  differs: 'It was written on other facts than there are now. Write it anew.',
  written: (outcome: 'negative' | 'positive', day: string) => `Written, ${outcome}, ${day}`,
  writtenHeading: 'Determinations written',
  fields: {
    outcome: 'Which one is written',
    negative: 'Negative: no worker at or above the action level',
    positive: 'Positive: some worker may be at or above the action level',
    location: 'Where within the worksite',
    locationHint: 'Such as: reading room, first floor, north windows',
    determinedOn: 'Date of the determination',
    observations: 'Information, observations and calculations',
    observationsHint: 'What was seen and reckoned that speaks of exposure',
    earlier: 'Earlier measurements of lead in air',
    earlierHint: 'Which ones, and why they matter here',
    complaints: 'Complaints of workers that they laid to lead',
    complaintsHint: 'That there were some, or none. No medical values.',
    shownAs: 'Workers on the paper',
    name: 'By name',
    identifier: "By the firm's own number",
    writtenBy: 'Written by',
    paper: 'Paper',
  },
  medicalFound: 'This looks like a medical value. Leave it out: none is kept in this book.',
  negativeBlocked: 'A negative one may not be written: something stands against it. See the reasons above.',
  make: { negative: 'Write the negative determination', positive: 'Write the positive determination' },
  making: 'Making the paper',
  failed: 'The paper could not be made on this device. Nothing was written down. Load the page again, then try again.',
  handOut: 'Print or share it',
  fileName: (outcome: 'negative' | 'positive', day: string) => `determination-${outcome}-${day}.pdf`,
  keepWith: 'Keep it with the records of the job: it names the date, the place and each worker who was monitored.',
  story: 'Story',
};
