/** What every paper bears at its foot, and the typeface: fetched when a paper is first made. */
import type { FontBytes } from '#documents/pdf/open.ts';
import type { SiteRecord } from '#records/book.ts';
import { editions } from '#reference/editions.ts';
import type { BookMeta } from '#store/bookMeta.ts';
import { type OccasionHere, occasionHere } from '#store/issuing.ts';

export async function occasionAt(
  site: SiteRecord,
  meta: BookMeta,
): Promise<OccasionHere & { readonly fonts: FontBytes }> {
  const firm = { firmName: meta.book?.firmName ?? '', practice: meta.practice };
  const occasion = await occasionHere({ ...firm, zone: site.zone, editions: editions() });
  const { loadFonts } = await import('#documents/fonts/load.ts');
  return { ...occasion, fonts: await loadFonts() };
}
