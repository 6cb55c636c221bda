/** A day file for one worker whose day is a row of samples, each of its own pump at a steady flow, everything else in order. */
export interface Part {
  readonly min: number;
  readonly before: number;
  readonly after: number;
  readonly massUg: number;
}

const start = Date.UTC(2026, 9, 14, 10, 0);
const local = (min: number): string =>
  new Date(start - 4 * 3_600_000 + min * 60_000).toISOString().replace('.000Z', '-04:00');
const fitting = {
  pumpSecured: true,
  tubingSecured: true,
  breathingZone: true,
  outsideRespirator: true,
  inletDown: true,
  plugsOff: true,
  running: true,
};
const result = {
  reportNumber: 'Q-1',
  receivedOn: '2026-10-23',
  reportingLimitUg: 0.1,
  blankCorrected: 'yes',
  wallDeposit: 'yes',
  method: 'niosh-7082',
  accreditation: 'A-100',
};

/** `awayMin`: minutes after the samples, away from the lead area. */
export function dayText(parts: readonly Part[], awayMin = 0, stateCode = 'PA'): string {
  const froms = parts.map((_, i) => parts.slice(0, i).reduce((sum, { min }) => sum + min, 0));
  const sampledMin = parts.reduce((sum, { min }) => sum + min, 0);
  const check = (i: number, min: number, purpose: string, q: number) => ({
    at: local(min),
    pump: `P${i}`,
    meter: 'piston 1',
    purpose,
    inLine: 'representativeCassette',
    lot: 'L-7',
    readings: [1, 2, 3].map(() => ({ lowLPerMin: q, highLPerMin: q })),
  });
  return JSON.stringify({
    format: 'fullshift.days.v1',
    sites: [{ name: 'Footbridge', stateCode, setting: 'outdoors', zone: 'America/New_York' }],
    meters: [{ name: 'piston 1', meterKind: 'dryPiston', certificateOn: '2026-03-02', dueOn: '2027-03-02' }],
    flowChecks: parts.flatMap(({ before, after, min }, i) => [
      check(i, (froms[i] ?? 0) - 10, 'before', before),
      check(i, (froms[i] ?? 0) + min + 10, 'after', after),
    ]),
    blanks: [],
    days: [
      {
        worker: 'Bo',
        workOn: '2026-10-14',
        site: 'Footbridge',
        pieces: [{ from: local(0), to: local(sampledMin + awayMin) }],
        otherWork: { callOut: 'no', secondSite: 'no', secondEmployer: 'no' },
        regular: 'yes',
        explained:
          awayMin === 0
            ? []
            : [
                {
                  from: local(sampledMin),
                  to: local(sampledMin + awayMin),
                  as: 'away',
                  reason: 'unloading in the yard',
                },
              ],
        samples: parts.map(({ min, massUg }, i) => ({
          number: `90001${i}`,
          pump: `P${i}`,
          lot: 'L-7',
          tasks: ['handScraping'],
          putOn: local(froms[i] ?? 0),
          stopped: local((froms[i] ?? 0) + min),
          pumpMin: min,
          fitting,
          sealed: true,
          result: { ...result, massUg },
        })),
      },
    ],
  });
}
