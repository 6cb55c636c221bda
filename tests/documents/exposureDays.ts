/** A long day of two cassettes, worn by Ana at the windows of the old library: a rotameter, a change of flow, a struck mass, a blank. */
import type { ExposureRecordInput } from '#documents/exposureRecordValues.ts';
import { findWorkday } from '#findings/workday.ts';
import type { NewFact } from '#records/fact.ts';
import {
  asked,
  blankOpened,
  bookFrom,
  explains,
  fitted,
  flow,
  hours,
  meter,
  piece,
  prepared,
  putOn,
  registers,
  regular,
  result,
  stopped,
  workdayId,
} from '../findings/carefulStory.ts';
import { corrects, ids, journal, shiftId, wanted } from '../records/facts.ts';
import { letter, occasion } from './papers.ts';

const tube = meter({
  meterKind: 'rotameter',
  serial: 'RT-7',
  pairs: [
    { readLPerMin: 1.5, trueLPerMin: 1.46 },
    { readLPerMin: 2.5, trueLPerMin: 2.47 },
  ],
});

const conditions = wanted('conditionsNoted.v1', {
  shiftId,
  tool: 'hand',
  method: 'dry',
  dustCollection: 'none',
  containment: 'partial',
  ventilation: 'natural',
  weather: 'indoors',
  paintLead: 'presumed',
  area: 'room',
  remark: 'Two sashes open to the street until noon',
});

const facts: readonly NewFact[] = [
  ...registers().filter(({ kind }) => kind !== 'meterAdded.v1'),
  tube,
  wanted('personAdded.v1', {
    personId: ids.ana,
    name: 'Ana Belén Peñalver',
    identifier: 'W-7',
    language: 'es',
    jobClassificationId: null,
    employer: null,
  }),
  wanted('personAdded.v1', {
    personId: ids.supervisor,
    name: 'Wilhelmina Harrow',
    identifier: 'S-1',
    language: 'en',
    jobClassificationId: null,
    employer: null,
  }),
  wanted('laboratoryAdded.v1', {
    laboratoryId: ids.laboratory,
    name: 'Stillwater Industrial Hygiene Laboratory',
    address: null,
    accreditation: null,
  }),
  flow('f00000000001', 'before', '11:40', 2, {
    readings: [
      { lowLPerMin: 1.98, highLPerMin: 2.04 },
      { lowLPerMin: 2, highLPerMin: 2 },
      { lowLPerMin: 2.01, highLPerMin: 2.01 },
    ],
  }),
  prepared(),
  fitted(),
  putOn('12:00'),
  stopped('16:00', 240),
  flow('f00000000002', 'between', '16:10', 1.86),
  prepared(ids.two, { follows: ids.one }),
  fitted(ids.two),
  putOn('16:30', ids.two),
  stopped('21:30', 300, ids.two),
  flow('f00000000003', 'after', '21:40', 1.9),
  blankOpened('c00000000456'),
  hours(piece('12:00', '22:00')),
  explains('16:00', '16:30', 'away', { reason: 'Lunch in the site office, hands and face washed' }),
  asked(),
  regular(),
  conditions,
  result(38.4),
  result(21.9, { sampleId: ids.two, reportNumber: 'R-2', saeFraction: 0.14 }),
  result({ lessThanUg: 0.5 }, { sampleId: 'c00000000456' }),
];

const entries = journal(facts);
const struck = JSON.parse(entries.find(({ text }) => text.includes('"massUg":38.4'))?.text ?? '{}') as { id: string };
export const longDay = journal([...facts, corrects(struck.id, '/mass/massUg', 38.4, 33.4)]);

const book = bookFrom(longDay);

export const exposureInput = (change: Partial<ExposureRecordInput> = {}): ExposureRecordInput => ({
  ...occasion,
  ...letter,
  book,
  finding: findWorkday(workdayId, book),
  people: new Map([
    [ids.ana, { name: 'Ana Belén Peñalver', identifier: 'W-7', employer: null, jobClassification: 'Window restorer' }],
    [ids.ben, { name: 'Tomáš Dvořák', identifier: 'D-2', employer: 'Dvořák Painting', jobClassification: 'Painter' }],
    [ids.supervisor, { name: 'Wilhelmina Harrow', identifier: 'S-1', employer: null, jobClassification: null }],
  ]),
  standsForIds: [ids.ana, ids.ben],
  revision: '1',
  why: null,
  to: 'Ana Belén Peñalver',
  respirator: 'Half mask, P100 filters',
  shownAs: 'name',
  gearDoubts: [],
  ...change,
});
