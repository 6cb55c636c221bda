/** People, places and gear of the practice book. */
import { addDays } from '#core/calendar.ts';
import type { NewFact } from '#records/fact.ts';
import { practice as words } from '#words/practice.ts';
import type { PracticeIds } from './practiceBook.ts';
import type { PracticeClock } from './practiceClock.ts';

export function practiceRegisters(ids: PracticeIds, clock: PracticeClock, today: string): NewFact[] {
  const { fact, zone } = clock;
  const at = clock.at('06:30');
  const person = (personId: string, who: keyof typeof words.people, language: 'en' | 'es', job: string | null) =>
    fact(at, 'personAdded.v1', {
      personId,
      name: words.people[who],
      identifier: words.identifiers[who],
      language,
      jobClassificationId: job,
      employer: null,
    });
  const pump = (pumpId: string, serial: string) => fact(at, 'pumpAdded.v1', { pumpId, serial, model: words.pumpModel });
  return [
    fact(at, 'jobClassificationAdded.v1', { jobClassificationId: ids.restorer, name: words.jobs.restorer }),
    fact(at, 'jobClassificationAdded.v1', { jobClassificationId: ids.painter, name: words.jobs.painter }),
    person(ids.supervisor, 'supervisor', 'en', null),
    person(ids.first, 'first', 'en', ids.restorer),
    person(ids.second, 'second', 'es', ids.painter),
    fact(at, 'siteAdded.v1', {
      siteId: ids.site,
      name: words.site,
      stateCode: 'PA',
      setting: 'indoors',
      altitudeM: 120,
      zone,
    }),
    pump(ids.pumpOne, words.pumps[0]),
    pump(ids.pumpTwo, words.pumps[1]),
    pump(ids.pumpThree, words.pumps[2]),
    fact(at, 'meterAdded.v1', {
      meterId: ids.piston,
      meterKind: 'dryPiston',
      serial: words.piston,
      certificateOn: addDays(today, -120),
      dueOn: addDays(today, 245),
      calibrationTemperatureC: null,
      calibrationPressureKPa: null,
      pairs: [],
    }),
    fact(at, 'meterAdded.v1', {
      meterId: ids.tube,
      meterKind: 'rotameter',
      serial: words.tube,
      certificateOn: addDays(today, -60),
      dueOn: addDays(today, 305),
      calibrationTemperatureC: 21,
      calibrationPressureKPa: 101.3,
      pairs: [
        { readLPerMin: 1, trueLPerMin: 1.02 },
        { readLPerMin: 2, trueLPerMin: 2.03 },
        { readLPerMin: 4, trueLPerMin: 4.05 },
      ],
    }),
    fact(at, 'lotAdded.v1', {
      lotId: ids.lot,
      lotNumber: words.lot,
      media: words.media,
      expiresOn: addDays(today, 400),
    }),
    fact(at, 'laboratoryAdded.v1', {
      laboratoryId: ids.laboratory,
      name: words.laboratory,
      address: words.address,
      accreditation: words.accreditation,
    }),
  ];
}
