/** Values that are chosen from a few, of roster, measurements of others, notices and duties, as they are said. Read by the office. */
import { wornText } from './worn.ts';

type Worn = Parameters<typeof wornText>[0];

/** Ids of respirators are made of these two. */
const supplies: Readonly<Record<string, Worn['supply']>> = {
  airPurifying: 'airPurifying',
  powered: 'poweredAirPurifying',
  suppliedDemand: 'suppliedDemand',
  suppliedContinuous: 'suppliedContinuous',
  suppliedPressureDemand: 'suppliedPressureDemand',
  scbaDemand: 'scbaDemand',
  scbaPressureDemand: 'scbaPressureDemand',
};
const facepieces: Readonly<Record<string, Worn['facepiece']>> = {
  Quarter: 'quarter',
  Half: 'half',
  Full: 'full',
  HelmetHood: 'helmetHood',
  LooseFitting: 'looseFitting',
};

const respirators = Object.fromEntries(
  Object.entries(supplies).flatMap(([start, supply]) =>
    Object.entries(facepieces).map(([end, facepiece]) => [`${start}${end}`, wornText({ supply, facepiece })]),
  ),
);

const comparison = { alike: 'alike', unlike: 'not alike', notKnown: 'not known' };
const stated = { yes: 'yes', no: 'no', notStated: 'not stated' };
const answer = { yes: 'yes', no: 'no', notKnown: 'not known' };

export const choicesOfDuties: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  respirator: { none: 'none worn', ...respirators },
  equipment: answer,
  process: answer,
  control: answer,
  personnel: answer,
  newTask: answer,
  processes: comparison,
  material: comparison,
  controls: comparison,
  practices: comparison,
  environment: comparison,
  from: {
    consultant: 'a consultant',
    ownEarlier: 'our own earlier measuring',
    inspector: 'an inspector',
    otherEmployer: 'another employer',
    other: 'somebody else',
  },
  ownFirm: stated,
  fullShift: stated,
  accuracy: stated,
  form: { inWriting: 'in writing to each', posted: 'posted' },
  shownAs: { name: 'by name', identifier: "by the firm's own number" },
  languages: { en: 'English', es: 'Spanish' },
  how: {
    handedOver: 'handed over',
    readAloud: 'read aloud',
    posted: 'posted',
    refusedToSign: 'given, and not signed',
  },
  outcome: { negative: 'negative', positive: 'positive' },
  askedAs: {
    worker: 'a worker',
    formerWorker: 'a former worker',
    representative: "a workers' representative",
    agency: 'an agency',
    other: 'somebody else',
  },
};
