/** The seven registers: how an entry is typed, read, shown in a line, and compared with what stands in the book. */
import type { ComponentType } from 'react';
import type { FieldError } from '#parts/ErrorSummary.tsx';
import type { FieldReader } from '#parts/fieldReader.ts';
import type { AnyRecord } from '#records/book.ts';
import type { FactKind } from '#records/fact.ts';
import type { Registers } from '#store/hooks.ts';
import { jobClassification, laboratory, person } from './firmEntries.ts';
import { lot, meter, pump, site } from './gearEntries.ts';

export type RegisterKind = 'person' | 'jobClassification' | 'pump' | 'meter' | 'lot' | 'site' | 'laboratory';

export interface LinesProps<Text> {
  readonly value: Text;
  readonly onChange: (text: Text) => void;
  readonly errors: readonly FieldError[];
  readonly today: string;
}

export interface Entry<Text, Row extends AnyRecord> {
  readonly added: FactKind;
  readonly idName: string;
  readonly list: (registers: Registers) => readonly Row[];
  readonly title: (row: Row) => string;
  readonly detail: (row: Row, today: string) => string | undefined;
  readonly empty: (zone: string) => Text;
  readonly textOf: (row: Row) => Text;
  /** The body without its id; null when something stands in the way. Keys this form does not show keep their value. */
  readonly read: (read: FieldReader, text: Text, today: string) => Readonly<Record<string, unknown>> | null;
  /** Keys of the body that the form does not ask for, in a new entry. */
  readonly unasked: Readonly<Record<string, unknown>>;
  readonly Lines: ComponentType<LinesProps<Text>>;
}

/** An entry with its types forgotten: text and row of one entry only ever meet each other. */
export type AnyEntry = Entry<unknown, AnyRecord>;
const forget = <Text, Row extends AnyRecord>(entry: Entry<Text, Row>): AnyEntry => entry as unknown as AnyEntry;

export const entries: Readonly<Record<RegisterKind, AnyEntry>> = {
  person: forget(person),
  jobClassification: forget(jobClassification),
  pump: forget(pump),
  meter: forget(meter),
  lot: forget(lot),
  site: forget(site),
  laboratory: forget(laboratory),
};
