/** Where each reason against a negative determination is mended: the page of the day, of the job, of the report. */
import type { DeterminationBlock, DeterminationBlockKey } from '#findings/duties/determining/determination.ts';
import type { DutiesOfBook } from '#findings/duties/dutiesOfBook.ts';
import { mendTexts } from '#words/determinationScreen.ts';

export interface Mend {
  readonly to: string;
  readonly text: string;
}

type Where = 'day' | 'results' | 'measure' | 'jobStart' | 'reliance' | 'takeIn' | 'settle' | 'nowhere';

const whereByKey: Readonly<Record<DeterminationBlockKey, Where>> = {
  noMeasurement: 'measure',
  resultOwed: 'results',
  minutesUnknown: 'day',
  sampleDoubtful: 'day',
  notProvenBelow: 'day',
  atOrAboveActionLevel: 'day',
  irregularDay: 'day',
  notAskedWhetherRegular: 'day',
  wallDepositOpen: 'day',
  unlike: 'reliance',
  resemblanceNotAsked: 'reliance',
  tooOld: 'measure',
  notOwnData: 'day',
  accuracyNotStated: 'day',
  notFullShift: 'day',
  changeNoted: 'measure',
  changesNotAsked: 'jobStart',
  takingIn: 'takeIn',
  entriesMissing: 'settle',
  ruleNotHeld: 'nowhere',
  highestNotMeasured: 'measure',
  statesDiffer: 'day',
};

/** `shiftId`: the newest shift on which these tasks were done at the site; null where there is none. */
export function mendedAt(block: DeterminationBlock, duties: DutiesOfBook, shiftId: string | null): Mend | null {
  const where = whereByKey[block.key];
  const measurement = duties.measurements.get(block.measurementId ?? '');
  switch (where) {
    case 'day':
      if (measurement === undefined) return null;
      return measurement.from === 'sampled'
        ? { to: `/day/${measurement.id}`, text: block.key === 'atOrAboveActionLevel' ? mendTexts.look : mendTexts.day }
        : { to: `/reported?correct=${measurement.id}`, text: mendTexts.reported };
    case 'results':
      return { to: '/results', text: mendTexts.results };
    case 'measure':
      return { to: '/', text: mendTexts.measure };
    case 'jobStart':
      return shiftId === null ? null : { to: `/shift/${shiftId}/job-start`, text: mendTexts.jobStart };
    case 'reliance':
      return shiftId === null ? null : { to: `/shift/${shiftId}/rely`, text: mendTexts.reliance };
    case 'takeIn':
      return { to: '/take-in', text: mendTexts.takeIn };
    case 'settle':
      return { to: '/settle', text: mendTexts.settle };
    default:
      return null;
  }
}
