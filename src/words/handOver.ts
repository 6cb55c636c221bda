/** Making a file for the office or another device, and handing it out. Read by supervisor and office. */
import { entries, filesText } from './entries.ts';

const kb = 1000;
export const fileSize = (bytes: number): string =>
  bytes < kb * kb ? `${Math.max(1, Math.round(bytes / kb))} kB` : `${(bytes / (kb * kb)).toFixed(1)} MB`;

export const en = {
  heading: 'Send to office',
  backToday: 'To today',
  backKeep: 'To kept records',
  noPartner: 'No other device has sent a file yet, so this one holds the whole book. It is a backup as well.',
  /** The other device by its name, where it has told one. */
  headingTo: (device: string | null) => (device === null ? 'Send to office' : `Send to ${device}`),
  headingToday: "Send today's file",
  partner: 'For which device?',
  partnerName: (name: string | null) => name ?? 'A device without a name',
  partnerHint: (when: string, lacks: number, ahead: number) =>
    [
      `Its last file came ${when}`,
      lacks === 0 ? 'it held all that is here' : `it lacks ${entries(lacks)}`,
      ...(ahead > 0 ? [`it holds ${entries(ahead)} that are not here`] : []),
    ].join('; '),
  newDevice: 'A device that has sent nothing yet',
  newDeviceHint: 'It gets the whole book, as does a backup',
  part: 'What goes into the file?',
  parts: {
    lacking: {
      label: (count: number) => `What it lacks: ${entries(count)}`,
      hint: 'Small; only this device can use it',
    },
    everything: { label: 'The whole book', hint: 'Also good as a backup' },
  },
  seal: 'Is the file sealed?',
  seals: {
    none: {
      label: 'Not sealed',
      hint: 'Whoever gets hold of the file can read who breathed what',
    },
    made: { label: 'Sealed with seven words', hint: 'Made here, shown once' },
    own: { label: 'Sealed with a passphrase of your own', hint: 'One that you have agreed on with the office' },
  },
  plainWarning:
    'This file is not sealed: it names the workers and says what each of them breathed. Send it only where that may be read.',
  words: {
    label: 'The passphrase of this file',
    note: 'Write it down now. It opens the file, and nobody can recover it.',
    again: 'Make other words',
    copy: 'Copy the words',
    copied: 'Copied. Write them down as well.',
  },
  own: {
    label: 'Passphrase',
    hint: 'At least 20 characters, such as five words. It may be pasted. Nobody can recover it',
    short: 'Write a passphrase of at least 20 characters that are not all alike',
    keep: 'Keep it on this device for the next files',
    keepHint: 'The office still needs it written down',
    use: 'Use this passphrase',
  },
  making: 'The file is being made',
  waitsForPassphrase: 'The file is made as soon as there is a passphrase.',
  cancel: 'Stop making it',
  stopped: 'The file is not made.',
  makeAgain: 'Make it again',
  failed: 'The file could not be made. Load this page again; if it fails again, free some space on the device.',
  ready: (count: number, files: number, bytes: number, sealed: boolean) =>
    `Ready: ${entries(count)}${files > 0 ? `, ${filesText(files)}` : ''}, ${fileSize(bytes)}${sealed ? ', sealed' : ''}`,
  leftOut: {
    text: (count: number) =>
      `${filesText(count)} had no room in this file. Hand this one out first, then make the next one: both are needed.`,
    next: 'Make the next file',
  },
  nothingLacking: 'It held all that is here when it made its last file. Sending again does no harm.',
  runningNow: 'A pump is running. The file holds the shift up to now; send another when it is done.',
  ways: {
    share: 'Share the file',
    shareAsText: 'Share the file as text',
    saveDialog: 'Save the file',
    download: 'Download the file',
    folder: (name: string) => `Put it into the folder ${name}`,
    notYet: 'Hand the file out',
    none: 'This device can neither share nor save the file from here. Open the app in the browser and try there.',
  },
  shareAsTextHint:
    'This device lets no archives through. The file goes out with .txt at the end of its name; it is the same file.',
  outcome: {
    shared: 'Handed over. Look whether it arrived.',
    saved: 'Saved where you chose.',
    downloaded: 'Handed to the browser as a download. Look whether it is there.',
    cancelled: 'Not handed out: you went back. The file is still ready.',
    tapAgain: 'The device waited too long. Tap once more; the file is still ready.',
    cannotShareHere:
      'This device can neither share nor save the file from here. Open the app in the browser and try there.',
    unknown: 'The device did not say why, but the file did not leave. Try again.',
  },
  intoFolder: (name: string) => `It lies in the folder as ${name}.`,
  assumesNothing: 'What was sent counts as arrived only when a file from that device says so.',
  deviceName: {
    heading: 'What is this device called?',
    label: 'Name of this device',
    hint: 'Other devices see it: Phone of the crew, Office. No names of people',
    save: 'Save the name',
    saved: 'Saved.',
    missing: 'Write a name',
    long: 'Write the name in 40 letters or fewer',
    none: 'This device has no name yet. The other side sees only that a file came.',
  },
};
