/** People, places and gear: looking them up, adding one, correcting what was written. */
import { formatQuantity } from './quantity.ts';

export const en = {
  heading: 'People, places and gear',
  intro:
    'Most of these are written down where they are first needed. Here they are added ahead of time, and put right.',
  gear: 'How pumps, flow meters and lots stand, and what is due of them',
  registers: {
    person: { heading: 'People', add: 'Add a person', none: 'Nobody yet' },
    jobClassification: { heading: 'Job classifications', add: 'Add a job classification', none: 'None yet' },
    pump: { heading: 'Pumps', add: 'Add a pump', none: 'No pump yet' },
    meter: { heading: 'Flow meters', add: 'Add a flow meter', none: 'No flow meter yet' },
    lot: { heading: 'Cassette lots', add: 'Add a lot', none: 'No lot yet' },
    site: { heading: 'Sites', add: 'Add a site', none: 'No site yet' },
    laboratory: { heading: 'Laboratories', add: 'Add a laboratory', none: 'No laboratory yet' },
  },
  unnamed: {
    heading: 'Names that are not on this device',
    who: (printedName: string | null, identifier: string | null) =>
      printedName ?? (identifier === null ? 'Somebody: add the name' : `${identifier}: add the name`),
    detail: (sampleNumber: string | null) =>
      sampleNumber === null ? 'named on a custody sheet as sampler' : `sample ${sampleNumber}`,
  },
  correct: (name: string) => `Put ${name} right`,
  correctIntro:
    'What stood here before is kept and shown struck through, with the reason. A new name simply takes the place of the old one.',
  why: 'Why is it changed?',
  whyHint: 'Needed when anything but the name changes',
  whyMissing: 'Say in a few words why it is changed',
  save: 'Write it down',
  leave: 'Leave it as it is',
  nothingChanged: 'Nothing is different from what stands in the book. Change something, or leave it as it is.',
  struck: (path: string, old: string, why: string | null) => `${path}: was ${old}${why === null ? '' : ` (${why})`}`,
  story: 'Story',
  struckHeading: 'Struck through',
  nothing: 'nothing',
  reads: { en: 'reads English', es: 'reads Spanish' },
  due: (day: string) => `calibration due ${day}`,
  dueUnknown: 'calibration due date not written down',
  overdue: (day: string) => `calibration was due ${day}`,
  expires: (day: string) => `use before ${day}`,
  expired: (day: string) => `ran out ${day}`,
  altitude: (metres: number) => formatQuantity(metres, 'm'),
  altitudeUnknown: 'altitude not known',
  settings: { indoors: 'indoors', outdoors: 'outdoors' },
  laboratory: {
    name: 'Name of the laboratory',
    address: 'Address, as it goes on the box',
    accreditation: 'Accreditation',
    accreditationHint: 'Programme and number, as the report prints them. May stay blank; a figure then says so',
    accreditationUnknown: 'accreditation not written down',
  },
};
