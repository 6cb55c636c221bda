/** Papers made on the device: handing them out, and the page of those that are no record: sign, label, blank form, calendar file. */
export const en = {
  handOut: {
    notHere: 'Its PDF is not on this device. It lies on the device that made it; take in a file from there.',
    notMade:
      'The paper could not be made on this device. Nothing was written down. Load the page again, then try again.',
    outcome: {
      shared: 'Handed over to the device.',
      saved: 'Saved where you said.',
      downloaded: 'Handed to the browser as a download.',
      cancelled: 'Not handed out. It is still here.',
      tapAgain: 'The device waited too long. Tap once more; it is still ready.',
      cannotShareHere: 'This device cannot hand the file on from here. Open the book in a browser window instead.',
      unknown: 'The device did not say why, but it was not handed out. It is still here; try again.',
    },
  },
  paper: 'Paper',
  papers: { letter: 'Letter', a4: 'A4' },
  heading: 'Signs, labels, blank forms',
  over: 'Papers to print and hang up',
  intro: 'Made here, with no connection, ready to print.',
  sign: {
    heading: 'Sign and container label',
    text: 'The sign for where exposure is above the PEL, and the label for containers of clothing and equipment with lead on them. In the words that the rule prescribes, in English; explain them to whoever reads Spanish.',
    action: 'Sign and label as PDF',
    fileName: 'lead-sign-and-label.pdf',
  },
  form: {
    heading: 'Blank form for a shift',
    text: 'For a day without the phone: two workers on a sheet, in the order in which the phone asks. Key it in afterwards; every time can be typed from paper.',
    site: 'For which site',
    anySite: 'Leave the site open',
    sheets: 'How many sheets',
    sheetsBad: 'How many sheets: write a whole number from 1 to 20',
    languages: 'In which languages',
    languagesMissing: 'In which languages: choose at least one',
    languageNames: { en: 'English', es: 'Spanish' },
    action: 'Blank form as PDF',
    keyIn: 'Key in a form that was filled',
    fileName: 'shift-form.pdf',
  },
  calendar: {
    heading: 'Calendar file',
    text: 'All days of the list, for the calendar that you use. It does not change by itself: take a new one when the list has changed.',
    toList: 'Open the list and take the calendar file there',
  },
  making: 'Making it',
};
