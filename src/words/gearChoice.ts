/** Beside a pump, a flow meter or a lot that is about to be chosen: that it was found bad. Read by the supervisor. */
export const en = {
  bad: 'found bad: a low result with it proves nothing',
};

/** What stands beside it in the list; of one in doubt the doubt stands first. */
export const besideChoice = (isBad: boolean, detail: string): string =>
  isBad ? [en.bad, ...(detail === '' ? [] : [detail])].join('; ') : detail;
