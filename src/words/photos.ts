/** Pictures beside a record: of a reading, a certificate, a label, a site. */
import { formatDay } from './quantity.ts';

export const en = {
  heading: 'Pictures',
  take: {
    meterReading: 'Take a photo of the reading',
    label: 'Take a photo of the label',
    certificate: 'Take a photo of the certificate',
    site: 'Take a photo of the site',
    other: 'Take a photo',
  },
  hint: 'It is made small, and the place and time that the camera wrote into it are taken out.',
  hintReading: 'If you like. The reading counts as typed, with or without it.',
  preparing: 'The picture is being made small.',
  preview: 'The picture that will be kept',
  remove: 'Leave this picture out',
  keep: 'Keep this picture',
  refused: {
    notAPicture: 'This file is not a picture. Take it with the camera, or choose a picture.',
    tooLarge:
      'This picture is too large to be made small here. Set the camera to fewer megapixels (50 or less), and take it again.',
    cannotRead:
      'This picture cannot be read here. It is cut off, or of a kind that this browser does not read (HEIC is one that many do not). Take it again, or choose a JPEG.',
  },
  queue: {
    keeping: (title: string) => `${title}: the picture is being written down.`,
    kept: (title: string) => `${title}: the picture is kept.`,
    notKept: (title: string, why: string) => `${title}: the picture is not kept. ${why}`,
    again: 'Try to keep it again',
    leave: 'Go on without it',
  },
  readingStands: 'The reading itself is saved.',
  why: {
    quota: 'The device has no room for it. Free some space, then try again.',
    lost: 'The device lost hold of the book for a moment. Try again.',
    newer: 'Another window of Fullshift is newer and holds the book now. Load this page again, then take it again.',
    evicted: 'The browser has emptied the book on this device. Take your last backup in first.',
    unknown: 'The device did not say why. Try again.',
    refused: 'The book does not take it: the same picture is there already, or what it shows is no longer there.',
    otherBook: 'It was taken for another book than the one that is open now. Open that one, then try again.',
  },
  alt: {
    meterReading: 'Picture of the reading',
    label: 'Picture of the label',
    certificate: 'Picture of the certificate',
    site: 'Picture of the site',
    other: 'Picture',
  },
  altAt: (alt: string, taken: string) => `${alt}, taken ${taken}`,
  taken: (day: string, time: string, by: string | null) =>
    `${formatDay(day, 'en', 'short')}, ${time}${by === null || by === '' ? '' : `, by ${by}`}`,
  larger: 'Show it large',
  smaller: 'Show it small',
  notHere: 'The picture is not on this device. It comes with the next hand-over file of the device that took it.',
  none: 'No picture yet.',
  pumpReading: (serial: string) => `Pump ${serial}`,
};

export type PhotoWords = typeof en;
