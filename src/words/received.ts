/** Files that another app shared with this one, or that were opened with it from the desktop. Read by supervisor and office. */
import { fileSize } from './handOver.ts';

export const en = {
  heading: 'A file came in',
  nothing: 'No file waits here. A file that is shared with Fullshift, or opened with it, waits here for a day.',
  waits: 'It waits on this device until it is looked into, one day at most. Nothing of it is in the book yet.',
  noName: 'A file without a name',
  about: (bytesCount: number, when: string) => `${fileSize(bytesCount)}, came ${when}`,
  look: 'Look into the file',
  lookAt: (name: string) => `Look into ${name}`,
  putAside: 'Put it aside',
  putAsideOf: (name: string) => `Put aside ${name}`,
  table:
    "This looks like a laboratory's table. Fullshift does not read tables yet: open it beside this page and write the results down by hand.",
  toResults: 'Write results down',
  /** Why something that was sent does not wait. */
  not: {
    noFile: 'What was shared held no file. Share the file itself, or choose it on the page for taking files in.',
    tooLarge: 'The file is larger than any book could be. It was not kept.',
    tooMany: 'More files came at once than can wait here. The first four wait; share the others again afterwards.',
    noSpace: 'There was no room to keep the file. Free some space on the device, then share it again, or choose it.',
  },
  choose: 'Choose a file instead',
} as const;
