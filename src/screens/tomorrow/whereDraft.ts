/** At which site and for which day, as chosen, and reading it; a site that is written down here comes back with its id. */
import { addDays } from '#core/calendar.ts';
import { type FieldReader, fieldReader } from '#parts/fieldReader.ts';
import { addingNew } from '#parts/PickOrAdd.tsx';
import { readSite, type SiteText } from '#parts/SiteLines.tsx';
import type { Book } from '#records/book.ts';
import { newId } from '#store/device.ts';
import { en as partsWords } from '#words/parts.ts';
import { en } from '#words/tomorrowScreen.ts';

const words = en.where;

export interface WhereDraft {
  readonly siteId: string | null;
  readonly site: SiteText;
  readonly when: 'tomorrow' | 'today' | 'other';
  readonly day: string;
}

function readSiteHere(read: FieldReader, { siteId, site }: WhereDraft, book: Book) {
  if (siteId === addingNew) {
    const added = readSite(read, site);
    return added === null ? null : { siteId: newId(), ...added };
  }
  if (siteId === null || !book.sites.has(siteId)) read.add('site', words.siteMissing);
  return null;
}

export function readWhere(draft: WhereDraft, today: string, book: Book) {
  const read = fieldReader(partsWords);
  const isOther = draft.when === 'other';
  const day = isOther
    ? read.day('day', words.otherDay, draft.day, today)
    : addDays(today, draft.when === 'tomorrow' ? 1 : 0);
  if (day !== null && day < today) read.add('day', words.past);
  const added = readSiteHere(read, draft, book);
  return { errors: read.errors, day, siteId: added?.siteId ?? draft.siteId, added };
}
