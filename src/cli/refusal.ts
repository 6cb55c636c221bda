/** What a refused file is told: the place in it, and what is wrong there, in our own words. */
import { z } from 'zod';
import { type UnitSuffix, unitBySuffix } from '#core/units.ts';
import { en as words } from '#words/assess.ts';
import { dayFile } from './dayFile.ts';

export interface Refusal {
  /** JSON pointer into the file; empty for the file as a whole. */
  readonly path: string;
  readonly reason: string;
}

export const pointer = (path: readonly PropertyKey[]): string =>
  path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

type Issue = z.core.$ZodIssue;

const unitSuffixes = Object.keys(unitBySuffix) as UnitSuffix[];
/** Units that are not ours, and that somebody may well write. Longest first, so that MlPerMin is not read as Min. */
const suffixes = [
  ...unitSuffixes,
  'MlPerMin',
  'CfmPerMin',
  'Cfm',
  'MmHg',
  'InHg',
  'Sec',
  'Ng',
  'Ft',
  'Psi',
  'Hpa',
  'F',
  'K',
  'Ppm',
].sort((a, b) => b.length - a.length);

let knownKeys: readonly string[] | undefined;

/** Every key that the file can have, read off the schema itself. */
function keysOfFile(): readonly string[] {
  if (knownKeys) return knownKeys;
  const found = new Set<string>();
  const walk = (schema: unknown): void => {
    if (typeof schema !== 'object' || schema === null) return;
    for (const [name, inner] of Object.entries(schema)) {
      if (name === 'properties') for (const key of Object.keys(inner as object)) found.add(key);
      walk(inner);
    }
  };
  walk(z.toJSONSchema(dayFile, { io: 'input' }));
  knownKeys = [...found];
  return knownKeys;
}

const stemOf = (name: string): string => {
  const suffix = suffixes.find((one) => name.endsWith(one) && name.length > one.length);
  return (suffix === undefined ? name : name.slice(0, -suffix.length)).toLowerCase();
};

/** The key that was meant: the same name with another unit, or written with other capitals. */
function meant(key: string): { readonly name: string; readonly unit: string } | null {
  const stem = stemOf(key);
  const name = keysOfFile().find((known) => known.toLowerCase() === key.toLowerCase() || stemOf(known) === stem);
  if (name === undefined) return null;
  const suffix = unitSuffixes.filter((one) => name.endsWith(one)).sort((a, b) => b.length - a.length)[0];
  return { name, unit: suffix === undefined ? '' : unitBySuffix[suffix] };
}

function unknownKey(key: string, path: readonly PropertyKey[]): Refusal {
  const instead = meant(key);
  const told =
    instead === null ? words.refusals.unknownKey(key) : words.refusals.otherKey(key, instead.name, instead.unit);
  return { path: pointer([...path, key]), reason: told };
}

const kindWords: Readonly<Record<string, string>> = words.refusals.kinds;

type Of<C extends Issue['code']> = Extract<Issue, { code: C }>;

function sizeReason(issue: Of<'too_small'> | Of<'too_big'>): string {
  const small = issue.code === 'too_small';
  const bound = Number(small ? issue.minimum : issue.maximum);
  if (issue.origin === 'string') return small ? words.refusals.empty : words.refusals.tooLong(bound);
  if (issue.origin === 'array') return small ? words.refusals.tooFew(bound) : words.refusals.tooMany(bound);
  if (small) return issue.inclusive ? words.refusals.tooLow(bound) : words.refusals.notAbove(bound);
  return words.refusals.tooHigh(bound);
}

function reasonOf(issue: Issue, input: unknown): string {
  switch (issue.code) {
    case 'too_small':
    case 'too_big':
      return sizeReason(issue);
    case 'invalid_value':
      return words.refusals.oneOf(issue.values.map((value) => JSON.stringify(value)).join(', '));
    case 'invalid_type': {
      const kind = kindWords[issue.expected] ?? issue.expected;
      return input === undefined ? words.refusals.missing(kind) : words.refusals.otherKind(kind);
    }
    default:
      return issue.message;
  }
}

/** Every reason why the schema does not take the file. `json` tells a key that is missing from one of another kind. */
export function refusalsOf(error: z.ZodError, json: unknown): Refusal[] {
  const inputAt = (path: readonly PropertyKey[]): unknown =>
    path.reduce<unknown>((at, part) => (at as Record<PropertyKey, unknown> | null | undefined)?.[part], json);
  return error.issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys.map((key) => unknownKey(key, issue.path))
      : [{ path: pointer(issue.path), reason: reasonOf(issue, inputAt(issue.path)) }],
  );
}
