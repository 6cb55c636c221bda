/** A result is always taken in, also for a void sample; the same report only once. A second report is a revised one. */
import type { Ask } from './ask.ts';
import { knownSample } from './sample.ts';

function received(ask: Ask<'resultReceived.v1'>): void {
  const sample = knownSample(ask as Ask);
  if (!sample) return;
  const { sampleNumber, results } = sample;
  const { reportNumber } = ask.fact.body;
  if (results.some((result) => result.reportNumber === reportNumber))
    ask.refuse('resultAlreadyIn', ['body/reportNumber'], { sampleNumber, reportNumber });
  else if (results.length > 0) ask.caution('revisedReport', ['body/reportNumber'], { sampleNumber, reportNumber });
  if (sample.voided) ask.caution('resultForVoid', ['body/sampleId'], { sampleNumber });
  if (sample.sampleKind === 'air' && !sample.stopped)
    ask.caution('resultBeforeStop', ['body/sampleId'], { sampleNumber });
}

export const resultCases = { 'resultReceived.v1': received };
