/** A day's finding as text for the command line. */
import type { Term } from '#core/formula.ts';
import type { Reason } from '#findings/reason.ts';
import type { SampleFinding } from '#findings/sample.ts';
import type { DayStanding, Segment, WorkdayFinding } from '#findings/workday.ts';
import { en as words } from '#words/assess.ts';
import { en as exposure } from '#words/exposure.ts';
import { formatEstimate, formatMinutes } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { workingLines } from './workingText.ts';

const indent = '  ';
const heading = (text: string): string[] => ['', text, '-'.repeat(text.length)];

function segmentLine(segment: Segment, numberOf: (sampleId: string | null) => string): string {
  const { as, reason, concentration, sampleId, durationMin } = segment;
  const why = reason ?? '';
  const what = {
    sampled: () => words.as.sampled(numberOf(sampleId)),
    sameAs: () => words.as.sameAs(numberOf(sampleId), why),
    away: () => words.as.away(why),
    unknown: () => words.as.unknown,
  }[as]();
  const carries = as === 'sampled' || as === 'sameAs';
  const figure = concentration ? formatEstimate(concentration.estimate, concentration.unit) : words.awaited;
  const time = (at: string): string => at.slice(11, 16);
  return (
    indent +
    words.segment(
      time(segment.fromAt),
      time(segment.toAt),
      formatMinutes(durationMin),
      carries ? `${what}: ${figure}` : what,
    )
  );
}

const reasonLines = (title: string, reasons: readonly Reason[]): string[] =>
  reasons.length === 0 ? [] : ['', title, ...reasons.map((one) => `${indent}- ${reasonSentence(one)}`)];

function sampleLines(sample: SampleFinding, told: Set<Term>): string[] {
  const figure = sample.judged ?? sample.volume;
  return [
    ...heading(words.sample(sample.sampleNumber, words.quality[sample.quality])),
    ...(figure ? workingLines(figure, '', told) : [words.noFigure]),
    ...sample.reasons.map((one) => `${indent}- ${reasonSentence(one)}`),
  ];
}

function standingLines(standing: DayStanding): string[] {
  const { which, limit, verdict, unknownWouldReach, protectiveJudges, notes } = standing;
  const lines = [`${indent}${exposure.verdict(verdict, which, limit.value)}.`];
  if (protectiveJudges) lines.push(`${indent}${indent}${words.protectiveJudges}`);
  if (unknownWouldReach) {
    const average = formatEstimate(unknownWouldReach.estimate, unknownWouldReach.unit);
    lines.push(
      `${indent}${indent}${words.unknownWouldReach(average, exposure.verdict('below', which, limit.value).replace('Below ', ''))}`,
    );
  }
  return [...lines, ...notes.map((one) => `${indent}${indent}${reasonSentence(one)}`)];
}

function figureLines(title: string, term: Term | null, told: Set<Term>): string[] {
  return term ? [...heading(title), ...workingLines(term, '', told)] : [];
}

export function dayLines(day: WorkdayFinding): string[] {
  const told = new Set<Term>();
  const numberOf = (sampleId: string | null): string =>
    day.samples.find((sample) => sample.sampleId === sampleId)?.sampleNumber ?? '';
  const title = words.title(day.workerId, day.workOn);
  const { governs, set } = day.limits;
  const because = new Map(
    day.standings.flatMap(({ why }) => why).map((one) => [JSON.stringify([one.key, one.params]), one]),
  );
  const blocks = [...because.values()];
  const notes = day.reasons.filter(({ weight }) => weight === 'notes');
  return [
    title,
    '='.repeat(title.length),
    words.governs(governs, set.document, day.stateCode ?? ''),
    ...heading(words.everyMinute),
    ...day.segments.map((segment) => segmentLine(segment, numberOf)),
    ...day.samples.flatMap((sample) => sampleLines(sample, told)),
    ...figureLines(words.twa8, day.twa8, told),
    ...(day.protectiveTwa8 === day.twa8 ? [] : figureLines(words.protectiveTwa8, day.protectiveTwa8, told)),
    ...figureLines(words.shiftAverage, day.shiftAverage, told),
    ...figureLines(words.allowable, day.allowableAverage, told),
    ...heading(words.standing),
    ...day.standings.flatMap(standingLines),
    ...reasonLines(words.keeps, blocks),
    ...reasonLines(words.also, notes),
    '',
  ];
}
