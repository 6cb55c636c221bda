/** Kept records: what is due now, files out and in, and the change between the practice book and the real one. */
import { entries } from './entries.ts';

interface Preview {
  readonly firmName: string;
  readonly practice: boolean;
  readonly factsCount: number;
  readonly newCount: number;
  readonly sameCount: number;
  readonly forks: readonly string[];
  readonly unreadableCount: number;
  readonly sharedNumbers: readonly string[];
}

/** What a file holds, as names and values: on the first page of a device, where nothing is there to compare it with. */
export function previewItems(preview: Preview): readonly (readonly [string, string])[] {
  const items: [string, string][] = [
    ['Firm', preview.practice ? `${preview.firmName} (EXAMPLE)` : preview.firmName],
    ['In the file', entries(preview.factsCount)],
    ['New here', preview.newCount === 0 ? 'nothing' : entries(preview.newCount)],
    ['Here already', preview.sameCount === 0 ? 'nothing' : entries(preview.sameCount)],
  ];
  if (preview.unreadableCount > 0)
    items.push(['Not readable', `${entries(preview.unreadableCount)}: kept as they are, left out of the lists`]);
  if (preview.sharedNumbers.length > 0)
    items.push(['One number twice', `${preview.sharedNumbers.join(', ')}: stand on two cassettes each`]);
  if (preview.forks.length > 0)
    items.push(['Contradicting', `${entries(preview.forks.length)} under one name: nothing can be taken in`]);
  return items;
}

export const en = {
  heading: 'Kept records',
  intro: 'The book lives in this browser, on this device, and nowhere else, until a file of it has left.',
  noBook: {
    text: 'No book is open. Begin one, or take up a book from another device, on the first page.',
    toStart: 'Go to the first page',
  },
  last: {
    never: 'No file of this book ever left this device.',
    fresh: (when: string) => `The last file with everything left ${when}; nothing was written since.`,
    old: (when: string, count: number) =>
      `The last file with everything left ${when}; ${entries(count)} written since.`,
    onlyNews: 'Files for another device left, but none yet with the whole book.',
  },
  due: 'It is time to send a file with the whole book, so that a lost device costs nothing.',
  send: {
    action: 'Send to office',
    line: 'Send to office, or to another device',
    detail: 'A file with what the other side lacks, or with everything, as a backup',
  },
  takeIn: { line: 'Take a file in', detail: 'From another device, or a custody sheet' },
  settle: {
    line: 'Settle what differs',
    none: 'To settle',
    detail: 'What was said twice and differently',
    noneDetail: 'Nothing is open, custody sheets aside',
  },
  storage: {
    line: 'This device',
    detail: 'What it promises, what it lacks, versions, check a backup, wipe, problem report',
  },
  books: {
    heading: 'Practice book and real book',
    inPractice: 'This is the practice book: EXAMPLE stands across it, and none of it happened.',
    inReal: 'This is the real book.',
    toReal: 'Change to the real book',
    toPractice: 'Change to the practice book',
    busy: 'Changing books',
  },
};
