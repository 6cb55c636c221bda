/** Writes the JSON schema of the day file, made from the schema that reads it: tsx src/cli/daySchema.ts */
import { writeFileSync } from 'node:fs';
import { z } from 'zod';
import { dayFile } from './dayFile.ts';

export const daySchemaPath = 'shared/schemas/day.schema.json';

export function daySchemaText(): string {
  const schema = z.toJSONSchema(dayFile, { io: 'input', target: 'draft-2020-12' });
  const titled = {
    ...schema,
    title: 'Work days for fullshift assess',
    description: 'What is not known is null or left out; nothing is guessed.',
  };
  return `${JSON.stringify(titled, null, 2)}\n`;
}

if (process.argv[1]?.replaceAll('\\', '/').endsWith('src/cli/daySchema.ts'))
  writeFileSync(daySchemaPath, daySchemaText());
