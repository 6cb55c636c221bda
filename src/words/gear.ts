/** People, pumps, flow meters, cassette lots: written down where first needed, then chosen. */
import type { FactBody } from '#records/fact.ts';

type MeterKind = FactBody<'meterAdded.v1'>['meterKind'];

export const en = {
  pump: {
    pick: 'Which pump',
    add: 'Add a pump',
    serial: 'Number on the pump',
    serialHint: 'The serial number, or the number your firm painted on it',
    model: 'Make and model, if you like',
  },
  lot: {
    pick: 'Lot of the cassettes',
    add: 'Add a lot',
    lotNumber: 'Lot number on the bag or box',
    media: 'Filter and cassette',
    mediaUsual: 'MCE 0.8 µm, 37 mm, closed face',
    expiresOn: 'Use before, if it says so',
  },
  meter: {
    pick: 'Which flow meter',
    add: 'Add a flow meter',
    kind: 'Kind of flow meter',
    kinds: {
      soapFilm: 'Soap film (bubble)',
      dryPiston: 'Dry piston',
      rotameter: 'Rotameter (float in a tube)',
      other: 'Another kind',
    } satisfies Record<MeterKind, string>,
    serial: 'Serial number',
    certificateOn: 'Date of its certificate',
    certificateHint: 'May stay empty; until it is written down the flow counts as doubtful on the low side',
    dueOn: 'Calibration due on',
    calibrationTemperature: 'Temperature it was calibrated at',
    calibrationPressure: 'Pressure it was calibrated at',
    pair: (n: number) => `Certificate line ${n}`,
    pairRead: 'read',
    pairTrue: 'true flow',
    pairsHint: 'What the certificate says: flow read off the scale, and true flow. Up to six lines.',
    pairMissing: (n: number) => `Certificate line ${n}: write both numbers, or neither`,
    notes: (kind: MeterKind, due: string | null) =>
      due === null ? en.meter.kinds[kind] : `${en.meter.kinds[kind]}, calibration due ${due}`,
  },
  person: {
    pick: 'Which worker',
    add: 'Add a worker',
    name: 'Name',
    identifier: "The firm's own number for this worker, if there is one",
    identifierHint: 'Never a social security number',
    language: 'Reads',
    languages: { en: 'English', es: 'Español' },
    otherEmployer: 'Works for another firm: which? Empty means yours',
  },
  job: {
    pick: 'Job classification',
    add: 'Add a job classification',
    name: 'Job classification, as your payroll calls it',
    optional: 'May stay empty',
  },
};

export type GearWords = typeof en;
