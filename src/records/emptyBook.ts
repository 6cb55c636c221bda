/** A book with nothing in it: whoever makes a slice adds its own maps to this one, so that a new map is added here alone. */
import type { Book } from './book.ts';

export const emptyBook: Book = {
  book: null,
  sites: new Map(),
  people: new Map(),
  jobClassifications: new Map(),
  pumps: new Map(),
  meters: new Map(),
  lots: new Map(),
  laboratories: new Map(),
  shifts: new Map(),
  flowChecks: new Map(),
  samples: new Map(),
  workdays: new Map(),
  boxes: new Map(),
  reported: new Map(),
  reliances: new Map(),
  notices: new Map(),
  determinations: new Map(),
  duties: new Map(),
  requests: new Map(),
  plans: new Map(),
  dayPlans: new Map(),
  spendings: new Map(),
};
