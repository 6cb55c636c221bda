/**
 * People whom samples and boxes name by id and whose own entry is not on this device: after a book was rebuilt from a custody sheet that
 * shows identifiers. Nobody is made up: what the sheet printed of them is handed out, and a person adds the name.
 */
import type { BoxRecord, SampleRecord } from '#records/book.ts';
import type { CustodySheet } from '#records/custodySheet.ts';
import type { BookDatabase } from './database.ts';

export interface Unnamed {
  readonly personId: string;
  /** As the sheet showed the worker; null where no sheet here does. */
  readonly identifier: string | null;
  /** A cassette of theirs; null for who is known only as sampler of a box. */
  readonly sampleNumber: string | null;
  /** Printed on the sheet by name, also where workers are not. */
  readonly printedName: string | null;
}

type Sheet = Partial<CustodySheet>;

async function boxesWith(db: BookDatabase, link: string): Promise<BoxRecord[]> {
  const rows = await db.records.where('links').equals(link).toArray();
  return rows.flatMap((row) => (row.kind === 'box' ? [row.record as BoxRecord] : []));
}

function identifierOn(sheet: Sheet, sampleId: string): string | null {
  const worker = sheet.rows?.find((row) => row.sampleId === sampleId)?.worker;
  return sheet.workersShownAs === 'identifier' && typeof worker === 'string' ? worker : null;
}

async function workerOf(db: BookDatabase, personId: string): Promise<Unnamed> {
  const rows = await db.records.where('links').equals(`worker:${personId}`).toArray();
  const samples = rows.flatMap((row) => (row.kind === 'sample' ? [row.record as SampleRecord] : []));
  let identifier: string | null = null;
  for (const { id } of samples)
    for (const { issues } of await boxesWith(db, `sample:${id}`))
      for (const { sheet } of issues) identifier ??= identifierOn(sheet as Sheet, id);
  return { personId, identifier, sampleNumber: samples[0]?.sampleNumber ?? null, printedName: null };
}

/** In order of ids. Asks by index only: a book in which everybody is named costs two requests. */
export async function unnamedPeople(db: BookDatabase): Promise<readonly Unnamed[]> {
  const links = await db.records.where('links').startsWith('worker:').uniqueKeys();
  const people = links.map((link) => String(link).slice('worker:'.length));
  const boxes = await boxesWith(db, 'issued');
  const ids = [...new Set([...people, ...boxes.map(({ packed }) => packed.samplerId)])];
  const held = await db.records.bulkGet(ids.map((id) => `person:${id}`));
  const found: Unnamed[] = [];
  for (const personId of ids.filter((_, at) => held[at] === undefined)) {
    const sampled = boxes.find(({ packed }) => packed.samplerId === personId);
    const printedName = (sampled?.issues.at(-1)?.sheet as Sheet | undefined)?.samplerName ?? null;
    found.push({ ...(await workerOf(db, personId)), printedName });
  }
  return found;
}
