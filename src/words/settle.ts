/** What a person settles after two devices came together, and what stands until then. Read by supervisor and office. */
import { formatDay } from './quantity.ts';

export const en = {
  heading: 'To settle',
  intro: 'What was said twice and differently. Until somebody settles it, the careful side judges.',
  empty: 'Nothing is open. There is nothing to settle.',
  toToday: 'Go to Today',
  gearHeading: 'Gear that was found bad',
  back: 'To the list',
  lookingThrough: (done: number, total: number) => `Looking through the custody sheets: ${done} of ${total} boxes`,
  lookedUpTo: (count: number) =>
    `The newest ${count} boxes were looked through; an older one is looked at on its own page.`,
  takingIn:
    'A file is half taken in. Nothing is settled until it is whole: take the same file in again, or leave it at what was taken.',
  toTakeIn: 'Take the file in',
  gone: 'There is nothing left to settle here.',
  looking: 'Looking for it',
  why: 'Why',
  whyHint: 'The reason stays with the entry, in the story of the record',
  whyMissing: 'Say why in a few words',
  story: 'Story',
  lines: {
    conflict: (record: string, label: string, values: string) => `${record}. ${label}: ${values}`,
    or: (values: readonly string[]) => values.join(', or '),
    voidAgainstResult: (record: string) => `${record}. Marked void, and a result has come in`,
    sameNumber: (number: string, records: readonly string[]) =>
      `${records.length === 2 ? 'Two' : records.length} cassettes have the number ${number}: ${records.join('; ')}`,
    sheetDiffers: (record: string, revision: string, count: number) =>
      `${record}. Revision ${revision} of the custody sheet differs from the record in ${count === 1 ? 'one place' : `${count} places`}`,
    missingEntries: (device: string, count: number) =>
      count === 1 ? `One entry ${device} is not here` : `${count} entries ${device} are not here`,
  },
  meanwhile: {
    careful: (value: string) => `Until then ${value} judges, because it is the more careful one`,
    first: (value: string) =>
      `Until then ${value} judges, because it was said first and neither is the more careful one. Nothing may be called below meanwhile`,
    void: 'Until then the void judges: a high figure counts as at least so much, a low one proves nothing',
    number: 'Until then none of them proves that anything was low: nobody can say whose result is whose',
    record: 'Until then the record judges, not the sheet',
    gear: 'Until then whatever rests on it proves nothing low',
    missing: (day: string) => `Until then no day up to ${formatDay(day)} proves that anything was low`,
  },
  conflict: {
    heading: (label: string) => `Settle: ${label}`,
    which: 'Which one is right?',
    said: (who: string, when: string, device: string) => `${who}, ${when}, ${device}`,
    because: (why: string) => `because ${why}`,
    noReason: 'no reason written',
    happened: (when: string) => `for ${when}`,
    stands: 'judges until it is settled',
    asFirst: 'as it was written first',
    nobody: 'nobody named',
    notHere: 'the entry itself is not on this device',
    action: 'Save what is right',
  },
  voidAgainstResult: {
    heading: 'Void, and a result has come in',
    voided: (why: string) => `Marked void, because ${why}`,
    result: (report: string, mass: string) => `Report ${report}: ${mass}`,
    which: 'Does it stay void?',
    stays: 'It stays void',
    counts: 'It counts again',
    staysMeans: 'Its result still shows what it shows, but proves nothing low.',
    countsMeans: 'Its result counts in the day like any other. Whatever else is doubtful stays doubtful.',
    day: (figure: string) => `The day then: ${figure} over 8 hours.`,
    noDay: 'It belongs to no day of a worker.',
    noFigure: 'no figure yet',
    action: 'Save it',
  },
  sameNumber: {
    heading: (number: string) => `Two cassettes with the number ${number}`,
    intro: 'Look at the cassettes, or at the custody sheets. One of them bears another number from now on.',
    which: 'Which one gets another number?',
    sealedSent: (to: string) => `in the box for ${to}`,
    preparedBy: (who: string, device: string) => `prepared by ${who}, ${device}`,
    newNumber: 'Its new number',
    newNumberHint: 'The next free number is put in for you',
    writeIt: 'Write the new number on the cassette.',
    mistakes: {
      empty: 'Write the new number',
      notDigits: 'A number has digits only',
      tooShort: 'Too few digits: take the number that was put in',
      tooLong: 'Too many digits: take the number that was put in',
      checkDigit: 'The last digit does not go with the others: take the number that was put in',
    },
    same: 'That is the number they share. Write another one',
    action: 'Save the new number',
  },
  sheetDiffers: {
    heading: (revision: string) => `Revision ${revision} differs from the record`,
    differences: 'What differs',
    raise: 'Go to the box and make a new revision',
    orKeep: 'Or leave the sheet as it is',
    keepHint:
      'For a difference that changes nothing for the laboratory. When the record changes again, it is asked again.',
    action: 'Leave the sheet as it is',
  },
  missingEntries: {
    heading: 'Entries that are not here',
    which: (device: string, count: number, day: string) =>
      `${count === 1 ? 'One entry was' : `${count} entries were`} written ${device} no later than ${formatDay(day)} and did not come with its file.`,
    wait: 'A newer file of that device, or of any device that has them, brings them.',
    toTakeIn: 'Take a file in',
    orLost: 'Or accept them as lost',
    lostHint:
      'Only when that device is gone for good. What they said is then missing from the book for ever; if they come after all, they are taken in.',
    action: 'Accept them as lost',
  },
  device: {
    here: 'on this device',
    named: (name: string) => `on ${name}`,
    other: (code: string) => `on another device (${code})`,
  },
};
