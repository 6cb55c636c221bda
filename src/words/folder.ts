/** A folder that the firm shares, where the browser can open one. Read by the office. */
import { counted } from './entries.ts';

export const folderFault = {
  none: 'No folder is chosen any more. Choose it again under Kept records.',
  permission: 'The browser did not open the folder. Tap once more and allow it.',
  gone: 'The folder is not there any more: it was moved or renamed. Choose it again.',
  locked: 'Another program holds the file. Wait a moment and try again.',
  full: 'There is no room left where the folder is. Free some space and try again.',
  unknown: 'The folder did not take the file, and did not say why. Try again, or hand the file out in another way.',
} as const;

export const en = {
  heading: 'Folder of the firm',
  intro:
    'A folder that both devices reach, such as one on the office server. New files in it are shown here; nothing is taken in without you.',
  choose: 'Choose a folder',
  chooseAnother: 'Choose another folder',
  askAgain: (name: string) => `Open the folder ${name} again`,
  asks: (name: string) => `The browser wants a tap before it opens the folder ${name} again.`,
  gone: (name: string) => `The folder ${name} is not there any more.`,
  watched: (name: string) => `The folder ${name} is looked into while this page is open.`,
  nothingNew: 'Nothing new in the folder.',
  newFiles: (count: number) => counted(count, ['new file in the folder', 'new files in the folder']),
  look: 'Look at them',
  lookInto: (name: string) => `Look into ${name}`,
  asideOf: (name: string) => `Put ${name} aside`,
  waiting: (count: number) => `${counted(count, ['file is', 'files are'])} still being written.`,
  forget: 'Leave the folder',
};
