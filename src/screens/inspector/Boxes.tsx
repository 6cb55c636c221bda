/** Boxes that went from the site to a laboratory, with their custody sheets and the gear found bad that they rest on. */
import { dayOf } from '#core/calendar.ts';
import { gearDoubtsOfPaper } from '#findings/gear/gearDoubtsOf.ts';
import { Line, Lines } from '#parts/Lines.tsx';
import type { Book } from '#records/book.ts';
import { deviceZone } from '#store/device.ts';
import { restsText } from '#words/gearLines.ts';
import { en as words } from '#words/inspector.ts';
import { formatDay } from '#words/quantity.ts';

export function Boxes({ siteId, book }: { readonly siteId: string; readonly book: Book }) {
  const boxes = [...book.boxes.values()].filter(({ packed }) => packed.siteId === siteId);
  const zone = book.sites.get(siteId)?.zone ?? deviceZone();
  return (
    <Lines heading={words.sheets} whenEmpty={words.sheetsNone}>
      {boxes.map(({ id, packed, issues, handedOver }) => (
        <Line
          key={id}
          to={`/box/${id}`}
          detail={[
            words.sheetDetail(issues.length, handedOver === null ? null : formatDay(dayOf(handedOver.at, zone))),
            restsText(gearDoubtsOfPaper({ kind: 'box', id }, book)),
          ]
            .filter((part) => part !== '')
            .join('; ')}
        >
          {words.sheet(packed.sampleIds.length, book.laboratories.get(packed.laboratoryId)?.name ?? '')}
        </Line>
      ))}
    </Lines>
  );
}
