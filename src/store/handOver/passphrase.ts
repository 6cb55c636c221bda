/** Passphrases made here. Load this file when it is needed: it holds the list of words. */

/** Seven words, drawn evenly from the list: 90 bits. Lower case, with single spaces. */
export function newPassphrase(): string {
  throw new Error('not written yet');
}

/** Whether somebody's own passphrase is long and varied enough to seal with. */
export function isStrongEnough(_passphrase: string): boolean {
  throw new Error('not written yet');
}
