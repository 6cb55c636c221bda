/** Inputs of papers for tests: the windows of an old library, a steel footbridge. People and places are invented. */
import type { DeterminationInput } from '#documents/determinationValues.ts';
import type { NoticeInput } from '#documents/noticeValues.ts';
import type { Occasion, PaperPerson, Printing } from '#documents/occasion.ts';
import type { Measurement } from '#findings/duties/measuring/measurement.ts';
import { limitSetOn } from '#reference/limits.ts';
import { fonts } from './sheets.ts';

export const occasion: Occasion = {
  firmName: 'Harrow & Daughter Window Restoration',
  practice: false,
  issuedInstant: '2026-05-19T20:40:00.000Z',
  zone: 'America/New_York',
  heads: [
    { factId: 'k3v9q0d7h2mn.00000214', link: '9f2c4b7e1d6a3805c4e7f1b2a9d8063c5e4f7a1b2c3d9e8f70615243a4b5c6d7' },
    { factId: 't8x1c5r4w6ez.00000031', link: '03b8e6d1c2f4a5970b1e3d5c7f9a2b4d6e8f0a1c3b5d7e9f1a2c4b6d8e0f1a3c' },
  ],
  editions: { app: '0.1.0', rules: '2026-11', formulas: '1' },
};
export const letter: Printing = { paper: 'letter', fonts };

export const idOf = (index: number): string => `a${String(index).padStart(11, '0')}`;

const crew: readonly PaperPerson[] = [
  person('Íñigo Muñoz Güemes', 'W-4', 'Window restorer'),
  person('Ana Belén Peñalver', 'W-7', 'Window restorer'),
  { ...person('Tomáš Dvořák', null, 'Painter'), employer: 'Dvořák Painting', shift: '07:00–15:30' },
  person('Joe Whitlock', null, null),
];

function person(name: string, identifier: string | null, jobClassification: string | null): PaperPerson {
  return { name, identifier, employer: null, jobClassification };
}

/** As many workers as asked, the first four of the crew first. */
export const peopleOf = (count: number): ReadonlyMap<string, PaperPerson> =>
  new Map(
    Array.from({ length: count }, (_, index) => [
      idOf(index),
      crew[index] ?? person(`Worker ${index + 1} Okonkwo-Lindqvist`, `W-${100 + index}`, 'Painter'),
    ]),
  );

export const measurementOf = (change: Partial<Measurement> = {}): Measurement => ({
  id: `${idOf(0)}.2026-05-12`,
  from: 'sampled',
  workerId: idOf(0),
  workOn: '2026-05-12',
  siteId: 's00000000001',
  shiftIds: ['s00000000001.2026-05-12'],
  groupKey: 'indoors|j00000000001|dryScraping',
  taskIds: ['dryScraping'],
  jobClassificationId: 'j00000000001',
  limits: limitSetOn('2026-05-12', 'PA'),
  twa8UgPerM3: { kind: 'exact', value: 62.37 },
  band: 'abovePel',
  provesBelowActionLevel: false,
  provesNotAbovePel: false,
  atOrAbovePel: 'yes',
  resultOwed: false,
  atLeastOnly: false,
  receipts: [{ factId: 'k3v9q0d7h2mn.00000101', reportNumber: 'R-1071', receivedOn: '2026-05-18' }],
  blocks: [],
  finding: null,
  because: [],
  ...change,
});

export const below = measurementOf({
  twa8UgPerM3: { kind: 'between', lower: 0, upper: 4.2 },
  band: 'belowActionLevel',
  provesBelowActionLevel: true,
  provesNotAbovePel: true,
  atOrAbovePel: 'no',
});

export const noticeInput = (change: Partial<NoticeInput> = {}): NoticeInput => ({
  ...occasion,
  ...letter,
  measurement: measurementOf(),
  siteName: 'Old Public Library, reading rooms',
  tasks: [
    { en: 'Scraping paint by hand, dry', es: 'Raspar pintura a mano, en seco' },
    { en: 'Taking out sashes', es: 'Sacar hojas de ventana' },
  ],
  people: peopleOf(4),
  workerIds: [idOf(0), idOf(1), idOf(2), idOf(3)],
  revision: '1',
  why: null,
  receivedOn: '2026-05-18',
  form: 'inWriting',
  places: [],
  shownAs: 'name',
  languages: ['en', 'es'],
  correctiveAction: {
    en: 'Scraping is done wet from 20 May on, with a HEPA vacuum at the sill. Until it is measured again everyone at this task wears a half mask with P100 filters.',
    es: 'Desde el 20 de mayo se raspa en mojado, con aspiradora HEPA junto al marco. Hasta que se mida otra vez, todos los que hacen este trabajo usan media careta con filtros P100.',
  },
  respirator: { en: 'Half mask, P100 filters', es: 'Media careta, filtros P100' },
  next: { due: 'byDate', dueOn: '2026-08-12' },
  questionsTo: 'Wilhelmina Harrow, 555-0142',
  gearDoubts: [],
  ...change,
});

export const alike = {
  processes: 'alike',
  material: 'alike',
  controls: 'alike',
  practices: 'alike',
  environment: 'notKnown',
} as const;

export const determinationInput = (change: Partial<DeterminationInput> = {}): DeterminationInput => ({
  ...occasion,
  ...letter,
  outcome: 'negative',
  finding: {
    siteId: 's00000000001',
    groupKey: 'indoors|j00000000001|wetScraping',
    outcome: 'negativeMayBeWritten',
    blocks: [],
    measurementIds: [below.id],
    relianceIds: [],
    monitoredIds: [idOf(0)],
    standsForIds: [idOf(1), idOf(2)],
    highest: { measurementId: below.id, upperUgPerM3: 4.2 },
    writtenId: null,
    differsFromRecord: false,
    because: [],
  },
  measurements: [below],
  sourceOf: new Map([[below.id, { by: null, method: 'NIOSH 7303' }]]),
  reliances: [],
  people: peopleOf(4),
  siteName: 'Old Public Library',
  setting: 'indoors',
  location: 'Reading rooms, second floor, south windows',
  determinedOn: '2026-05-19',
  tasks: ['Scraping paint by hand, wet'],
  jobClassification: 'Window restorer',
  monitoredIds: [idOf(0)],
  standsForIds: [idOf(1), idOf(2)],
  observations:
    'Two restorers at six windows, sashes wetted before scraping, floor covered, vacuumed at noon and at the end.',
  earlierMeasurements: null,
  complaints: null,
  writtenBy: 'Wilhelmina Harrow',
  gearDoubts: [],
  shownAs: 'name',
  ...change,
});
