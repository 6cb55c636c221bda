/** A sample's record as sentences in the order in which things happened, each with the values in it that can be corrected. */

import { flowRangeOf } from '#findings/aim.ts';
import { checksOfSample } from '#findings/checks.ts';
import { findFlowCheck } from '#findings/flow.ts';
import type { Book, FlowCheckRecord, SampleRecord } from '#records/book.ts';
import { taskById } from '#reference/tasks.ts';
import { formatEstimate, formatList } from '#words/quantity.ts';
import { en as words } from '#words/story.ts';
import {
  type Correctable,
  fittingFields,
  flowFields,
  minutesField,
  pickFields,
  sealFields,
  tasksField,
  textField,
  timeField,
} from './correctable.ts';

export interface StoryLine {
  readonly key: string;
  /** null: no time of its own. */
  readonly at: string | null;
  readonly text: string;
  readonly detail?: string | undefined;
  readonly typed?: boolean;
  readonly factId: string | null;
  readonly fields: readonly Correctable[];
}

const plain = (key: string, at: string | null, text: string): StoryLine => ({
  key,
  at,
  text,
  factId: null,
  fields: [],
});

function beginning(sample: SampleRecord, book: Book): StoryLine[] {
  const factId = sample.preparedFactId ?? sample.factIds[0] ?? null;
  const lot = book.lots.get(sample.lotId)?.lotNumber ?? '';
  if (sample.sampleKind === 'blank')
    return [
      {
        key: 'blank',
        at: sample.preparedAt,
        text: words.blank(sample.openedWhere ?? ''),
        factId,
        fields:
          factId === null
            ? []
            : [...pickFields(factId, sample, ['lot']), textField(factId, '/openedWhere', sample.openedWhere ?? '')],
      },
    ];
  const pump = book.pumps.get(sample.pumpId ?? '')?.serial ?? '';
  const tasks = formatList(sample.taskIds.map((id) => taskById(id)?.en ?? id));
  const prepared: StoryLine = {
    key: 'prepared',
    at: sample.preparedAt,
    text: words.prepared(pump, lot),
    detail: words.tasks(tasks),
    factId,
    fields:
      factId === null
        ? []
        : [...pickFields(factId, sample, ['pump', 'lot', 'worker']), tasksField(factId, sample.taskIds)],
  };
  const before = book.samples.get(sample.follows ?? '');
  return before ? [prepared, plain('follows', sample.preparedAt, words.follows(before.sampleNumber))] : [prepared];
}

function fittingLine(sample: SampleRecord): StoryLine[] {
  const { fitting } = sample;
  if (fitting === null) return [];
  const missed = Object.values(fitting.points).filter((point) => point === false).length;
  const detail = missed > 0 ? words.pointsMissed(missed) : undefined;
  const line = plain('fitting', fitting.at, words.fitted[fitting.mode](fitting.initials));
  return [{ ...line, detail, factId: fitting.factId ?? null, fields: fittingFields(sample) }];
}

function flowLine(check: FlowCheckRecord | null, book: Book): StoryLine[] {
  const factId = check?.checkedFactId ?? check?.factIds[0];
  if (check === null || factId === undefined) return [];
  const { flow } = findFlowCheck(check, book, flowRangeOf(book));
  const text = flow === null ? '' : formatEstimate(flow.estimate, flow.unit);
  return [
    {
      key: check.id,
      at: check.happened.at,
      text: words.flow[check.purpose](text, book.pumps.get(check.pumpId)?.serial ?? ''),
      typed: check.happened.entry === 'typed',
      factId,
      fields: flowFields(factId, check),
    },
  ];
}

interface Told {
  readonly at: string;
  readonly entry: 'tapped' | 'typed';
  readonly factId: string;
}
const told = ({ at, entry, factId }: Told, text: string, more: readonly Correctable[] = []): StoryLine => ({
  key: factId,
  at,
  text,
  typed: entry === 'typed',
  factId,
  fields: [timeField(factId, at), ...more],
});

/** Off, away and back are the edges of the intervals; looks and faults that made one tell of themselves. */
function turns(sample: SampleRecord): StoryLine[] {
  const selfTold = new Set([...sample.looks, ...sample.faults, sample.putOn].map((moment) => moment?.factId));
  const lines: StoryLine[] = [];
  sample.intervals.forEach(({ fromAt, state, awayFromLead, reason, becauseFactId }, i) => {
    const before = sample.intervals[i - 1];
    if (selfTold.has(becauseFactId) || becauseFactId === before?.becauseFactId) return;
    const line = (text: string, fields: readonly Correctable[] = []): StoryLine => ({
      key: becauseFactId,
      at: fromAt,
      text,
      factId: becauseFactId,
      fields: [timeField(becauseFactId, fromAt), ...fields],
    });
    const why = reason === null ? [] : [textField(becauseFactId, '/reason', reason)];
    if (state === 'offRunning' || state === 'offStopped')
      lines.push(line(words.off(state === 'offRunning', reason), why));
    else if (awayFromLead) lines.push(line(words.away(reason ?? ''), why));
    else lines.push(line(before?.state === 'worn' ? words.backInLead : words.backOn));
  });
  return lines;
}

function moments(sample: SampleRecord): StoryLine[] {
  const { putOn, looks, faults, mishaps, stopped, sealed } = sample;
  const remarkOf = (factId: string, remark: string | null): Correctable[] =>
    remark === null ? [] : [textField(factId, '/remark', remark)];
  const withRemark = (line: StoryLine, remark: string | null): StoryLine => ({ ...line, detail: remark ?? undefined });
  return [
    ...(putOn ? [told(putOn, words.putOn)] : []),
    ...looks.map((look) =>
      withRemark(told(look, words.looked(look.running, look.inPlace), remarkOf(look.factId, look.remark)), look.remark),
    ),
    ...faults.map((fault) =>
      withRemark(
        told(fault, words.fault[fault.fault], [
          minutesField(fault.factId, fault.pumpMin),
          ...remarkOf(fault.factId, fault.remark),
        ]),
        fault.remark,
      ),
    ),
    ...mishaps.map((mishap) =>
      withRemark(told(mishap, words.mishap[mishap.mishap], remarkOf(mishap.factId, mishap.remark)), mishap.remark),
    ),
    ...(stopped
      ? [told(stopped, words.stopped(stopped.pumpMin), [minutesField(stopped.factId, stopped.pumpMin)])]
      : []),
    ...(sealed ? [told(sealed, words.sealed(sealed.labelled, sealed.lockedIn), sealFields(sample))] : []),
  ];
}

function untimed(sample: SampleRecord): StoryLine[] {
  const { flowDecision, results, remarks, voided, clockDoubts } = sample;
  return [
    ...(flowDecision
      ? [plain('decided', null, words.decided(flowDecision.use, flowDecision.why ?? words.noReason))]
      : []),
    ...results.map((result) => plain(result.factId, null, words.result(result.reportNumber))),
    ...remarks.map((remark, i) => plain(`remark${i}`, null, words.remark(remark))),
    ...clockDoubts.map(({ factId, kind }) => plain(`doubt${factId}`, null, words[kind])),
    ...(voided ? [plain('void', null, words.voided(voided.why ?? words.noReason))] : []),
  ];
}

export function storyOf(sample: SampleRecord, book: Book): readonly StoryLine[] {
  const { before, after } = checksOfSample(sample, book);
  const timed = [
    ...beginning(sample, book),
    ...flowLine(before, book),
    ...fittingLine(sample),
    ...moments(sample),
    ...turns(sample),
    ...flowLine(after, book),
  ];
  return [...timed.sort((a, b) => (a.at ?? '').localeCompare(b.at ?? '')), ...untimed(sample)];
}
