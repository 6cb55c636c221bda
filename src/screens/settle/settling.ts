/** What the pages of one matter share: the slice it was found in, the devices, whose hands the phone is in, and who wrote what. */

import { namesIn } from '#findings/naming.ts';
import type { OpenMatter } from '#findings/openMatters.ts';
import type { Book } from '#records/book.ts';
import { readFact, type StoredFact } from '#records/canonical.ts';
import { writerOf } from '#records/chain.ts';
import type { Envelope } from '#records/fact.ts';
import type { Devices } from '#store/hooks/useFactsAbout.ts';
import { zoneOfRecord } from '#words/recordNames.ts';
import { en as words } from '#words/settle.ts';
import { momentText, type Naming } from '#words/valueText.ts';

export interface Settling<M extends OpenMatter = OpenMatter> {
  readonly matter: M;
  readonly book: Book;
  readonly devices: Devices;
  /** Every fact about the records in dispute. */
  readonly facts: readonly StoredFact[];
  /** Person id of whoever holds the device. */
  readonly by: string | null;
  /** In which moments are told: that of the site, else of the device. */
  readonly zone: string;
}

export const matterPath = (key: string): string => `/settle/${encodeURIComponent(key)}`;

export const zoneOf = ({ recordKeys }: OpenMatter, book: Book, deviceZone: string): string =>
  recordKeys.map((key) => zoneOfRecord(key, book)).find((zone) => zone !== null) ?? deviceZone;

export const namingOf = ({ book, zone }: Pick<Settling, 'book' | 'zone'>): Naming => ({ nameOf: namesIn(book), zone });

/** 'on this device', 'on Office laptop'; a device without a name is told from others by the first letters of its writer. */
export function deviceText(writer: string, { here, names }: Devices): string {
  if (writer === here) return words.device.here;
  const name = names.get(writer);
  return name === undefined ? words.device.other(writer.slice(0, 4)) : words.device.named(name);
}

/** The envelope of a fact among those about the records in dispute; undefined when it is not on this device. */
export function envelopeOf(
  id: string,
  facts: readonly StoredFact[],
): Pick<Envelope, 'by' | 'recorded' | 'why' | 'id'> | undefined {
  const stored = facts.find((fact) => fact.id === id);
  const read = stored && readFact(stored.text);
  return read?.kind === 'known' ? read.fact : read?.kind === 'unknown' ? read.envelope : undefined;
}

/** Who wrote a fact, when, on which device, and the reason given. */
export function writtenBy(id: string, settling: Settling): string {
  const { book, devices, facts, zone } = settling;
  const fact = envelopeOf(id, facts);
  if (fact === undefined) return words.conflict.notHere;
  const who = book.people.get(fact.by ?? '')?.name ?? words.conflict.nobody;
  return words.conflict.said(who, momentText(fact.recorded.slice(0, 24), zone), deviceText(writerOf(id), devices));
}
