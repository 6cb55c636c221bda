/** Small acts of an invented firm, for tests of the store: a site, a pump, a worker, a shift, a sample from put on to sealed. */
import type { FactBody, FactKind, NewFact } from '#records/fact.ts';
import { happenedNow, newId } from '#store/device.ts';
import { type Entry, newFact } from '#store/newFact.ts';
import { nextFreeNumber } from '#store/write.ts';

export const zone = 'America/New_York';
export const entry = (by: string | null = null): Entry => ({ happened: happenedNow(zone), by });

type Act = (entry: Entry) => NewFact;

const act =
  <K extends FactKind>(kind: K, body: FactBody<K>): Act =>
  (at) =>
    newFact(kind, body, at);

/** Fixed ids of one site's day, and what is written down there. */
export function library() {
  const siteId = newId();
  const ids = {
    siteId,
    personId: newId(),
    pumpId: newId(),
    meterId: newId(),
    lotId: newId(),
    shiftId: `${siteId}.2026-11-25`,
  };
  const { personId, pumpId, meterId, lotId, shiftId } = ids;
  return {
    ...ids,
    siteAdded: act('siteAdded.v1', {
      siteId,
      name: 'Public library, reading room',
      stateCode: 'OH',
      setting: 'indoors',
      altitudeM: 230,
      zone,
    }),
    personAdded: act('personAdded.v1', {
      personId,
      name: 'Ada Quill',
      identifier: 'W1',
      language: 'en',
      jobClassificationId: null,
      employer: null,
    }),
    pumpAdded: act('pumpAdded.v1', { pumpId, serial: 'P-1', model: null }),
    meterAdded: act('meterAdded.v1', {
      meterId,
      meterKind: 'soapFilm',
      serial: 'M-1',
      certificateOn: '2026-01-02',
      dueOn: '2027-01-02',
      calibrationTemperatureC: null,
      calibrationPressureKPa: null,
      pairs: [],
    }),
    lotAdded: act('lotAdded.v1', { lotId, lotNumber: 'L-77', media: 'MCE 0.8 µm, 37 mm', expiresOn: null }),
    shiftOpened: act('shiftOpened.v1', { shiftId, siteId, workOn: '2026-11-25' }),
  };
}

export type Library = ReturnType<typeof library>;

/** Everything that must be there before a pump is put on. */
export const openingFacts = (day: Library): NewFact[] =>
  [day.siteAdded, day.personAdded, day.pumpAdded, day.meterAdded, day.lotAdded, day.shiftOpened].map((of) =>
    of(entry(day.personId)),
  );

/** One sample of that day. */
export function sampleOf(day: Library, sampleId = newId(), workerId = day.personId) {
  return {
    sampleId,
    prepared: act('samplePrepared.v1', {
      sampleId,
      sampleNumber: nextFreeNumber,
      shiftId: day.shiftId,
      workerId,
      pumpId: day.pumpId,
      lotId: day.lotId,
      taskIds: ['handScraping'],
      jobClassificationId: null,
      follows: null,
    }),
    putOn: act('pumpPutOn.v1', { sampleId }),
    lookedAt: act('pumpLookedAt.v1', { sampleId, running: true, inPlace: true, remark: null }),
    remark: (text: string) => act('remarkMade.v1', { sampleId, text }),
    stopped: act('pumpStopped.v1', { sampleId, pumpMin: null }),
    sealed: act('cassetteSealed.v1', { sampleId, labelled: true, lockedIn: 'Van', lockedById: null }),
  };
}

export const flowCheckOf = (day: Library, purpose: 'before' | 'after' | 'between', flowLPerMin = 2): Act =>
  act('flowChecked.v1', {
    flowCheckId: newId(),
    shiftId: day.shiftId,
    pumpId: day.pumpId,
    meterId: day.meterId,
    lotId: day.lotId,
    inLine: 'representativeCassette',
    purpose,
    readings: [{ lowLPerMin: flowLPerMin, highLPerMin: flowLPerMin }],
    temperatureC: 20,
    pressureKPa: 99,
    remark: null,
  });
