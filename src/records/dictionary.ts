/**
 * The data dictionary: every kind of fact and every value in it, as Markdown made from the schemas themselves. It stands in shared/ and
 * lies in every backup, for whoever reads a book without the app. Loaded when asked for; the first page does without schemas.
 */
import { z } from 'zod';
import { unitBySuffix } from '#core/units.ts';
import { envelope, type FactKind, factBodies } from './fact.ts';
import { meaningByField, meaningByKind } from './meanings.ts';

/** The part of a JSON schema that is told. */
interface Told {
  readonly type?: string;
  readonly description?: string;
  readonly format?: string;
  readonly pattern?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly properties?: Readonly<Record<string, Told>>;
  readonly required?: readonly string[];
  readonly items?: Told;
  readonly anyOf?: readonly Told[];
  readonly oneOf?: readonly Told[];
  readonly $ref?: string;
}

interface Row {
  readonly field: string;
  readonly type: string;
  readonly unit: string;
  readonly allowed: string;
  readonly told: string;
}

const suffixes = Object.entries(unitBySuffix).sort(([a], [b]) => b.length - a.length);

/** A flow over a flow, and a count of what the kind names. */
const plainNumbers: readonly string[] = ['trueOverRead', 'count'];

/** The unit that a number's name ends in. */
export function unitOf(field: string): string {
  const name = field.split('.').at(-1) ?? '';
  if (plainNumbers.includes(name)) return '1';
  const found = suffixes.find(([suffix]) => name.endsWith(suffix));
  return found === undefined ? '' : found[1] === '' ? '1' : found[1];
}

/** Patterns with a name of their own; others are shown as they are. */
const namedForms: readonly (readonly [start: string, name: string])[] = [
  ['^[0-9a-hjkmnp-tv-z]{12}$', 'record id: 12 characters'],
  ['^[0-9a-hjkmnp-tv-z]{12}\\.\\d{8}$', 'fact id: writer, dot, running number'],
  ['^[0-9a-hjkmnp-tv-z]{12}\\.\\d{4}-\\d{2}-\\d{2}$', 'record id, dot, day'],
  ['^[0-9a-hjkmnp-tv-z]{12}(\\.\\d{4}-\\d{2}-\\d{2})?$', 'record id, for a day with dot and day'],
  ['^[0-9a-zA-Z.-]{3,120}$', 'letters, digits, dots and hyphens'],
  ['^[0-9a-f]{64}$', '64 hexadecimal digits'],
  ['^[a-zA-Z]+:[0-9a-zA-Z.-]+$', 'kind of record, colon, id'],
];

function formOf(schema: Told): string {
  if (schema.format === 'date') return 'day: 2026-11-25';
  if (schema.format === 'date-time') return 'instant in UTC: 2026-11-25T10:12:00.000Z';
  const { pattern } = schema;
  if (pattern !== undefined) return namedForms.find(([form]) => form === pattern)?.[1] ?? `matches \`${pattern}\``;
  return schema.maxLength === undefined ? '' : `up to ${schema.maxLength} characters`;
}

function boundsOf({ minimum, exclusiveMinimum, maximum }: Told): string {
  const huge = (bound: number | undefined): boolean =>
    bound !== undefined && Math.abs(bound) >= Number.MAX_SAFE_INTEGER;
  const ends = [
    exclusiveMinimum === undefined ? '' : `above ${exclusiveMinimum}`,
    minimum === undefined || huge(minimum) ? '' : `from ${minimum}`,
    maximum === undefined || huge(maximum) ? '' : `to ${maximum}`,
  ];
  return ends.filter(Boolean).join(' ');
}

function countOf({ minItems, maxItems }: Told): string {
  if (minItems !== undefined && maxItems !== undefined) return `${minItems} to ${maxItems} of them`;
  if (minItems !== undefined) return `${minItems} or more`;
  return maxItems === undefined ? '' : `up to ${maxItems} of them`;
}

function allowedOf(schema: Told): string {
  if (schema.const !== undefined) return `\`${String(schema.const)}\``;
  if (schema.enum) return schema.enum.map((value) => `\`${String(value)}\``).join(', ');
  if (schema.type === 'string') return formOf(schema);
  if (schema.type === 'array')
    return [countOf(schema), schema.items ? allowedOf(schema.items) : ''].filter(Boolean).join('; ');
  return boundsOf(schema);
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'number',
  integer: 'whole number',
  boolean: 'true or false',
  object: 'group',
};

function typeOf(schema: Told): string {
  if (schema.$ref !== undefined) return 'any JSON';
  if (schema.oneOf) return 'one of the groups below';
  if (schema.type === 'array') return `list of ${schema.items ? typeOf(schema.items) : 'any JSON'}`;
  return typeWords[schema.type ?? ''] ?? 'any JSON';
}

/** A schema that may be null, and the schema it is otherwise. */
function withoutNull(schema: Told): { readonly inner: Told; readonly nullable: boolean } {
  const rest = schema.anyOf?.filter(({ type }) => type !== 'null');
  const [only] = rest ?? [];
  if (rest?.length !== 1 || !only) return { inner: schema, nullable: false };
  const description = schema.description ?? only.description;
  return { inner: description === undefined ? only : { ...only, description }, nullable: true };
}

const groupName = (group: Told): string =>
  Object.entries(group.properties ?? {}).find(([, { const: fixed }]) => fixed !== undefined)?.[1].const as string;

/** The rows inside a group, a list of groups, or a choice of groups. */
function innerRows(schema: Told, field: string): Row[] {
  if (schema.oneOf) return schema.oneOf.flatMap((group) => rowsOf(group, `${field} (${groupName(group)}).`));
  if (schema.type === 'array' && schema.items) return innerRows(withoutNull(schema.items).inner, `${field}[]`);
  return schema.properties ? rowsOf(schema, `${field}.`) : [];
}

/** Of the whole name where one name means two things, else of its last part. */
const meaningOf = (field: string): string =>
  meaningByField[field] ?? meaningByField[field.split('.').at(-1) ?? ''] ?? '';

function rowsOf({ properties = {}, required = [] }: Told, before: string): Row[] {
  return Object.entries(properties).flatMap(([name, schema]) => {
    const { inner, nullable } = withoutNull(schema);
    const field = `${before}${name}`;
    const isNumber = inner.type === 'number' || inner.type === 'integer';
    const allowed = [allowedOf(inner), nullable ? 'or null' : '', required.includes(name) ? '' : 'may be left out'];
    const row: Row = {
      field,
      type: typeOf(inner),
      unit: isNumber ? unitOf(field) : '',
      allowed: allowed.filter(Boolean).join('; '),
      told: inner.description ?? meaningOf(field),
    };
    return [row, ...innerRows(inner, field)];
  });
}

const cell = (text: string): string => text.replaceAll('|', '\\|');

function table(schema: Told): string[] {
  const rows = rowsOf(schema, '');
  return [
    '| field | type | unit | allowed | meaning |',
    '|---|---|---|---|---|',
    ...rows.map(({ field, type, unit, allowed, told }) =>
      `| ${[`\`${field}\``, type, unit, allowed, told].map(cell).join(' | ')} |`.replace(/ {2,}/g, ' '),
    ),
  ];
}

const schemaOf = (schema: z.ZodType): Told => z.toJSONSchema(schema) as Told;

const head = `# Data dictionary

Every kind of fact that a book of Fullshift can hold, and every value in it. Made from the schemas that read the book.

A fact is something that happened, in one line of JSON. All facts share the fields of the first table; what is particular to a kind
stands in its \`body\`, told in the tables after it. A number's name ends in its unit; unit 1 is a plain number. A name that ends in
\`At\` is an instant, in \`On\` a calendar day at the job, in \`Id\` the id of a record or fact. What is not known is null or left out, never
0. Fields that a table does not name come from a newer version and are kept as they are.`;

/** The whole dictionary, Markdown with a final newline. */
export function dataDictionary(): string {
  const kinds = Object.entries(factBodies).map(([kind, body]) =>
    ['', `## ${kind}`, '', `${meaningByKind[kind as FactKind]}.`, '', ...table(schemaOf(body))].join('\n'),
  );
  return [head, '', '## Every fact', '', ...table(schemaOf(envelope)), ...kinds, ''].join('\n');
}
