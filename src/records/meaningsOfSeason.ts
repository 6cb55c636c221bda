/** What the data dictionary says of plans, days made ready, gear and money. See meanings.ts. */

export const meaningByKindOfSeason = {
  'measurementPlanned.v1': 'Who of a task group is to be measured, and on how many days',
  'plannedDayMissed.v1': 'A planned measurement did not come about; it is still to do',
  'planDropped.v1': 'A plan was given up; what the rule asks stays',
  'dayPrepared.v1': 'Who wears which pump and cassette on a day',
  'labelsMade.v1': 'Labels were printed; their numbers belong to this day',
  'gearHeld.v1': 'Gear is owned, rented or lent',
  'pumpCharged.v1': 'A pump was put on its charger or taken off it full',
  'certificateEntered.v1': 'A newer certificate of a flow meter',
  'gearDoubted.v1': 'A pump, a flow meter or a lot was found bad',
  'gearDoubtSettled.v1': 'One decision with a reason settled a doubt about gear',
  'pricesStated.v1': "The firm's own prices",
  'moneySpent.v1': 'Money was spent on measuring',
  'spendingStruck.v1': 'An entry of money was wrong',
} as const;

/** By the last part of a field's name, or by the whole name where one name means two things. */
export const meaningByFieldOfSeason: Readonly<Record<string, string>> = {
  planId: 'The plan',
  flowLPerMin: 'Flow of the pump; null = not said',
  knew: 'Earlier entries that were known',
  slots: 'One for each worker and day',
  because: 'Why it did not come about',
  asked: 'In the evening before, or again in the morning',
  wearers: 'Who wears what',
  sparePumpIds: 'Pumps that are taken along as spares',
  spareCassettesCount: 'Cassettes that are taken along as spares',
  labels: 'Labels that were printed',
  blank: 'For a field blank',
  gear: 'Which kind of gear',
  gearId: 'The pump, flow meter or lot',
  held: 'Owned, rented or lent',
  doubtId: 'The doubt',
  foundOn: 'Day on which it was found',
  spendingId: 'The entry of money',
  spentOn: 'Day on which it was spent',
  spentFor: 'What it was spent for',
  amountUsd: 'Amount in US dollars',
};
