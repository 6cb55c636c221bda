/** The three columns at the head of a custody sheet: who sends, who receives, what is asked. */
import { type CustodySheet, isAbsent, type Stated } from '#records/custodySheet.ts';
import { en, figures } from '#words/custody.ts';
import type { Notes } from './notes.ts';
import type { Piece } from './paginate.ts';
import { type FieldColumn, type Frame, fieldsPiece, fieldWidths } from './pieces.ts';
import type { StyleName } from './typography.ts';

type Entry = readonly [label: string, value: string, style?: StyleName];

const labelPt = 76;
const mostLines = 4;
const inWords = <T extends string | number>(value: Stated<T>, shown: (known: T) => string = String): string =>
  isAbsent(value) ? en.absent[value.why] : shown(value);
const yesNo = (answer: boolean, words: { readonly yes: string; readonly no: string }): string =>
  answer ? words.yes : words.no;

const placeOf = ({ place, stateCode }: CustodySheet['site']): string =>
  isAbsent(place) ? en.placeUnstated(stateCode) : en.placeIs(place, stateCode);

const sentBy = (sheet: CustodySheet): Entry[] => [
  [en.firm, sheet.firmName, 'strong'],
  [en.site, sheet.site.name],
  [en.place, placeOf(sheet.site)],
  [en.setting, en.settings[sheet.site.setting]],
  [en.sampler, sheet.samplerName],
  [en.zone, en.zoneIs(sheet.site.zone)],
];

const sentTo = (sheet: CustodySheet): Entry[] => [
  [en.laboratory, sheet.laboratory.name, 'strong'],
  [en.address, inWords(sheet.laboratory.address)],
  [en.accreditation, inWords(sheet.laboratory.accreditation)],
  ...sheet.lots.map((lot): Entry => [en.lots, en.lotIs(lot.lotNumber, lot.media)]),
];

const askedFor = (sheet: CustodySheet): Entry[] => [
  [en.analysis, sheet.analysis, 'strong'],
  [en.method, inWords(sheet.method)],
  [en.reportingLimit, inWords<number>(sheet.reportingLimitUg, (massUg) => en.reportingLimitIs(figures.mass(massUg)))],
  [en.wallDeposit, yesNo(sheet.includeWallDeposit, en.wallDepositIs)],
  [en.reanalysis, yesNo(sheet.callBeforeReanalysis, en.reanalysisIs)],
  [en.turnaround, sheet.turnaround],
  ...(isAbsent(sheet.remark) ? [] : [[en.remark, sheet.remark] as Entry]),
];

export function custodyFields(frame: Frame, sheet: CustodySheet, notes: Notes): Piece {
  const { valuePt } = fieldWidths(frame, 3, labelPt);
  const column = (heading: string, entries: readonly Entry[]): FieldColumn => ({
    heading,
    fields: entries.map(([label, value, style = 'value']) => ({
      label,
      value: notes.fit(value, label.toLowerCase(), style, valuePt, mostLines),
    })),
  });
  const columns = [column(en.sentBy, sentBy(sheet)), column(en.to, sentTo(sheet)), column(en.asked, askedFor(sheet))];
  return fieldsPiece(frame, columns, labelPt, 10);
}
