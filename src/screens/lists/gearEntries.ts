/** Pumps, flow meters, cassette lots and sites as entries of the lists. */
import { certificateInForce } from '#findings/gear/certificateInForce.ts';
import { emptyLot, LotLines, type LotText, readLot } from '#parts/LotLines.tsx';
import { MeterLines } from '#parts/MeterLines.tsx';
import { emptyMeter, type MeterText, readMeter } from '#parts/meterText.ts';
import { emptyPump, PumpLines, type PumpText, readPump } from '#parts/PumpLines.tsx';
import { emptySite, readSite, type SiteText } from '#parts/SiteLines.tsx';
import type { LotRecord, MeterRecord, PumpRecord, SiteRecord } from '#records/book.ts';
import { en as gear } from '#words/gear.ts';
import { en as words } from '#words/lists.ts';
import { formatDay } from '#words/quantity.ts';
import type { Entry } from './registers.ts';
import { SiteLinesHere } from './SiteLinesHere.tsx';

/** A number as it is typed again: its shortest decimal form. */
const typed = (value: number | null): string => (value === null ? '' : String(value));

export const pump: Entry<PumpText, PumpRecord> = {
  added: 'pumpAdded.v1',
  idName: 'pumpId',
  list: ({ pumps }) => pumps.list,
  title: ({ serial }) => serial,
  detail: ({ model }) => model ?? undefined,
  empty: () => emptyPump,
  textOf: ({ serial, model }) => ({ serial, model: model ?? '' }),
  read: readPump,
  unasked: {},
  Lines: PumpLines,
};

const dueText = (dueOn: string | null, today: string): string => {
  if (dueOn === null) return words.dueUnknown;
  return dueOn < today ? words.overdue(formatDay(dueOn)) : words.due(formatDay(dueOn));
};

export const meter: Entry<MeterText, MeterRecord> = {
  added: 'meterAdded.v1',
  idName: 'meterId',
  list: ({ meters }) => meters.list,
  title: ({ serial }) => serial,
  detail: (row, today) => `${gear.meter.kinds[row.meterKind]}, ${dueText(certificateInForce(row, today).dueOn, today)}`,
  empty: () => emptyMeter,
  textOf: (row) => ({
    meterKind: row.meterKind,
    serial: row.serial,
    certificateOn: row.certificateOn ?? '',
    dueOn: row.dueOn ?? '',
    temperature: typed(row.calibrationTemperatureC),
    pressure: typed(row.calibrationPressureKPa),
    pairs: row.pairs.map(({ readLPerMin, trueLPerMin }) => ({ low: typed(readLPerMin), high: typed(trueLPerMin) })),
  }),
  read: readMeter,
  unasked: {},
  Lines: MeterLines,
};

const expiryText = (expiresOn: string | null, today: string): string => {
  if (expiresOn === null) return '';
  return `, ${expiresOn < today ? words.expired(formatDay(expiresOn)) : words.expires(formatDay(expiresOn))}`;
};

export const lot: Entry<LotText, LotRecord> = {
  added: 'lotAdded.v1',
  idName: 'lotId',
  list: ({ lots }) => lots.list,
  title: ({ lotNumber }) => lotNumber,
  detail: ({ media, expiresOn }, today) => `${media}${expiryText(expiresOn, today)}`,
  empty: () => emptyLot,
  textOf: ({ lotNumber, media, expiresOn }) => ({ lotNumber, media, expiresOn: expiresOn ?? '' }),
  read: readLot,
  unasked: {},
  Lines: LotLines,
};

export const site: Entry<SiteText, SiteRecord> = {
  added: 'siteAdded.v1',
  idName: 'siteId',
  list: ({ sites }) => sites.list,
  title: ({ name }) => name,
  detail: ({ stateCode, setting, altitudeM }) =>
    `${stateCode}, ${words.settings[setting]}, ${altitudeM === null ? words.altitudeUnknown : words.altitude(altitudeM)}`,
  empty: emptySite,
  textOf: ({ name, stateCode, setting, altitudeM, zone }) => ({
    name,
    stateCode,
    setting,
    altitude: typed(altitudeM),
    zone,
  }),
  read: readSite,
  unasked: {},
  Lines: SiteLinesHere,
};
