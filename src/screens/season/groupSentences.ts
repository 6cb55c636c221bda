/** What is known of a group, in sentences: the last figure, until when a job may rest on it, what is presumed meanwhile, what is due. */
import type { Estimate } from '#core/estimate.ts';
import type { Need } from '#findings/season/need.ts';
import type { NextToMeasure } from '#findings/season/nextToMeasure.ts';
import type { Book } from '#records/book.ts';
import { blockText } from '#words/determinationScreen.ts';
import { en as fitting } from '#words/fitting.ts';
import { formatEstimate } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { en as words } from '#words/season.ts';

export const needText = ({ kind, siteId, workerIds, dueOn, overdue }: Need, book: Book): string =>
  words.need(kind, {
    dueOn,
    overdue,
    workers: workerIds.map((id) => book.people.get(id)?.name ?? words.someone),
    site: siteId === null ? null : (book.sites.get(siteId)?.name ?? null),
  });

const level = (of: { readonly value: number; readonly unit: string } | null): string =>
  of === null ? '' : `${of.value}\u00a0${of.unit}`;

function presumedOf({ presumption, last, reliable }: NextToMeasure): readonly string[] {
  if (last?.provesNotAbovePel || (reliable !== null && !reliable.past)) return [];
  const { presumedTextKey, presumedAbove, presumedUpTo } = presumption;
  return [fitting.presumed[presumedTextKey](level(presumedAbove), level(presumedUpTo))];
}

/** 'At least 0' is no figure. */
const saysNothing = (estimate: Estimate): boolean => estimate.kind === 'atLeast' && estimate.lower === 0;

function lastOf({ last }: NextToMeasure, book: Book): readonly string[] {
  if (last === null) return [];
  const { workerId, workOn, twa8UgPerM3 } = last;
  const value =
    twa8UgPerM3 === null || saysNothing(twa8UgPerM3) ? words.valueUnknown : formatEstimate(twa8UgPerM3, 'µg/m³');
  return [words.last(workerId === null ? null : (book.people.get(workerId)?.name ?? null), workOn, value)];
}

export function knownOf(group: NextToMeasure, book: Book): readonly string[] {
  const { reliable, dueOn, overdue, ruleHeld, need } = group;
  const restsOn = reliable === null ? [] : [(reliable.past ? words.reliablePast : words.reliable)(reliable.untilOn)];
  const isSaid = need.dueOn === dueOn;
  return [
    ...lastOf(group, book),
    ...restsOn,
    ...presumedOf(group),
    ...(dueOn === null || isSaid ? [] : [words.due(dueOn, overdue)]),
    ...(ruleHeld ? [] : [words.ruleNotHeld]),
  ];
}

/** What keeps it from a low finding, each told once. */
export const againstOf = ({ reasons, blocks }: NextToMeasure): readonly string[] => [
  ...new Set([...reasons.map(reasonSentence), ...blocks.map(({ key, params }) => blockText(key, params))]),
];
