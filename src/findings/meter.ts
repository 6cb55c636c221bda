/**
 * From what a flow meter reads to the local volume flow: the certificate's read-against-true pairs first (they hold at the
 * calibration conditions), then, for a rotameter, the air of the site (design.md section 4, item 2).
 */
import { flowByCertificate } from '#core/certificate.ts';
import { exactly, lowerOf } from '#core/estimate.ts';
import { recorded, type Term } from '#core/formula.ts';
import { kelvin, rotameterFlow } from '#core/meterCorrection.ts';
import { stationPressure } from '#core/stationPressure.ts';
import type { FlowCheckRecord, MeterRecord, SiteRecord } from '#records/book.ts';
import { type CertificateSaid, certificateInForce, certificateOfEntry } from './gear/certificateInForce.ts';
import { type Reason, reason } from './reason.ts';

export interface LocalFlow {
  readonly flow: Term | null;
  readonly reasons: readonly Reason[];
}

const none: readonly Reason[] = [];

/** Soap-film and dry-piston meters measure volume itself: without pairs their certificate states no correction. */
const measuresVolume = (meter: MeterRecord): boolean =>
  meter.meterKind === 'soapFilm' || meter.meterKind === 'dryPiston';

function byCertificate(read: Term, meter: MeterRecord, { pairs: certified, because }: CertificateSaid): LocalFlow {
  if (certified.length === 0)
    return { flow: read, reasons: measuresVolume(meter) ? none : [reason('certificatePairsBlank', because)] };
  const pairs = certified.map(({ readLPerMin, trueLPerMin }) => ({
    read: recorded('certificateRead', 'L/min', exactly(readLPerMin), because),
    true: recorded('certificateTrue', 'L/min', exactly(trueLPerMin), because),
  }));
  const answer = flowByCertificate(read, pairs);
  if (answer.kind === 'applied') return { flow: answer.flow, reasons: none };
  if (answer.kind === 'pairsUnusable') return { flow: read, reasons: [reason('certificatePairsUnusable', because)] };
  const readLPerMin = read.estimate.kind === 'exact' ? read.estimate.value : 0;
  const params = { readLPerMin, fromLPerMin: answer.lowestLPerMin, toLPerMin: answer.highestLPerMin };
  return { flow: null, reasons: [reason('outsideCertificatePairs', because, params)] };
}

/** Station pressure as entered, or from the altitude of the site by the 1976 standard atmosphere. */
function sitePressure(check: FlowCheckRecord, site: SiteRecord | null): Term | null {
  if (check.pressureKPa !== null) return recorded('sitePressure', 'kPa', exactly(check.pressureKPa), check.factIds);
  if (!site || site.altitudeM === null) return null;
  return stationPressure.of({ H: recorded('altitude', 'm', exactly(site.altitudeM), site.factIds) });
}

const kelvinOf = (name: string, temperatureC: number, because: readonly string[]): Term =>
  kelvin.of({ θ: recorded(name, '°C', exactly(temperatureC), because) });

/** Temperature or pressure blank: the figure is shown as read, and *below* may not be said. */
function forSiteAir(
  read: Term,
  check: FlowCheckRecord,
  { calibrationPressureKPa: pressureKPa, calibrationTemperatureC: temperatureC, because }: CertificateSaid,
  site: SiteRecord | null,
): LocalFlow {
  const pressure = sitePressure(check, site);
  const reasons: Reason[] = [];
  if (check.temperatureC === null) reasons.push(reason('temperatureBlank', check.factIds));
  if (pressure === null) reasons.push(reason('pressureBlank', check.factIds));
  if (pressureKPa === null || temperatureC === null) reasons.push(reason('calibrationConditionsBlank', because));
  if (check.temperatureC === null || pressure === null || pressureKPa === null || temperatureC === null)
    return { flow: read, reasons };
  const flow = rotameterFlow.of({
    Qr: read,
    Pcal: recorded('calibrationPressure', 'kPa', exactly(pressureKPa), because),
    Tcal: kelvinOf('calibrationTemperature', temperatureC, because),
    Pact: pressure,
    Tact: kelvinOf('siteTemperature', check.temperatureC, check.factIds),
  });
  return { flow, reasons };
}

/** By one certificate. */
function flowBy(
  certificate: CertificateSaid,
  read: Term,
  check: FlowCheckRecord,
  meter: MeterRecord,
  site: SiteRecord | null,
): LocalFlow {
  const certified = byCertificate(read, meter, certificate);
  // whether it reads true in the air of the site nobody knows, whatever its pairs say
  if (meter.meterKind === 'other') {
    const unknown = reason('meterKindNotKnown', certificateOfEntry(meter).because);
    return { flow: certified.flow, reasons: [...certified.reasons, unknown] };
  }
  if (!certified.flow || meter.meterKind !== 'rotameter') return certified;
  const corrected = forSiteAir(certified.flow, check, certificate, site);
  if (certified.reasons.length === 0) return corrected;
  return { flow: corrected.flow, reasons: [...certified.reasons, ...corrected.reasons] };
}

/** Less air drawn makes more lead in each cubic metre of it: of flows by two certificates the lower judges. */
const lower = (a: LocalFlow, b: LocalFlow): LocalFlow =>
  a.flow && b.flow ? (lowerOf(b.flow.estimate) < lowerOf(a.flow.estimate) ? b : a) : a.flow ? a : b;

/** By the certificate that was in force on the day of the check (`checkedOn`); of two that differ the lower flow, in doubt. */
export function localFlow(
  read: Term,
  check: FlowCheckRecord,
  meter: MeterRecord | undefined,
  site: SiteRecord | null,
  checkedOn: string,
): LocalFlow {
  if (!meter) return { flow: read, reasons: none };
  const inForce = certificateInForce(meter, checkedOn);
  const first = flowBy(inForce, read, check, meter, site);
  if (inForce.differing.length === 0) return first;
  const others = inForce.differing.map((one) => flowBy(one, read, check, meter, site));
  const because = [inForce, ...inForce.differing].flatMap((one) => one.because);
  const differ = reason('certificatesDiffer', because, { certificateOn: inForce.certificateOn ?? '' });
  const reasons = [first, ...others].flatMap((one) => one.reasons);
  return { flow: others.reduce(lower, first).flow, reasons: [...reasons, differ] };
}
