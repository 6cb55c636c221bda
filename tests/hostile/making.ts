/**
 * Book texts made by hand with Node's own SHA-256, so that a bad file is bad in one place only and what should come of it is known
 * without asking the app. Plainly invented people.
 */
import { createHash } from 'node:crypto';

export const sha = (bytes: string | Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

export interface Line {
  readonly id: string;
  readonly text: string;
  readonly link: string;
}

export const bookId = 'b00000000001';
export const siteId = 's00000000001';
export const base = 'bbbbbbbbbbbb';
export const other = 'cccccccccccc';
export const idOf = (writer: string, sequence: number): string => `${writer}.${String(sequence).padStart(8, '0')}`;

export interface Wish {
  readonly kind?: string;
  readonly about?: readonly string[];
  readonly body?: unknown;
  /** More keys of the envelope, or others in their place. */
  readonly more?: Readonly<Record<string, unknown>>;
  /** The line as it is, whatever it says. */
  readonly raw?: (id: string) => string;
}

/** A remark on the site: a kind that every version knows. */
export const remark = (text: string): Wish => ({ kind: 'noteMade.v1', about: [`site:${siteId}`], body: { text } });

function textOf(id: string, { kind = 'noteMade.v1', about = [`site:${siteId}`], body = {}, more, raw }: Wish): string {
  if (raw !== undefined) return raw(id);
  const at = `2026-11-25T12:00:${String(Number(id.slice(13)) % 60).padStart(2, '0')}.000Z`;
  const happened = { at, zone: 'America/New_York', offsetMin: -300, entry: 'tapped', from: null };
  return JSON.stringify({ about, body, by: null, happened, id, kind, recorded: `${at}-0000`, why: null, ...more });
}

/** One writer's facts, each linked to the one before it. */
export function chain(writer: string, wishes: readonly Wish[], from = 1, before = ''): Line[] {
  let link = before;
  return wishes.map((wish, index) => {
    const id = idOf(writer, from + index);
    const text = textOf(id, wish);
    link = sha(link + sha(text));
    return { id, text, link };
  });
}

/** What every device of the corpus holds already. */
export const baseLines = (practice = false): Line[] =>
  chain(base, [
    { kind: 'bookOpened.v1', about: [`book:${bookId}`], body: { bookId, firmName: 'Old Sash & Steel', practice } },
    {
      kind: 'siteAdded.v1',
      about: [`site:${siteId}`],
      body: {
        siteId,
        name: 'Reading room',
        stateCode: 'OH',
        setting: 'indoors',
        altitudeM: 230,
        zone: 'America/New_York',
      },
    },
    remark('The north windows are first'),
    remark('Key at the porter'),
  ]);

/** What another device wrote: three remarks, each new here. */
export const newLines = chain(other, [remark('Sashes one to four'), remark('Dry scraping'), remark('Lunch at noon')]);

export type Header = Readonly<Record<string, unknown>>;
const headsOf = (lines: readonly Line[]) => {
  const last = new Map(lines.map((line) => [line.id.slice(0, 12), line]));
  return [...last.values()].map(({ id, link }) => ({ factId: id, link }));
};
export const headerOf = (lines: readonly Line[], changed: Header = {}): string =>
  JSON.stringify({
    ...{ format: 'fullshift-book', formatVersion: 1, bookId, practice: false, writtenBy: '0.1.0' },
    heads: headsOf(lines),
    ...changed,
  });

export interface TextWish {
  readonly header?: Header;
  /** The header line as it is. */
  readonly rawHeader?: string;
  readonly end?: Readonly<Record<string, unknown>>;
}

/** Header, facts in the order given, end mark. */
export function bookText(lines: readonly Line[], { header = {}, rawHeader, end = {} }: TextWish = {}): string {
  const first = rawHeader ?? headerOf(lines, header);
  const before = [first, ...lines.map(({ link, text }) => `${link} ${text}`)].map((line) => `${line}\n`).join('');
  return `${before}${JSON.stringify({ end: 'fullshift-book', factsCount: lines.length, hash: sha(before), ...end })}\n`;
}

export const blobOf = (...parts: readonly (string | Uint8Array | Blob)[]): Blob => new Blob(parts as BlobPart[]);
export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A sound file of the other device, as text: what is changed in it is what is bad. */
export const soundText = (): string => bookText([...baseLines(), ...newLines]);
