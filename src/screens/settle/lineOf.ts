/** A matter as one sentence of the list, what judges meanwhile, and how much it holds up. */
import type { ConflictMatter, OpenMatter } from '#findings/openMatters.ts';
import type { Book } from '#records/book.ts';
import type { Devices } from '#store/hooks/useFactsAbout.ts';
import { labelOf } from '#words/fieldNames.ts';
import { recordName } from '#words/recordNames.ts';
import { en as words } from '#words/settle.ts';
import { valueText } from '#words/valueText.ts';
import { deviceText, namingOf } from './settling.ts';

export interface MatterLine {
  readonly sentence: string;
  readonly meanwhile: string;
}

interface Around {
  readonly book: Book;
  readonly devices: Devices;
  readonly zone: string;
}

export const missingCount = ({
  fromCount,
  toCount,
}: {
  readonly fromCount: number;
  readonly toCount: number;
}): number => toCount - fromCount + 1;

/** What was stated or corrected: each different value once. */
function valuesOf({ conflict, standing }: ConflictMatter, around: Around): readonly string[] {
  const naming = namingOf(around);
  const said = conflict.candidates.map(({ value }) => valueText(conflict.path, value, naming));
  return [...new Set([...said, valueText(conflict.path, standing, naming)])];
}

export function lineOf(matter: OpenMatter, around: Around): MatterLine {
  const { book, devices } = around;
  const { lines, meanwhile } = words;
  const records = matter.recordKeys.map((key) => recordName(key, book));
  const record = records[0] ?? '';
  switch (matter.kind) {
    case 'conflict': {
      const { path } = matter.conflict;
      const stands = valueText(path, matter.standing, namingOf(around));
      return {
        sentence: lines.conflict(record, labelOf(path), lines.or(valuesOf(matter, around))),
        meanwhile: matter.judges === 'careful' ? meanwhile.careful(stands) : meanwhile.first(stands),
      };
    }
    case 'voidAgainstResult':
      return { sentence: lines.voidAgainstResult(record), meanwhile: meanwhile.void };
    case 'sameNumber':
      return { sentence: lines.sameNumber(matter.sampleNumber, records), meanwhile: meanwhile.number };
    case 'sheetDiffers':
      return {
        sentence: lines.sheetDiffers(record, matter.revision, matter.differences.length),
        meanwhile: meanwhile.record,
      };
    case 'missingEntries':
      return {
        sentence: lines.missingEntries(deviceText(matter.missing.writer, devices), missingCount(matter.missing)),
        meanwhile: meanwhile.missing(matter.missing.untilOn),
      };
  }
}

/** What holds up most comes first: every day up to one; a result; whose result it is; a day's figure; a list; a sheet. */
function rankOf(matter: OpenMatter): number {
  const order: Readonly<Record<OpenMatter['kind'], number>> = {
    missingEntries: 0,
    voidAgainstResult: 1,
    sameNumber: 2,
    conflict: 3,
    sheetDiffers: 5,
  };
  const bearsOnADay = matter.recordKeys.some((key) => /^(sample|flowCheck|workday|site|meter|shift):/.test(key));
  return matter.kind === 'conflict' && !bearsOnADay ? 4 : order[matter.kind];
}

export const inOrder = (matters: readonly OpenMatter[]): readonly OpenMatter[] =>
  matters.toSorted((a, b) => rankOf(a) - rankOf(b));
