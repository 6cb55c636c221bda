/** Every sample ever, in sentences: where each one stands. */
export const en = {
  heading: 'Samples',
  newestFirst: 'All of them, newest first',
  empty: 'No sample yet. The first one begins on Today, with the shift.',
  total: (count: number) => (count === 1 ? 'One cassette in this book' : `${count} cassettes in this book`),
  older: 'Show older ones',
  find: 'Find by number',
  findHint: 'All digits on the cassette',
  findAction: 'Find',
  notFound: (number: string) => `No cassette of this book has the number ${number}. Compare it with the label.`,
  mistakes: {
    empty: 'Write the number of the cassette',
    notDigits: 'A number has digits only',
    tooShort: 'Too few digits: write all digits of the label',
    tooLong: 'Too many digits: write the digits of one label',
    checkDigit: 'These digits do not fit together: one is wrong, or two have changed places. Compare with the label',
  },
  found: 'Found',
  blank: 'Field blank',
  unknownWorker: 'Worker not in this book',
  detail: (number: string, day: string, tasks: string) =>
    [number, day, tasks].filter((part) => part !== '').join(' · '),
  standing: {
    prepared: 'prepared, not put on',
    onWorker: (since: string) => `on the worker since ${since}`,
    stopped: (at: string) => `stopped ${at}, not sealed`,
    sealed: 'sealed, not sent',
    packed: 'in a box that is not handed over',
    away: (laboratory: string, since: string) => `with ${laboratory} since ${since}`,
    result: (report: string) => `result in, report ${report}`,
    void: (why: string | null) => (why === null ? 'void' : `void: ${why}`),
    voidWithResult: (why: string | null) =>
      why === null ? 'void, with a result that is kept' : `void, with a result that is kept: ${why}`,
    opened: 'opened and closed, not sent',
  },
  toToday: 'Go to Today',
};
