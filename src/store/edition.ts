/** Of which edition the derived rows are. Apart from what makes them, so that a book opens without it. */
import { foldEdition } from '#records/edition.ts';
import type { BookDatabase } from './database.ts';

/** Change when links or sort keys change (rows.ts): derived tables of another edition are dropped and rebuilt. */
const rowsEdition = 3;
export const derivedEdition = `${foldEdition}.${rowsEdition}`;

/** Are the derived rows whole, and of this edition? */
export const derivedIsCurrent = async (db: BookDatabase): Promise<boolean> =>
  (await db.meta.get('derived'))?.value === derivedEdition;
