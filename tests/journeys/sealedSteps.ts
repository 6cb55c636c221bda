/** A sealed file opened without the app: by the standard command line of age, with the words that the page showed. */
import { rmSync } from 'node:fs';
import { expect } from '@playwright/test';
import { ageProgram } from '#tests/store/ageProgram.ts';
import { factLinesIn, unzipped } from './exchangeSteps.ts';

/** The fact lines of the archive under the seal; null, and said aloud, when the program is not on this machine. */
export async function linesUnderSeal(path: string, passphrase: string): Promise<readonly string[] | null> {
  expect(passphrase.split(/[\s-]+/)).toHaveLength(7);
  const age = ageProgram();
  if (age === null) return null;
  const opened = `${path}.opened.zip`;
  rmSync(opened, { force: true });
  await age.run(`-d -o ${opened} ${path}`, passphrase);
  // Another passphrase opens nothing.
  await expect(age.run(`-d -o ${opened}.not ${path}`, `${passphrase}x`)).rejects.toThrow();
  return factLinesIn(unzipped(opened).book);
}
