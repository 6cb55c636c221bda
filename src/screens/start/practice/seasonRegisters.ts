/** People, places and gear of the season, beside those of the two days. */
import { addDays } from '#core/calendar.ts';
import type { NewFact } from '#records/fact.ts';
import { practice } from '#words/practice.ts';
import { season as words } from '#words/practiceSeason.ts';
import type { SeasonClock } from './seasonClock.ts';
import type { SeasonIds } from './seasonIds.ts';

/** The season began so many days ago. */
export const beganDaysAgo = 119;

export function seasonRegisters(ids: SeasonIds, { at, fact, on, today, zone }: SeasonClock): NewFact[] {
  const then = at(beganDaysAgo, '06:00');
  const person = (who: keyof typeof words.people, language: 'en' | 'es', job: string): NewFact =>
    fact(then, 'personAdded.v1', {
      personId: ids[who],
      name: words.people[who],
      identifier: words.identifiers[who],
      language,
      jobClassificationId: job,
      employer: words.identifiers[who].startsWith('LP') ? words.subcontractor : null,
    });
  const site = (siteId: string, name: string, setting: 'indoors' | 'outdoors'): NewFact =>
    fact(then, 'siteAdded.v1', { siteId, name, stateCode: 'PA', setting, altitudeM: 110, zone });
  const pump = (pumpId: string, serial: string): NewFact =>
    fact(then, 'pumpAdded.v1', { pumpId, serial, model: practice.pumpModel });
  return [
    fact(then, 'jobClassificationAdded.v1', { jobClassificationId: ids.steelPainter, name: words.steelPainter }),
    person('dora', 'en', ids.painter),
    person('rex', 'en', ids.steelPainter),
    person('maya', 'es', ids.steelPainter),
    person('sam', 'en', ids.steelPainter),
    fact(then, 'employmentStated.v1', { personId: ids.maya, fromOn: on(beganDaysAgo), toOn: null }),
    site(ids.bridge, words.bridge, 'outdoors'),
    site(ids.readingRoom, words.readingRoom, 'indoors'),
    pump(ids.pumpFour, words.pumps[0]),
    pump(ids.pumpFive, words.pumps[1]),
    pump(ids.pumpSix, words.pumps[2]),
    fact(then, 'meterAdded.v1', {
      meterId: ids.oldPiston,
      meterKind: 'dryPiston',
      serial: words.piston,
      certificateOn: addDays(today, -250),
      dueOn: addDays(today, 115),
      calibrationTemperatureC: null,
      calibrationPressureKPa: null,
      pairs: [],
    }),
  ];
}
