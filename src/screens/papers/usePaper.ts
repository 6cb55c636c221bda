/** A paper that is no record: made on the tap with what every paper bears at its foot, and handed out. */
import type { FontBytes } from '#documents/pdf/open.ts';
import { editions } from '#reference/editions.ts';
import type { BookMeta } from '#store/bookMeta.ts';
import { deviceZone } from '#store/device.ts';
import { type MadeFile, useMadeFile } from '#store/hooks/useMadeFile.ts';
import { type OccasionHere, occasionHere } from '#store/issuing.ts';

export type PaperSize = 'letter' | 'a4';

export interface PaperWish {
  readonly name: string;
  readonly of: string;
  readonly make: (occasion: OccasionHere, fonts: FontBytes) => Promise<Uint8Array>;
}

export function usePaper(meta: BookMeta | undefined, { name, of, make }: PaperWish): MadeFile {
  return useMadeFile({
    name,
    type: 'application/pdf',
    of,
    make: async () => {
      const firm = { firmName: meta?.book?.firmName ?? '', practice: meta?.practice ?? false };
      const occasion = await occasionHere({ ...firm, zone: deviceZone(), editions: editions() });
      const { loadFonts } = await import('#documents/fonts/load.ts');
      return make(occasion, await loadFonts());
    },
  });
}
