/** Kept records: backups out and in, what the browser promised, and the change between the practice book and the real one. */

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

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
const entries = (count: number): string => counted(count, 'entry', 'entries');

/** What a backup holds, as names and values. */
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

const kb = 1000;
const size = (bytes: number): string =>
  bytes < kb * kb ? `${Math.max(1, Math.round(bytes / kb))} kB` : `${(bytes / (kb * kb)).toFixed(1)} MB`;

export const en = {
  heading: 'Kept records',
  intro:
    'The book lives in this browser, on this device, and nowhere else. A backup is one file with the whole book in it.',
  make: {
    heading: 'Make a backup',
    preparing: 'The backup is being made ready',
    action: 'Hand the backup out',
    again: 'Hand the backup out again',
    ready: (count: number, bytes: number) => `Ready: ${entries(count)}, ${size(bytes)}`,
    failed: 'The backup could not be made. Load this page again; if it fails again, free some space on the device.',
    outcome: {
      shared: 'Handed over. Look whether it arrived where you keep it.',
      saved: 'Saved where you chose.',
      downloaded: 'Handed to the browser as a download. Look whether it is there.',
      cancelled: 'Not handed out: you went back. The file is still ready.',
      tapAgain: 'The device waited too long. Tap once more; the file is still ready.',
      cannotShareHere:
        'This device can neither share nor save the file from here. Open the app in the browser and try there.',
      unknown: 'The device did not say why, but the file did not leave. Try again.',
    },
  },
  last: {
    never: 'No backup was ever handed out.',
    fresh: (when: string) => `Last backup ${when}; nothing written since.`,
    old: (when: string, count: number) => `Last backup ${when}; ${entries(count)} written since.`,
  },
  take: {
    heading: 'Take a backup in',
    intro:
      'What is new in the file is added to this book. Nothing here is overwritten, and taking the same file in twice changes nothing.',
    file: 'Backup file',
    fileMissing: 'Choose the backup file first',
    look: 'Look into the file',
    action: 'Take it in',
    nothingNew: 'Everything in this file is here already.',
    done: (count: number) => (count === 0 ? 'Nothing was new.' : `Taken in: ${entries(count)}.`),
    shared: (numbers: string) =>
      `These numbers now stand on two cassettes each: ${numbers}. Go to Samples and say which is which.`,
    start: 'No book is open. Begin one, or take a backup in, on the first page.',
    toStart: 'Go to the first page',
  },
  storage: {
    heading: 'On this device',
    persisted: ['Kept for good', 'The browser has promised not to empty it'] as const,
    notPersisted: [
      'Not promised',
      'The browser may empty it when space runs short. Put the app on the home screen, and hand out a backup each day',
    ] as const,
    notSaid: ['Not known', 'This browser does not say whether it keeps the book. Hand out a backup each day'] as const,
    installed: 'Installed',
    installedYes: 'Opened from the home screen',
    installedNo: 'Opened in the browser. On a phone, put it on the home screen first, then record',
    used: 'Room used',
    usedValue: (bytes: number) => size(bytes),
    usedNotSaid: 'The browser does not say',
    samples: 'Samples in this book',
    lastBackup: 'Last backup',
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
