import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { dayFile } from '#cli/dayFile.ts';
import { daySchemaPath, daySchemaText } from '#cli/daySchema.ts';
import { unitBySuffix } from '#core/units.ts';

interface Schema {
  readonly type?: string;
  readonly description?: string;
  readonly additionalProperties?: unknown;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
}

const committed = readFileSync(daySchemaPath, 'utf8').replaceAll('\r\n', '\n');

/** Every group, and every field with its path. */
function walk(schema: Schema, path: string, groups: Schema[], fields: Map<string, Schema>): void {
  if (schema.properties) groups.push(schema);
  for (const [name, field] of Object.entries(schema.properties ?? {})) {
    fields.set(`${path}/${name}`, field);
    walk(field, `${path}/${name}`, groups, fields);
  }
  if (schema.items) walk(schema.items, path, groups, fields);
  for (const one of schema.anyOf ?? []) walk(one, path, groups, fields);
}

const groups: Schema[] = [];
const fields = new Map<string, Schema>();
walk(JSON.parse(committed) as Schema, '', groups, fields);
const kinds = (field: Schema): (string | undefined)[] => [field.type, ...(field.anyOf ?? []).map(({ type }) => type)];

describe('the JSON schema of the day file', () => {
  test('the committed one is current (npx tsx src/cli/daySchema.ts writes it)', () => {
    expect(daySchemaText()).toBe(committed);
  });

  test('no group takes a name that is not told', () => {
    expect(groups.length).toBeGreaterThan(10);
    for (const group of groups) expect(group.additionalProperties).toBe(false);
  });

  test('every number ends in its unit', () => {
    const numbers = [...fields].filter(([, field]) => kinds(field).includes('number')).map(([path]) => path);
    expect(numbers.length).toBeGreaterThan(12);
    const suffixes = Object.keys(unitBySuffix);
    expect(numbers.filter((path) => !suffixes.some((suffix) => path.endsWith(suffix)))).toEqual([]);
  });

  test('every field is described', () => {
    const bare = [...fields].filter(([, { description, type }]) => description === undefined && type !== 'array');
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  test('the examples are taken by it', () => {
    for (const name of ['library-windows', 'footbridge', 'exactlyAt', 'unknownMinutes'])
      expect(dayFile.safeParse(JSON.parse(readFileSync(`shared/examples/days/${name}.json`, 'utf8'))).success).toBe(
        true,
      );
  });
});
