/** What is said when something could not be written down. Each sentence tells what to do; nothing typed is lost. */

export const failed = {
  quota:
    'The device has no room left, so nothing was written down. What you typed is still here. Free some space, make a backup under Kept records, then try again.',
  lost: 'The device lost hold of the book, so nothing was written down. What you typed is still here. Load this page again, then try again.',
  newer:
    'Another window of Fullshift is newer and holds the book now. What you typed is kept. Load this page again, then try again.',
  evicted:
    'The browser has emptied the book on this device. Nothing was written down. Take your last backup in first; it is on the first page.',
  unknown:
    'The device did not say why, but nothing was written down. What you typed is still here. Try again; if it fails again, load the page again.',
} as const;

export type FailedWhy = keyof typeof failed;

export const failedSentence = (why: string): string => (why in failed ? failed[why as FailedWhy] : failed.unknown);
