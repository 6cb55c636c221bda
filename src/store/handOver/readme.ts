/** The page that lies in every hand-over file: how to read it without this app, in thirty years. */
import type { HandOver } from './handOver.ts';

const whole =
  'This is the whole book of one firm: everything that was written down about personal air sampling for lead.';
const news = `This is a part of the book of one firm about personal air sampling for lead: what one other device of the firm did not
hold yet. It is no backup. The header of book.txt says after which entries it begins (since).`;

export const readmeOf = (part: HandOver['part']): string => `HOW TO READ THIS ARCHIVE WITHOUT THE APP

${part === 'everything' ? whole : news}
It is a plain zip archive. Nothing in it is encrypted.

book.txt   UTF-8 text, one line for each thing that was written down, in the order of the device that wrote it.
           Line 1 is a header. The last line holds the count of facts and the SHA-256 of all bytes before it.
           Every line between is: 64 hexadecimal digits (the link), one space, one JSON object (the fact).
           A fact says: id (12 characters of the writing device, a dot, a running number), kind (what happened),
           about (the records it touches), happened (when, UTC, with time zone and offset), recorded (when it was
           entered), by (who held the device), why, and body (the values, each number named with its unit:
           LPerMin, L, Min, Ug, UgPerM3, KPa, C, M).
           link = SHA-256(previous link of the same device + SHA-256(JSON text)), both as hexadecimal text; the
           first fact of a device follows an empty link. A changed, added or missing line shows as a link that
           does not follow.
           Nothing is ever overwritten. A kind valueCorrected.v1 names the fact it corrects ("replaces"), the
           place in it ("path"), the old and the new value; both stay.

files/     The papers that left the firm, as PDF, and pictures, as JPEG. The name of each file is the SHA-256 of its
           bytes; the fact that issued the paper holds the same number as pdfHash, the one of the picture as hash.

unreadable.txt   Only if there were any: entries that the device could no longer read, as they were found.
dictionary.*     Only if included: what every kind of fact and every value in it means.

To take a book up again in the app: start page, "Restore". Taking a file in never replaces anything; what is
new is added.
`;
