/** Values that are chosen from a few, of plans, days made ready, gear and money, as they are said. Read by the office. */
export const choicesOfSeason: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  choice: {
    all: 'everyone of the crew',
    random: 'drawn at random',
    highest: 'the worker expected to breathe most',
  },
  because: {
    declined: 'the worker declined',
    rainedOff: 'rained off',
    otherWork: 'other work was done',
    notAtWork: 'the worker was not at work',
    gear: 'the gear was not fit',
    other: 'something else',
  },
  asked: { evening: 'in the evening before', morning: 'in the morning' },
  gear: { pump: 'pump', meter: 'flow meter', lot: 'lot of cassettes' },
  held: { owned: 'our own', rented: 'rented', lent: 'lent to us' },
  decision: {
    noEffect: 'shown to have had no effect',
    asFound: 'corrected by what was found',
    staysDoubtful: 'stays doubtful: what rests on it shows nothing low',
  },
  spentFor: {
    analysis: 'analysis of samples',
    blank: 'analysis of field blanks',
    cassettes: 'cassettes',
    courier: 'courier',
    rush: 'results wanted sooner',
    rental: 'rental of gear',
    consultant: 'consultant',
    calibration: 'calibration',
    other: 'something else',
  },
};
