/** Writes the data dictionary of shared/, made from the schemas of the facts: tsx src/cli/dictionary.ts */
import { writeFileSync } from 'node:fs';
import { dataDictionary } from '#records/dictionary.ts';

export const dictionaryPath = 'shared/dictionary.md';
/** The same text lies in every backup. */
export const dictionaryText = dataDictionary;

if (process.argv[1]?.replaceAll('\\', '/').endsWith('src/cli/dictionary.ts'))
  writeFileSync(dictionaryPath, dictionaryText());
