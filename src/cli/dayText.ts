/** A day's finding as text for the command line. */
import { wallTimeOf } from '#core/calendar.ts';
import type { Source, Term } from '#core/formula.ts';
import type { Reason } from '#findings/reason.ts';
import type { SampleFinding } from '#findings/sample.ts';
import type { DayStanding, Segment, WorkdayFinding } from '#findings/workday.ts';
import { taskById } from '#reference/tasks.ts';
import { en as words } from '#words/assess.ts';
import { en as exposure } from '#words/exposure.ts';
import { formatEstimate, formatMinutes } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import type { DayInFile, SampleInFile } from './dayFile.ts';
import { utc } from './dayIds.ts';
import { type Told, workingLines } from './workingText.ts';

const indent = '  ';
const heading = (text: string): string[] => ['', text, '-'.repeat(text.length)];

function segmentLine(segment: Segment, zone: string, numberOf: (sampleId: string | null) => string): string {
  const { as, reason, concentration, sampleId, durationMin } = segment;
  const why = reason ?? '';
  const what = {
    sampled: () => words.as.sampled(numberOf(sampleId)),
    sameAs: () => words.as.sameAs(numberOf(sampleId), why),
    away: () => words.as.away(why),
    unknown: () => words.as.unknown,
  }[as]();
  const figure = concentration ? formatEstimate(concentration.estimate, concentration.unit) : words.awaited;
  const told = as === 'sampled' || as === 'sameAs' ? `${what}: ${figure}` : what;
  const time = (at: string): string => wallTimeOf(at, zone).time;
  return `${indent}${words.segment(time(segment.fromAt), time(segment.toAt), formatMinutes(durationMin), told)}`;
}

/** Each sentence once, with how often it holds: three flow checks with too few readings are one line. */
function sentencesOf(reasons: readonly Reason[]): string[] {
  const countBySentence = new Map<string, number>();
  for (const one of reasons) {
    const sentence = reasonSentence(one);
    countBySentence.set(sentence, (countBySentence.get(sentence) ?? 0) + 1);
  }
  return [...countBySentence].map(([sentence, count]) => `${indent}- ${words.times(sentence, count)}`);
}

const reasonLines = (title: string, reasons: readonly Reason[]): string[] =>
  reasons.length === 0 ? [] : ['', title, ...sentencesOf(reasons)];

function ranLine(written: SampleInFile, zone: string): string {
  const time = (local: string): string => wallTimeOf(utc(local), zone).time;
  const tasks = written.tasks.map((id) => taskById(id)?.en ?? id).join(', ');
  return written.stopped
    ? words.ran(time(written.putOn), time(written.stopped), tasks)
    : words.runs(time(written.putOn), tasks);
}

function sampleLines(sample: SampleFinding, written: SampleInFile | undefined, zone: string, told: Told): string[] {
  const figure = sample.judged ?? sample.volume;
  const { protectiveConcentration: protective, flowChange, twaShare } = sample;
  return [
    ...heading(words.sample(sample.sampleNumber, words.quality[sample.quality])),
    ...(written ? [ranLine(written, zone)] : []),
    ...(figure ? workingLines(figure, '', told) : [words.noFigure]),
    ...(protective && protective !== figure ? workingLines(protective, '', told) : []),
    ...(flowChange ? workingLines(flowChange, '', told) : []),
    ...(twaShare ? [words.share, ...workingLines(twaShare, '', told)] : []),
    ...sentencesOf(sample.reasons),
  ];
}

function standingLines(standing: DayStanding, told: Told): string[] {
  const { which, limit, verdict, unknownWouldReach, protectiveJudges, notes } = standing;
  const lines = [`${indent}${exposure.verdict(verdict, which, limit.value)}.`];
  if (protectiveJudges) lines.push(`${indent}${indent}${exposure.lowerJudges}.`);
  if (unknownWouldReach) {
    const average = formatEstimate(unknownWouldReach.estimate, unknownWouldReach.unit);
    lines.push(`${indent}${indent}${exposure.unknownWouldReach(average, which)}`);
    lines.push(...workingLines(unknownWouldReach, `${indent}${indent}`, told));
  }
  return [...lines, ...notes.map((one) => `${indent}${indent}${reasonSentence(one)}`)];
}

function shiftLine({ shiftComparison }: WorkdayFinding): string[] {
  if (!shiftComparison) return [];
  const told = { yes: exposure.shiftAbove, no: exposure.shiftNotAbove, unresolved: exposure.shiftUnresolved };
  return [`${indent}${told[shiftComparison.crossed]}.`];
}

function figureLines(title: string, term: Term | null, told: Told): string[] {
  return term ? [...heading(title), ...workingLines(term, '', told)] : [];
}

/** Where the numbers of the limit set are published. */
function sourceOfLimit({ limits: { set } }: WorkdayFinding, name: string): Source | null {
  if (name === 'pel') return set.pel.source;
  if (name === 'actionLevel') return set.actionLevel.source;
  return name === 'allowableDose' ? set.extendedShift.source : null;
}

export function dayLines(day: WorkdayFinding, written: DayInFile, zone: string): string[] {
  const told: Told = { terms: new Set(), sourceOfLimit: (name) => sourceOfLimit(day, name) };
  const numberOf = (sampleId: string | null): string =>
    day.samples.find((sample) => sample.sampleId === sampleId)?.sampleNumber ?? '';
  const title = words.title(day.workerId, day.workOn, written.site);
  const { governs, set } = day.limits;
  const blocks = [...new Set(day.standings.flatMap(({ why }) => why))];
  const notes = day.reasons.filter(({ weight }) => weight === 'notes');
  const writtenOf = (number: string) => written.samples.find((one) => one.number === number);
  return [
    title,
    '='.repeat(title.length),
    words.governs(governs, set.document, day.stateCode ?? ''),
    words.textHeld(set.textHeld),
    ...heading(words.everyMinute),
    ...(day.segments.length === 0 ? [words.noMinutes] : []),
    ...day.segments.map((segment) => segmentLine(segment, zone, numberOf)),
    ...day.samples.flatMap((sample) => sampleLines(sample, writtenOf(sample.sampleNumber), zone, told)),
    ...figureLines(words.twa8, day.twa8, told),
    ...(day.protectiveTwa8 === day.twa8 ? [] : figureLines(words.protectiveTwa8, day.protectiveTwa8, told)),
    ...figureLines(words.shiftAverage, day.shiftAverage, told),
    ...figureLines(words.allowable, day.allowableAverage, told),
    ...heading(words.standing),
    ...day.standings.flatMap((standing) => standingLines(standing, told)),
    ...shiftLine(day),
    ...reasonLines(words.keeps, day.standings.length === 0 ? day.blocksBelow : blocks),
    ...reasonLines(words.also, notes),
    '',
  ];
}
