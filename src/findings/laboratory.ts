/** The laboratory's own volume and concentration beside ours: further apart than rounding, both are shown and *below* waits. */
import { lowerOf, upperOf } from '#core/estimate.ts';
import type { Term } from '#core/formula.ts';
import { laboratoryDifferencePct } from './practice.ts';
import { type Reason, reason } from './reason.ts';
import type { Result } from './sampleMass.ts';

export interface LaboratoryCheck {
  readonly volumePct: number | null;
  readonly concentrationPct: number | null;
  readonly reasons: readonly Reason[];
}

/** Per cent of the laboratory's figure; a laboratory's nothing against ours counts as all of ours. */
const apart = (own: number, theirs: number): number =>
  theirs === 0 ? (own === 0 ? 0 : 100) : ((own - theirs) / theirs) * 100;

export function laboratoryReasons(
  result: Result | null,
  volume: Term | null,
  concentration: Term | null,
): LaboratoryCheck {
  const reasons: Reason[] = [];
  const [volumePct, concentrationPct] = [volumeApart(result, volume), concentrationApart(result, concentration)];
  if (result && volume && volumePct !== null && Math.abs(volumePct) > laboratoryDifferencePct.value) {
    const params = {
      laboratoryL: result.laboratoryVolumeL ?? 0,
      ownL: lowerOf(volume.estimate),
      differencePct: Math.abs(volumePct),
    };
    reasons.push(reason('laboratoryVolumeDiffers', [result.factId], params));
  }
  if (
    result &&
    concentration &&
    concentrationPct !== null &&
    Math.abs(concentrationPct) > laboratoryDifferencePct.value
  ) {
    const params = {
      laboratoryUgPerM3: result.laboratoryConcentrationUgPerM3 ?? 0,
      ownUgPerM3: upperOf(concentration.estimate),
      differencePct: Math.abs(concentrationPct),
    };
    reasons.push(reason('laboratoryConcentrationDiffers', [result.factId], params));
  }
  return { volumePct, concentrationPct, reasons };
}

function volumeApart(result: Result | null, volume: Term | null): number | null {
  const theirs = result?.laboratoryVolumeL ?? null;
  return theirs === null || volume?.estimate.kind !== 'exact' ? null : apart(volume.estimate.value, theirs);
}

/** A "less than" is compared by its upper end: that is what the laboratory prints. */
function concentrationApart(result: Result | null, concentration: Term | null): number | null {
  const theirs = result?.laboratoryConcentrationUgPerM3 ?? null;
  if (theirs === null || !concentration) return null;
  const own = upperOf(concentration.estimate);
  return Number.isFinite(own) ? apart(own, theirs) : null;
}
