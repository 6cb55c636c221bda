/** Any value of any fact as it is said: never as it lies in the file. Read by supervisor and office. */
import { isDay, isInstant, wallTimeOf } from '#core/calendar.ts';
import type { Unit } from '#core/units.ts';
import { choicesOfDuties } from './choicesOfDuties.ts';
import { choicesOfSeason } from './choicesOfSeason.ts';
import { en as conditions } from './conditions.ts';
import { nameOfField } from './fieldNames.ts';
import { en as gear } from './gear.ts';
import { formatDay, formatList, formatMinutes, formatQuantity } from './quantity.ts';

/** How records are called, and the zone in which moments are told. */
export interface Naming {
  /** A person, pump, lot, cassette and so on, or a task; undefined when this device does not hold it. */
  readonly nameOf: (id: string) => string | undefined;
  readonly zone: string;
  /** The day that is understood where this is said: its moments are told without it. */
  readonly on?: string;
}

export const en = {
  nothing: 'nothing written',
  yes: 'yes',
  no: 'no',
  notHere: 'a record that is not on this device',
  lessThan: (limit: string) => `less than ${limit}`,
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  allPoints: 'every point as it should be',
  notSo: (points: string) => `not so: ${points}`,
  points: (count: number) => (count === 1 ? 'one value' : `${count} values`),
  readTrue: (read: string, flow: string) => `read ${read}, true ${flow}`,
  forEmployer: (employer: string) => `for ${employer}`,
};

type Choices = Readonly<Record<string, string>>;

/** Values that are chosen from a few, by field. */
const choices: Readonly<Record<string, Choices>> = {
  mode: { fitted: 'fitted and checked', declined: 'asked for initials, declined', fittedBySelf: 'put on by self' },
  fault: { stopped: 'it stood still', flowDropped: 'the flow had dropped', tubingOff: 'the tubing was off' },
  mishap: {
    inletUp: 'the inlet pointed up',
    opened: 'it came open',
    overloaded: 'overloaded',
    other: 'something else',
  },
  use: { average: 'the average flow', lower: 'the lower flow' },
  inLine: {
    representativeCassette: 'a cassette of the lot',
    sampleCassette: 'the cassette of the sample itself',
    nothing: 'nothing',
  },
  as: { away: 'away from the lead area', sameAs: 'the same as a sampled stretch', unknown: 'not known' },
  meterKind: gear.meter.kinds,
  wallDeposit: { notStated: 'not stated' },
  blankCorrected: { notStated: 'not stated' },
  workersShownAs: { name: 'by name', identifier: "by the firm's own number" },
  language: { en: 'English', es: 'Spanish' },
  ...conditions.options,
  ...choicesOfDuties,
  ...choicesOfSeason,
};

/** What a field is chosen from, as it is said; empty for a field that is not chosen. */
export const choicesOf = (field: string): Choices => (Object.hasOwn(choices, field) ? (choices[field] ?? {}) : {});
export const yesNo = (value: boolean): string => (value ? en.yes : en.no);

const units: readonly (readonly [suffix: string, unit: Unit])[] = [
  ['LPerMin', 'L/min'],
  ['UgPerM3', 'µg/m³'],
  ['Hours', 'h'],
  ['Ug', 'µg'],
  ['KPa', 'kPa'],
  ['TemperatureC', '°C'],
  ['temperatureC', '°C'],
  ['altitudeM', 'm'],
  ['VolumeL', 'L'],
];

/** '$24.50': whole cents, as they are added. */
const dollarsText = (amountUsd: number): string => `$${amountUsd.toFixed(2)}`;

function numberText(field: string, value: number): string {
  if (field.endsWith('Min') && !field.endsWith('LPerMin')) return formatMinutes(value);
  if (field.endsWith('Usd')) return dollarsText(value);
  if (field.endsWith('Fraction')) return formatQuantity(value * 100, '%');
  const unit = units.find(([suffix]) => field.endsWith(suffix))?.[1];
  return unit === undefined ? String(value) : formatQuantity(value, unit);
}

const looksLikeId = /^[0-9a-hjkmnp-tv-z]{12}$/;

function stringText(field: string, value: string, naming: Naming): string {
  const { nameOf, zone, on } = naming;
  const list = choicesOf(field);
  if (Object.hasOwn(list, value)) return list[value] ?? value;
  if (isInstant(value))
    return on === wallTimeOf(value, zone).day ? wallTimeOf(value, zone).time : momentText(value, zone);
  if (isDay(value)) return formatDay(value);
  const name = nameOf(value);
  if (name !== undefined) return name;
  if (looksLikeId.test(value) && /Ids?$|^follows$/.test(field)) return en.notHere;
  return value;
}

/** '06:21, 25 November 2026' */
export function momentText(at: string, zone: string): string {
  const { day, time } = wallTimeOf(at, zone);
  return `${time}, ${formatDay(day)}`;
}

type Fields = Readonly<Record<string, unknown>>;

function pieceText(piece: Fields, naming: Naming): string {
  const { startedAt, endedAt, place, employer } = piece;
  const [from, to] = [startedAt, endedAt].map((at) =>
    typeof at === 'string' && isInstant(at) ? wallTimeOf(at, naming.zone).time : en.nothing,
  );
  const more = [place, employer && en.forEmployer(String(employer))].filter(Boolean).map(String);
  return [en.fromTo(from ?? '', to ?? ''), ...more].join(', ');
}

function pointsText(points: Fields): string {
  const missed = Object.entries(points).flatMap(([point, met]) => (met === false ? [nameOfField(point)] : []));
  return missed.length === 0 ? en.allPoints : en.notSo(formatList(missed));
}

/** Inside a value, what only says whose it is. */
const namesItsRecord = new Set(['shiftId', 'workdayId']);

function objectText(field: string, value: Fields, naming: Naming): string {
  if ('breathingZone' in value) return pointsText(value);
  if ('startedAt' in value && 'endedAt' in value) return pieceText(value, naming);
  const flow = (key: string): string => valueText(`/${key}`, value[key], naming);
  if ('lowLPerMin' in value)
    return value.lowLPerMin === value.highLPerMin
      ? flow('lowLPerMin')
      : en.fromTo(flow('lowLPerMin'), flow('highLPerMin'));
  if ('readLPerMin' in value) return en.readTrue(flow('readLPerMin'), flow('trueLPerMin'));
  const figure = 'twa8UgPerM3' in value ? 'twa8UgPerM3' : value.kind === 'measured' ? 'massUg' : 'reportingLimitUg';
  if (value.kind === 'measured') return flow(figure);
  if (value.kind === 'lessThan') return en.lessThan(flow(figure));
  const told = Object.entries(value).filter(([key]) => !namesItsRecord.has(key));
  const said = told.map(([key, inner]) => `${nameOfField(key)}: ${valueText(`/${key}`, inner, naming)}`);
  return said.length > 0 && field !== 'sheet' ? said.join('; ') : en.points(said.length);
}

/** The questions about other work, in the order in which their answers lie beside each other. */
const otherWork = ['callOut', 'secondSite', 'secondEmployer'];

/** The value at a place of a fact, as it is said on this page. */
export function valueText(path: string, value: unknown, naming: Naming): string {
  const field = path.split('/').findLast((part) => part !== '' && !/^\d+$/.test(part)) ?? '';
  if (value === null || value === undefined || value === '') return en.nothing;
  if (typeof value === 'boolean') return yesNo(value);
  if (typeof value === 'number') return numberText(field, value);
  if (typeof value === 'string') return stringText(field, value, naming);
  if (path === '/otherWork' && Array.isArray(value))
    return otherWork.map((name, at) => `${nameOfField(name)}: ${String(value[at])}`).join('; ');
  if (Array.isArray(value)) {
    const said = value.map((inner) => valueText(path, inner, naming));
    return said.length === 0 ? en.nothing : said.join('; ');
  }
  return objectText(field, value as Fields, naming);
}
