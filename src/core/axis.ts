/** Where an axis ends and where its lines stand. */

export interface Axis {
  readonly maximum: number;
  /** From 0 to the maximum, evenly apart, in steps of 1, 2 or 5 times a power of ten. */
  readonly ticks: readonly number[];
}

/** An axis from 0 that holds `highest`, in no more than `mostSteps` steps. Nothing above zero to show: 0 and 1. */
export function axisTo(highest: number, mostSteps = 6): Axis {
  if (!Number.isFinite(highest)) throw new Error(`no axis to ${highest}`);
  if (highest <= 0) return { maximum: 1, ticks: [0, 1] };
  const exponent = Math.floor(Math.log10(highest / mostSteps));
  for (let power = exponent; ; power += 1)
    for (const digit of [1, 2, 5]) {
      const stepsCount = Math.ceil(Number((highest / Number(`${digit}e${power}`)).toPrecision(12)));
      if (stepsCount > mostSteps) continue;
      const ticks = Array.from({ length: stepsCount + 1 }, (_, i) => Number(`${i * digit}e${power}`));
      return { maximum: ticks.at(-1) ?? highest, ticks };
    }
}
