/** Taking a file in: what it holds, what would be new, what both sides changed, and how far it came. Read by the office. */
import { entries, filesText } from './entries.ts';

export interface GapAbout {
  readonly fromCount: number;
  readonly toCount: number;
}

export const en = {
  heading: 'Take a file in',
  backKeep: 'To kept records',
  intro:
    'A file of this book, made on another device. What is new in it is added; nothing here is overwritten, and the same file twice changes nothing.',
  file: 'File from the other device',
  /** `mostMb`: the largest file that is taken in, in millions of bytes. */
  fileHint: (mostMb: number) =>
    `Its name ends in .zip, .age or .txt, that of a custody sheet in .pdf; up to ${mostMb} MB`,
  fileMissing: 'Choose the file first',
  received: (name: string) => `Received: ${name}`,
  fromFolder: (name: string) => `From the folder: ${name}`,
  otherFile: 'Choose another file',
  passphrase: 'Passphrase of this file',
  passphraseHint: 'It was shown on the device that made the file. It may be pasted',
  passphraseMissing: 'This file is sealed. Write its passphrase',
  sealed: 'This file is sealed. Its passphrase was shown where it was made.',
  look: 'Look into the file',
  lookPart: 'Look at what can still be read',
  salvageable: (count: number) =>
    count === 1
      ? 'One entry in it can still be read. If there is no better file, take in what is left.'
      : `${count} entries in it can still be read. If there is no better file, take in what is left.`,
  steps: {
    reading: 'Reading the file',
    packing: 'Reading the file',
    sealing: 'Opening the seal',
    opening: 'Opening the seal; this may take half a minute',
    comparing: 'Comparing with what is here',
    taking: 'Taking in',
    lists: 'Making the lists anew',
  },
  making: {
    reading: 'Reading the book',
    packing: 'Packing the file',
    sealing: 'Sealing the file; this may take half a minute',
    opening: 'Opening',
    comparing: 'Comparing',
    taking: 'Taking in',
    lists: 'Making the lists anew',
  },
  stop: 'Stop',
  preview: {
    heading: 'What this file would add',
    from: 'Made on',
    fromDevice: (name: string | null) => name ?? 'another device, without a name',
    fromUnknown: 'The file does not say',
    madeAt: 'Made at',
    firm: 'Firm',
    example: (firm: string) => `${firm} (EXAMPLE)`,
    part: 'Holds',
    parts: {
      everything: 'the whole book',
      lacking: 'only what another device lacked',
      paper: 'the record that lies in a custody sheet',
    },
    inFile: 'In the file',
    entriesOf: (count: number, files: number) =>
      files === 0 ? entries(count) : `${entries(count)}, ${filesText(files)}`,
    here: 'Here already',
    new: 'New here',
    nothing: 'nothing',
    between: 'Happened',
    fromTo: (from: string, to: string) => (from === to ? from : `${from}, to ${to}`),
    newHeading: 'New here',
    bothHeading: 'Changed on both sides',
    bothIntro: 'Two people changed the same value without knowing of each other. Both values are kept.',
    both: (what: string, record: string) => (record === '' ? what : `${record}: ${what}`),
    bothDetail: (here: string, there: string, judges: string, first: string) =>
      `Here ${here}; there ${there}; before both ${first}. Until somebody settles it, ${judges} counts`,
    noValue: 'not changed',
    alsoHeading: 'Also in this file',
    voidAgainst: (numbers: string) =>
      `Void on one side, with a result on the other: ${numbers}. The void counts until somebody says otherwise`,
    shared: (numbers: string) => `One number on two cassettes: ${numbers}`,
    missing: (gaps: readonly GapAbout[]) => {
      const count = gaps.reduce((sum, { fromCount, toCount }) => sum + toCount - fromCount + 1, 0);
      return `${entries(count)} of another device ${count === 1 ? 'lies' : 'lie'} in another file. Until then nothing up to those days is called low`;
    },
    newer: (count: number) =>
      `${entries(count)} of a newer version of Fullshift: kept as they are; what they touch may stay doubtful until this device has that version`,
    damaged: (count: number) => `${filesText(count)} damaged in the file: left out`,
    filesMissing: (count: number) => `${filesText(count)} neither here nor in the file`,
    broken: (count: number) => `${entries(count)} that do not follow from those before them: left out`,
    unreadable: (count: number) => `${entries(count)} that cannot be read: left out`,
    salvaged: 'The file is damaged. This is what can still be read of it.',
    forks: (count: number) =>
      `Nothing of this file can be taken in: ${entries(count)} stand under one name with other words here. Two devices must have written as one. Keep both files, and make a problem report on both devices.`,
    nothingNew: 'Everything in this file is here already.',
    action: (count: number, files = 0) => (count === 0 ? `Take in ${filesText(files)}` : `Take in ${entries(count)}`),
  },
  done: {
    heading: 'Taken in',
    text: (count: number, files: number) =>
      count === 0 && files === 0
        ? 'Nothing was new.'
        : files === 0
          ? `Taken in: ${entries(count)}.`
          : `Taken in: ${entries(count)}, ${filesText(files)}.`,
    shared: (numbers: string) => `These numbers now stand on two cassettes each: ${numbers}.`,
    bothChanged: (count: number) =>
      count === 1
        ? 'One value was changed on both sides. Somebody has to say which is right.'
        : `${count} values were changed on both sides. Somebody has to say which are right.`,
    open: 'Something in this book waits to be settled by a person.',
    settle: 'Settle what differs',
    another: 'Take another file in',
    today: 'Go to Today',
    send: 'Send a file back',
  },
  cancelled: (done: number, total: number) =>
    `Stopped: ${done.toLocaleString('en-US')} of ${entries(total)} are taken in and stay. Choose the same file again to go on.`,
  unfinished: {
    heading: 'Half taken in',
    text: (file: string, done: number, total: number) =>
      `Half taken in: ${done.toLocaleString('en-US')} of ${entries(total)} of ${file}.`,
    means: 'Until it is whole, nothing about these days is called low, and no sample or duty is relaxed.',
    goOn: 'Go on: choose the same file again',
    leave: 'Leave it at that',
    leaveHeading: 'Leave this file half taken in?',
    leaveText:
      'What was taken in stays. What is missing is then known as missing, and the days it may bear on stay doubtful until it comes from another file. The file can be taken in later.',
    leaveConfirm: 'Leave it at what was taken in',
  },
};
