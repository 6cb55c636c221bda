/** Field blanks: cassettes opened and closed at the job without drawing air. */

export const en = {
  heading: 'Open a field blank',
  what: 'A field blank is a cassette of the same lot that travels with the others. Open it at the job, close it again, and draw no air through it.',
  standing: (count: number, wanted: number) =>
    count >= wanted
      ? `${count} field blanks; ${wanted} go with the samples so far.`
      : `${count} of ${wanted} field blanks so far.`,
  lot: 'Lot of the cassette',
  where: 'Where it was opened',
  whereHint: 'Such as: in the van; at the change area',
  save: 'Opened and closed now',
  number: 'Write this number on the blank',
  numberLabel: 'Field blank',
  another: 'Open another blank',
  ready: 'Back to the day',
  openedAt: (number: string, where: string) => `${number}: opened ${where}`,
  already: 'Field blanks of this day',
  noShift: 'This shift is not in the book on this device.',
};

export type BlankWords = typeof en;
