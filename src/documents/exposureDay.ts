/** Of the exposure record: whom, where and when, what the day amounts to, every minute of it, and whom it stands for. */
import { wallTimeOf } from '#core/calendar.ts';
import type { Term } from '#core/formula.ts';
import type { Segment } from '#findings/workday.ts';
import type { SiteRecord } from '#records/book.ts';
import { en as exposure } from '#words/exposure.ts';
import { en } from '#words/exposureRecord.ts';
import { formatDay, formatEstimate, formatEstimateNumber, formatMinutes, formatNumber } from '#words/quantity.ts';
import { reasonSentence } from '#words/reasons.ts';
import { valueText } from '#words/valueText.ts';
import type { ExposureRecordValues, PrintedField, PrintedSection, Recording } from './exposureRecordValues.ts';

/** '07:12', with the day where it is another than the work day. */
export function momentOf({ input, finding }: Recording, at: string): string {
  const { day, time } = wallTimeOf(at, input.zone);
  return en.at(time, day === finding.workOn ? null : day);
}

/** Sites that the day was worked at, by its samples and the roster. */
function sitesOf({ book, finding }: Recording): SiteRecord[] {
  const ids = new Set<string>();
  for (const sample of book.samples.values()) if (sample.workdayId === finding.workdayId) ids.add(sample.siteId);
  for (const { shiftId } of book.workdays.get(finding.workdayId)?.worked ?? []) ids.add(shiftId.slice(0, 12));
  return [...ids].flatMap((id) => book.sites.get(id) ?? []);
}

function tasksOf({ book, finding, naming }: Recording): string {
  const ids = new Set<string>();
  for (const sample of book.samples.values())
    if (sample.workdayId === finding.workdayId) for (const id of sample.taskIds) ids.add(id);
  for (const { taskIds } of book.workdays.get(finding.workdayId)?.worked ?? []) for (const id of taskIds) ids.add(id);
  return ids.size === 0 ? en.notKnown : [...ids].map((id) => naming.nameOf(id) ?? id).join('; ');
}

function jobOf({ book, finding, naming, input }: Recording): string {
  const ids = [...book.samples.values()].flatMap(({ workdayId, jobClassificationId }) =>
    workdayId === finding.workdayId && jobClassificationId !== null ? [jobClassificationId] : [],
  );
  const names = [...new Set(ids)].flatMap((id) => naming.nameOf(id) ?? []);
  const own = input.people.get(finding.workerId)?.jobClassification;
  return names.join('; ') || (own ?? en.notKnown);
}

const regularText = ({ book, finding }: Recording): string => {
  const said = book.workdays.get(finding.workdayId)?.regular ?? null;
  if (said === null) return en.notKnown;
  return said.regular === 'yes' ? exposure.regular.yesLine : exposure.regular.noLine(said.reason ?? en.notKnown);
};

const noWhere = (pieces: string | null): string => pieces ?? en.notKnown;

export function whomSection(recording: Recording): PrintedSection {
  const { input, finding, book, naming, shown } = recording;
  const { whom } = en;
  const person = input.people.get(finding.workerId);
  const day = book.workdays.get(finding.workdayId);
  const sites = sitesOf(recording).map(({ name, stateCode, setting }) =>
    whom.siteIs(name, stateCode, whom.settings[setting]),
  );
  const named: PrintedField[] = input.shownAs === 'name' ? [[whom.identifier, person?.identifier ?? en.notKnown]] : [];
  return {
    heading: whom.heading,
    fields: [
      [whom.worker, shown(finding.workerId)],
      ...named,
      [whom.job, jobOf(recording)],
      [whom.employer, person?.employer ?? input.firmName],
      [whom.day, formatDay(finding.workOn, 'en', 'weekday')],
      [whom.site, sites.join('; ') || en.notKnown],
      [whom.tasks, tasksOf(recording)],
      [whom.hours, noWhere(day?.pieces ? valueText('/pieces', day.pieces, naming) : null)],
      [whom.otherWork, noWhere(day?.otherWork ? otherWorkText(recording) : null)],
      [whom.regular, regularText(recording)],
      [whom.respirator, input.respirator ?? en.notKnown],
      [whom.zone, whom.zoneIs(input.zone)],
      [whom.to, input.to],
    ],
    lines: [],
  };
}

function otherWorkText({ book, finding }: Recording): string {
  const said = book.workdays.get(finding.workdayId)?.otherWork;
  const names = (['callOut', 'secondSite', 'secondEmployer'] as const).filter((which) => said?.[which] === 'yes');
  if (names.length === 0) return exposure.other.none;
  return exposure.other.some(names.map((which) => exposure.other.names[which]).join(', '));
}

const figure = (term: Term | null, against: readonly number[]): string =>
  term === null ? en.notKnown : formatEstimate(term.estimate, term.unit, { against });

export function resultSection({ finding }: Recording): PrintedSection {
  const { result } = en;
  const against = finding.standings.map(({ limit }) => limit.value);
  const allowable = finding.allowableAverage?.estimate;
  const long = allowable?.kind === 'exact' ? [allowable.value] : [];
  const differs = finding.protectiveTwa8 !== finding.twa8;
  const reasons = finding.reasons.map(reasonSentence);
  return {
    heading: result.heading,
    fields: [
      [result.average, figure(finding.twa8, against)],
      ...(differs ? [[result.protective, figure(finding.protectiveTwa8, against)] as PrintedField] : []),
      ...(allowable
        ? ([
            [result.shift, figure(finding.shiftAverage, long)],
            [result.allowable, figure(finding.allowableAverage, long)],
          ] as PrintedField[])
        : []),
      ...finding.standings.map(
        ({ which, verdict, limit }): PrintedField => [result[which], exposure.verdict(verdict, which, limit.value)],
      ),
    ],
    lines: [
      result.without,
      ...new Set([...reasons, ...finding.standings.flatMap(({ why }) => why.map(reasonSentence))]),
    ],
  };
}

function whatItWas({ as, sampleId }: Segment, { finding }: Recording): string {
  const number = finding.samples.find((sample) => sample.sampleId === sampleId)?.sampleNumber ?? '';
  if (as === 'sampled') return exposure.minutes.sample(number);
  return as === 'sameAs' ? exposure.minutes.like(number) : exposure.minutes.as[as];
}

function figureOf({ as, concentration }: Segment): string {
  if (concentration !== null) return formatEstimateNumber(concentration.estimate, concentration.unit);
  return as === 'sampled' || as === 'sameAs' ? exposure.minutes.awaited : '';
}

export const minutesOf = (recording: Recording): ExposureRecordValues['minutes'] =>
  recording.finding.segments.map((segment) => [
    exposure.minutes.span(momentOf(recording, segment.fromAt), momentOf(recording, segment.toAt)),
    formatNumber(segment.durationMin, 'min'),
    whatItWas(segment, recording),
    segment.reason ?? '',
    figureOf(segment),
  ]);

export const standsForOf = ({ input, shown }: Recording): ExposureRecordValues['standsFor'] =>
  input.standsForIds.map((id) => {
    const person = input.people.get(id);
    return [shown(id), person?.jobClassification ?? en.notKnown, person?.employer ?? en.stands.ownFirm];
  });

export function representsSection({ finding }: Recording): PrintedSection {
  const { segments, regular } = finding;
  const total = (wanted: readonly Segment[]) => wanted.reduce((sum, { durationMin }) => sum + durationMin, 0);
  const sampled = formatMinutes(total(segments.filter(({ as }) => as === 'sampled')));
  const { represents } = en;
  return {
    heading: represents.heading,
    fields: [],
    lines: [represents.sampled(sampled, formatMinutes(total(segments))), represents.regular[regular ?? 'notSaid']],
  };
}
