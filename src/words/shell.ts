/** What stands around every page: who holds the device, where things are, how the book is kept, and what went wrong. */
export const en = {
  appName: 'Fullshift',
  description: 'Personal air samples for lead, from the flow check to the result. Works without a signal.',
  skip: 'Go to the page',
  nav: 'Pages of the book',
  pages: {
    today: 'Today',
    samples: 'Samples',
    results: 'Results',
    boxes: 'Boxes',
    keep: 'Kept',
  },
  more: 'Also in this book',
  lists: 'People, places and gear',
  groups: 'Task groups',
  wear: 'What to wear until it is measured',
  rules: 'Limits and whose rule',
  checked: 'How we checked the arithmetic',
  about: 'About and cautions',
  heldBy: (name: string) => `Held by ${name}`,
  heldByNobody: 'Say who holds this device',
  example: 'EXAMPLE',
  exampleMeaning: 'A practice book: none of this happened.',
  backup: {
    never: 'No backup was made on this device yet.',
    old: (when: string, facts: number) =>
      `Last backup ${when}; ${facts === 1 ? 'one entry' : `${facts} entries`} written since.`,
    fresh: (when: string) => `Last backup ${when}; nothing written since.`,
    make: 'Make a backup',
  },
  opening: 'Opening the book',
  loading: 'Turning to the page',
  ready: 'Ready: this now opens on this device with no connection at all.',
  update: {
    offer: 'A newer version of Fullshift is here. What you typed is kept; the page loads again once.',
    now: 'Change to it now',
    later: 'Not now',
    waiting: 'A newer version of Fullshift is here. It can wait until every pump is off.',
    elsewhere:
      'Another window has changed to a newer version. Load this page again when it suits you; what you typed is kept.',
    again: 'Load this page again',
  },
  gallery: 'Every part of the pages',
  notFound: {
    heading: 'There is no such page',
    text: 'The address may be mistyped, or the record is not in this book.',
  },
  failed: {
    heading: 'This page could not be shown',
    text: 'Everything written down so far is kept on this device. Load the page again; if it fails again, go to Today.',
    again: 'Load the page again',
    today: 'Go to Today',
    details: 'For whoever looks into it',
  },
  book: {
    newerVersion: {
      heading: 'This book was written by a newer version',
      text: 'Nothing is changed here until this page is of that version too. Load it again with a connection.',
    },
    failed: {
      heading: 'The book could not be opened',
      blocked: 'Another window holds it. Close the other windows of Fullshift and load this page again.',
      closedElsewhere: 'It was closed by another window, or the browser dropped it. Load this page again.',
      unknown: 'The browser did not say why. Nothing was deleted. Load this page again.',
    },
    rebuilding: (done: number, total: number) => `Lists are being made anew from the book: ${done} of ${total}.`,
    unreadable: (count: number) =>
      count === 1
        ? 'One entry of this book cannot be read. It is kept and left out.'
        : `${count} entries of this book cannot be read. They are kept and left out.`,
  },
};

export type ShellWords = typeof en;
