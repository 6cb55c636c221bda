/** Duties of protecting at a site: what to do, what fulfils it, where it lies. Read by the office. */
import { at, type KindInWords, paper, seen } from './dutySaid.ts';

export const protecting: Readonly<Record<string, KindInWords>> = {
  controls: {
    what: (said) => `Bring the dust down by tools, ventilation and ways of working${at(said)}`,
    fulfils: 'What was done: wet work, shroud, exhaust, another method. Respirators come on top and not instead.',
    lies: paper('A note of what was done'),
  },
  programme: {
    what: (said) => `Write the programme of how exposure is brought down${at(said)}`,
    fulfils:
      'A written programme: each task that gives off lead, with what means, what the air measurements show, a schedule, work practices, and how it is arranged with other firms on the site.',
    lies: paper('The written programme, at the site and to be shown on request'),
  },
  programmeRevision: {
    what: (said) => `Go through the written programme${at(said)} and bring it up to date`,
    fulfils: 'The programme read through and put right, with the day on which that was done.',
    lies: paper('The revised programme'),
  },
  inspections: {
    what: (said) => `Walk the job${at(said)} often and regularly, and look at materials and equipment`,
    fulfils: 'The day of the last walk and what was found.',
    lies: paper('The notes of the walks'),
    whose: 'The competent person does it and decides what is put right.',
  },
  respirator: {
    what: (said) => `Choose and give out respirators for ${said.tasks}${at(said)}`,
    fulfils: 'Respirators of the least factor or more, with HEPA-class filters, fit test and programme.',
    lies: paper('The list of who has which, with fit tests'),
  },
  protectiveClothing: {
    what: (said) => `Give out protective clothing${at(said)}, at no cost to the workers`,
    fulfils: 'Coveralls, gloves, hats, shoes or covers, and face or eye protection where needed.',
    lies: paper('The list of what was given out'),
  },
  cleanClothingWeekly: {
    what: (said) => `Give out clean protective clothing${at(said)} at least once a week`,
    fulfils: seen,
    lies: paper('The note of the last change'),
  },
  cleanClothingDaily: {
    what: (said) => `Give out clean protective clothing${at(said)} every day`,
    fulfils: seen,
    lies: paper('The note of the last change'),
  },
  laundryTold: {
    what: (said) => `Tell in writing whoever washes the clothing${at(said)} that there is lead on it`,
    fulfils: 'A letter to the laundry, or to whoever cleans it.',
    lies: paper('A copy of the letter'),
  },
  containerLabel: {
    what: (said) => `Put the label with the prescribed words on closed containers of clothing${at(said)}`,
    fulfils: 'Closed containers with the label; it can be printed here.',
    lies: paper('A photo, or where the containers stand'),
  },
  housekeeping: {
    what: (said) => `Keep surfaces${at(said)} as free of lead as can be`,
    fulfils:
      'Vacuumed with a HEPA filter first; swept or brushed only where vacuuming did not do; no compressed air that is not caught.',
    lies: paper('The note of the last cleaning'),
  },
  noFoodTobacco: {
    what: (said) => `Keep food, drink, tobacco and cosmetics out of the work area${at(said)}`,
    fulfils: 'Told to everybody, and looked after while the work lasts.',
    lies: paper('A note of it'),
  },
  changeAreas: {
    what: (said) => `Set up a place to change${at(said)}, with street clothes kept apart`,
    fulfils: 'A clean place to change, with work clothes and street clothes apart.',
    lies: paper('A photo or a note of it'),
  },
  showersEating: {
    what: (said) => `Set up showers where that can be done, and a clean place to eat${at(said)}`,
    fulfils: 'Showers, or why they cannot be had; a place to eat that is free of lead; hands and face washed before.',
    lies: paper('A note of it'),
  },
  handWashing: {
    what: (said) => `Set up a place to wash hands${at(said)}`,
    fulfils:
      'Water, soap and towels near the work. Without showers, hands and face are washed at the end of the shift.',
    lies: paper('A photo or a note of it'),
  },
  signs: {
    what: (said) => `Put up the sign with the prescribed words at the lead work area${at(said)}`,
    fulfils: 'The sign stands where everybody passes; it can be printed here.',
    lies: paper('A photo, or where it stands'),
  },
};
