/** This device: what the browser promised, what is here and what is not, versions; checking a backup, wiping, and the problem report. */
import { counted, entries, filesText } from './entries.ts';
import { fileSize } from './handOver.ts';

export const en = {
  heading: 'This device',
  toKeep: 'To kept records',
  kept: {
    heading: 'Will the book stay?',
    persisted: ['Kept for good', 'The browser has promised not to empty it'] as const,
    notPersisted: [
      'Not promised',
      'The browser may empty it when space runs short. Put the app on the home screen, and send a file each day',
    ] as const,
    notSaid: ['Not known', 'This browser does not say whether it keeps the book. Send a file each day'] as const,
    ask: 'Ask the browser again',
    asked: (answer: boolean | null) =>
      answer === true
        ? 'The browser has promised to keep the book.'
        : answer === false
          ? 'The browser did not promise it. Put the app on the home screen and ask again.'
          : 'This browser has no such promise to give.',
    installed: 'Installed',
    installedYes: 'Opened from the home screen',
    installedNo: 'Opened in the browser. On a phone, put it on the home screen first, then record',
    used: 'Room used',
    usedValue: fileSize,
    usedNotSaid: 'The browser does not say',
    removing: 'Remove the app, or clear the browser, only after a backup was checked: the book goes with it.',
  },
  copies: {
    heading: 'Files of this book',
    lastSent: 'Last file',
    lastBackup: 'Last with everything',
    verified: 'Last backup checked',
    never: 'never',
    when: (when: string, time: string) => `${when}, ${time}`,
  },
  here: {
    heading: 'What is here',
    samples: 'Samples in this book',
    takeIn: 'Half taken in',
    missing: 'Entries missing',
    toSettle: 'What is missing',
    missingCount: (count: number) => `${entries(count)} of other devices`,
    files: 'Papers and pictures missing',
    filesCount: (count: number) => (count === 0 ? 'none' : filesText(count)),
    none: 'none',
  },
  versions: {
    heading: 'Versions',
    app: 'Fullshift',
    file: 'File format',
    lists: 'Lists',
    rules: 'Rules',
    formulas: 'Formulas',
    update: 'Newer version',
    updates: {
      none: 'none waits',
      waiting: 'waits on this device',
      whileRunning: 'waits until every pump is off',
      elsewhere: 'another window has changed to it',
    },
    change: 'Change to it now',
    again: 'Load this page again',
  },
  report: {
    heading: 'Problem report',
    text: 'A text with versions, counts and the last errors, for whoever looks into a problem. No name, number or note of the book stands in it. Nothing is sent by itself.',
    save: 'Save the report',
    share: 'Share the report',
    making: 'The report is being made',
    failed: 'The report could not be made. Load this page again and try once more.',
    show: 'Read it first',
    file: (day: string) => `fullshift-problem-report-${day}.txt`,
  },
  wipe: {
    heading: 'Check a backup, or wipe this device',
    headingWipe: 'Wipe this device',
    intro:
      'Choose a file with the whole book. It is read through: it must hold every entry, paper and picture that is on this device. Nothing is changed by that.',
    file: 'Backup file',
    fileHint: 'The file as it lies where you keep it, not the one on this device',
    fileMissing: 'Choose the backup file first',
    check: 'Read it through',
    reading: 'Reading the backup through',
    holdsAll: (count: number, files: number) =>
      `It holds everything that is on this device: ${files === 0 ? entries(count) : `${entries(count)}, ${filesText(files)}`}.`,
    lacks: (count: number, files: number) =>
      `It does not hold everything: ${[
        ...(count > 0 ? [entries(count)] : []),
        ...(files > 0 ? [filesText(files)] : []),
      ].join(
        ' and ',
      )} of this device ${count + files === 1 ? 'is' : 'are'} not in it. Send a new file with the whole book and choose that one.`,
    noBook: 'No book is on this device. There is nothing to wipe.',
    both: 'The practice book on this device goes as well; it needs no backup.',
    realNotOpen: 'The real book of this device is what must be in the file, whichever of the two is open.',
    sendNew: 'Send a new file',
    lookAgain: 'Look again',
    checkAgain: 'Check a new backup',
    inTheWay: 'This stands in the way of wiping',
    running: (count: number) => counted(count, ['pump is running', 'pumps are running']),
    runningDetail: 'Stop it first, or wait until the shift is over',
    draft: (what: string, when: string) => `${what}: begun ${when}, not written down`,
    lists: 'The lists are being made anew. Wait a moment.',
    discard: 'Throw away what is being typed',
    discardHeading: 'Throw away what is being typed?',
    discardText: 'What was typed and not saved is gone then, in every window.',
    drafts: {
      who: 'Who holds the device',
      openShift: 'Opening a shift',
      results: 'Results of the laboratory',
      pack: 'Packing a box',
      sample: 'A sample',
      shift: 'A shift',
      workday: 'The day of a worker',
      box: 'A box',
      lists: 'The lists',
      other: 'A form',
    },
    typeName: (firm: string) => `To wipe, type the name of the firm: ${firm}`,
    typeHint: 'Afterwards the book is only in the backup',
    nameWrong: 'Type the name of the firm as it stands above',
    action: 'Wipe this device',
    warning:
      'Everything of Fullshift on this device is deleted: the book, its papers and pictures, what was typed. It cannot be taken back from here.',
    changed:
      'Something was written since the backup was read through. Nothing was wiped. Send a new file and check that one.',
    failed: 'The device did not let go of everything. Close other windows of Fullshift and try again.',
    goneHeading: 'This device is wiped',
    gone: 'Nothing of the book is on it any more. The app itself stays, and opens without a connection.',
    toStart: 'Go to the first page',
  },
};
