/** The kinds of record, and how a record is named. Apart from the schemas: the first page needs the names and not those. */

export const recordKinds = [
  'book',
  'site',
  'person',
  'jobClassification',
  'pump',
  'meter',
  'lot',
  'laboratory',
  'shift',
  'flowCheck',
  'sample',
  'workday',
  'box',
  'reported',
  'reliance',
  'notice',
  'determination',
  'duty',
  'request',
  'plan',
  'dayPlan',
  'spending',
] as const;
export type RecordKind = (typeof recordKinds)[number];
export type RecordKey = `${RecordKind}:${string}`;
export const keyOf = (kind: RecordKind, id: string): RecordKey => `${kind}:${id}`;
