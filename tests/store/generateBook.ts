/**
 * A large book of an invented firm, from a seed: windows of an old public library restored indoors, a steel footbridge repainted outdoors.
 * Deterministic, so that two runs measure the same thing. Facts only; nothing here is an expected value of a calculation.
 */
import { addMinutes, epochMsToInstant, instantToEpochMs } from '#core/calendar.ts';
import { canonicalJson } from '#records/canonical.ts';
import { factIdOf, link, noLink } from '#records/chain.ts';
import type { FactBody, FactKind } from '#records/fact.ts';
import { sampleNumberOf } from '#records/sampleNumber.ts';
import type { DerivedRow, JournalRow } from '#store/database.ts';
import { derivedRows } from '#store/lookup.ts';
import { seededRandom } from './seeded.ts';

export interface GeneratedBook {
  readonly bookId: string;
  readonly writer: string;
  readonly rows: readonly JournalRow[];
  /** The calendar day of the newest shift; its last samples still run. */
  readonly lastDay: string;
  readonly derived: () => readonly DerivedRow[];
}

const people = [
  'Ada Quill',
  'Bo Fennimore',
  'Cleo Marsh',
  'Dov Petrakis',
  'Esa Lund',
  'Fay Okoro',
  'Gus Tallow',
  'Hana Brand',
];
const samplesOfShift = 4;
const zone = 'America/New_York';

export interface GeneratedBookWish {
  readonly samples: number;
  readonly seed: number;
  /** The day before the first shift, and the time of day at which shifts open. */
  readonly startsAt?: string;
}

/** `samples` air samples, `samplesOfShift` to a day; the last day's are still on the workers. */
export function generateBook({ samples, seed, startsAt }: GeneratedBookWish): GeneratedBook {
  const { id, between, pick } = seededRandom(seed);
  const writer = id();
  const rows: JournalRow[] = [];
  let previous = noLink;

  const put = <K extends FactKind>(kind: K, about: string, at: string, body: FactBody<K>, by: string | null): void => {
    const factId = factIdOf(writer, rows.length + 1);
    const happened = { at, zone, offsetMin: -300, entry: 'tapped', from: null };
    const recorded = `${at}-${(rows.length % 0x10000).toString(16).padStart(4, '0')}`;
    const text = canonicalJson({ id: factId, kind, about: [about], happened, recorded, by, why: null, body });
    previous = link(previous, text);
    rows.push({ id: factId, about: [about], text, link: previous });
  };

  const start = startsAt ?? '2025-01-06T11:00:00.000Z';
  const bookId = id();
  put('bookOpened.v1', `book:${bookId}`, start, { bookId, firmName: 'Old Sash & Steel', practice: false }, null);
  const siteIds = [id(), id()] as const;
  put(
    'siteAdded.v1',
    `site:${siteIds[0]}`,
    start,
    {
      siteId: siteIds[0],
      name: 'Public library, reading room',
      stateCode: 'OH',
      setting: 'indoors',
      altitudeM: 230,
      zone,
    },
    null,
  );
  put(
    'siteAdded.v1',
    `site:${siteIds[1]}`,
    start,
    { siteId: siteIds[1], name: 'Mill Creek footbridge', stateCode: 'OH', setting: 'outdoors', altitudeM: 190, zone },
    null,
  );
  const jobClassificationId = id();
  put(
    'jobClassificationAdded.v1',
    `jobClassification:${jobClassificationId}`,
    start,
    { jobClassificationId, name: 'Painter' },
    null,
  );
  const personIds = people.map((name, index) => {
    const personId = id();
    const body = { personId, name, identifier: `W${index + 1}`, language: index % 3 === 0 ? 'es' : 'en' } as const;
    put('personAdded.v1', `person:${personId}`, start, { ...body, jobClassificationId, employer: null }, null);
    return personId;
  });
  const pumpIds = Array.from({ length: 6 }, (_, index) => {
    const pumpId = id();
    put('pumpAdded.v1', `pump:${pumpId}`, start, { pumpId, serial: `P-${index + 1}`, model: null }, null);
    return pumpId;
  });
  const meterId = id();
  put(
    'meterAdded.v1',
    `meter:${meterId}`,
    start,
    {
      meterId,
      meterKind: 'soapFilm',
      serial: 'M-1',
      certificateOn: '2025-01-02',
      dueOn: '2026-01-02',
      calibrationTemperatureC: null,
      calibrationPressureKPa: null,
      pairs: [],
    },
    null,
  );
  const lotId = id();
  put(
    'lotAdded.v1',
    `lot:${lotId}`,
    start,
    { lotId, lotNumber: 'L-77', media: 'MCE 0.8 µm, 37 mm', expiresOn: null },
    null,
  );
  const laboratoryId = id();
  put(
    'laboratoryAdded.v1',
    `laboratory:${laboratoryId}`,
    start,
    { laboratoryId, name: 'Riverside bench', address: null, accreditation: null },
    null,
  );
  const holder = personIds[0] as string;

  const flowCheck = (shiftId: string, pumpId: string, at: string, purpose: 'before' | 'after'): void => {
    const flowCheckId = id();
    const lowLPerMin = 2 + between(0, 20) / 100;
    put(
      'flowChecked.v1',
      `flowCheck:${flowCheckId}`,
      at,
      {
        flowCheckId,
        shiftId,
        pumpId,
        meterId,
        lotId,
        inLine: 'representativeCassette',
        purpose,
        readings: [{ lowLPerMin, highLPerMin: lowLPerMin }],
        temperatureC: 20,
        pressureKPa: 99,
        remark: null,
      },
      holder,
    );
  };

  let day = '';
  let made = 0;
  const shifts = Math.ceil(samples / samplesOfShift);
  for (let index = 0; index < shifts; index += 1) {
    const opensAt = epochMsToInstant(instantToEpochMs(start) + (index + 1) * 86_400_000);
    day = opensAt.slice(0, 10);
    const siteId = siteIds[index % 2] as string;
    const shiftId = `${siteId}.${day}`;
    const lastShift = index === shifts - 1;
    put('shiftOpened.v1', `shift:${shiftId}`, opensAt, { shiftId, siteId, workOn: day }, holder);
    for (let place = 0; place < samplesOfShift && made < samples; place += 1) {
      made += 1;
      const sampleId = id();
      const about = `sample:${sampleId}`;
      const workerId = personIds[(index + place) % personIds.length] as string;
      const pumpId = pumpIds[place % pumpIds.length] as string;
      const onAt = addMinutes(opensAt, 10 + place);
      const offAt = addMinutes(onAt, between(120, 470));
      flowCheck(shiftId, pumpId, addMinutes(opensAt, place), 'before');
      put(
        'samplePrepared.v1',
        about,
        addMinutes(opensAt, 5 + place),
        {
          sampleId,
          sampleNumber: sampleNumberOf('17', made),
          shiftId,
          workerId,
          pumpId,
          lotId,
          taskIds: [pick(['handScraping', 'windowTakeOut', 'powerToolCleaning'])],
          jobClassificationId,
          follows: null,
        },
        holder,
      );
      const workdayId = `${workerId}.${day}`;
      const tasks = { taskIds: ['handScraping'], jobClassificationId };
      const noted = { workdayId, shiftId, ...tasks, respirator: null };
      put('workNoted.v1', `workday:${workdayId}`, addMinutes(opensAt, 6 + place), noted, holder);
      put('pumpPutOn.v1', about, onAt, { sampleId }, holder);
      put(
        'pumpLookedAt.v1',
        about,
        addMinutes(onAt, 60),
        { sampleId, running: true, inPlace: true, remark: null },
        holder,
      );
      if (lastShift) continue;
      put('pumpStopped.v1', about, offAt, { sampleId, pumpMin: null }, holder);
      flowCheck(shiftId, pumpId, addMinutes(offAt, 5), 'after');
      put(
        'cassetteSealed.v1',
        about,
        addMinutes(offAt, 8),
        { sampleId, labelled: true, lockedIn: 'Van', lockedById: null },
        holder,
      );
      const piece = { startedAt: opensAt, endedAt: addMinutes(opensAt, 510), place: null, employer: null };
      put('workHoursStated.v1', `workday:${workdayId}`, addMinutes(offAt, 9), { workdayId, pieces: [piece] }, holder);
      if (shifts - index < 8) continue;
      put(
        'resultReceived.v1',
        about,
        addMinutes(offAt, 20_000),
        {
          sampleId,
          reportNumber: `R-${index}`,
          laboratoryId,
          accreditation: null,
          methodId: 'niosh-7082',
          receivedOn: epochMsToInstant(instantToEpochMs(offAt) + 14 * 86_400_000).slice(0, 10),
          reportedOn: null,
          analysedOn: null,
          mass: { kind: 'measured', massUg: between(1, 400) / 10 },
          reportingLimitUg: 0.5,
          blankCorrected: 'no',
          wallDeposit: 'yes',
          laboratoryVolumeL: null,
          laboratoryConcentrationUgPerM3: null,
          saeFraction: null,
          remark: null,
        },
        holder,
      );
    }
  }
  return { bookId, writer, rows, lastDay: day, derived: () => [...derivedRows(rows).values()] };
}
