/** What is asked of every entry, whatever it is about: complete, not in the future, no social security number. */
import { addMinutes } from '#core/calendar.ts';
import { envelope, type FactKind, factBodies, type NewFact } from '../fact.ts';
import type { Ask } from './ask.ts';

/** Decided here: clocks of two devices differ by a minute or two; more is a mistake. */
export const aheadLimitMin = 2;

const newEnvelope = envelope.pick({ about: true, happened: true, by: true, why: true });

/** The fact with its body checked and trimmed; null (and a refusal) when a field is missing or does not fit. */
export function checkedEntry({ fact, refuse }: Ask): NewFact | null {
  const outer = newEnvelope.safeParse(fact);
  const body = factBodies[fact.kind as FactKind].safeParse(fact.body);
  if (outer.success && body.success) return { ...fact, ...outer.data, body: body.data } as NewFact;
  const places = [
    ...(outer.error?.issues ?? []).map(({ path }) => path.map(String).join('/')),
    ...(body.error?.issues ?? []).map(({ path }) => ['body', ...path.map(String)].join('/')),
  ];
  refuse('entryNotComplete', [...new Set(places)]);
  return null;
}

const instantForm = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;

/** Every instant in a body, with its place. */
function instantsIn(value: unknown, place: string): readonly { readonly place: string; readonly at: string }[] {
  if (typeof value === 'string') return instantForm.test(value) ? [{ place, at: value }] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => instantsIn(inner, `${place}/${key}`));
}

/** Papers that left the firm print what they like; of what is in them only what is said of them beside is looked at. */
const printed: { readonly [K in FactKind]?: string } = {
  'custodySheetIssued.v1': 'sheet',
  'noticeIssued.v1': 'notice',
  'determinationWritten.v1': 'determination',
  'exposureRecordIssued.v1': 'record',
};
const withoutPrint = ({ kind, body }: NewFact): unknown => {
  const print = printed[kind];
  return print === undefined ? body : { ...body, [print]: null };
};

/** What has not happened yet is not written down. */
export function refuseFuture({ fact, context, refuse }: Ask): void {
  const latest = addMinutes(context.now, aheadLimitMin);
  const inBody = instantsIn(withoutPrint(fact), 'body');
  for (const { place, at } of [{ place: 'happened/at', at: fact.happened.at }, ...inBody])
    if (at > latest) refuse('timeInFuture', [place], { at, now: context.now, zone: fact.happened.zone });
}

/** Nine digits as a social security number is written. The firm's own identifier is asked for instead. */
const nineDigits = /^\s*\d{3}[ -]?\d{2}[ -]?\d{4}\s*$/;
const withHyphens = /(^|\D)\d{3}-\d{2}-\d{4}(\D|$)/;
const personPlaces = new Set(['body/identifier', 'body/name']);
const freeText =
  /(^|\/)(remark|reason|text|why|name|identifier|new|by|to|fromName|location|observations|earlierMeasurements|complaints|correctiveAction|whereItLies|initials|places?(\/\d+)?)$/;

function stringsIn(value: unknown, place: string): readonly { readonly place: string; readonly text: string }[] {
  if (typeof value === 'string') return [{ place, text: value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => stringsIn(inner, `${place}/${key}`));
}

export function refuseSocialSecurityNumber({ fact, refuse }: Ask): void {
  if (fact.kind === 'custodySheetIssued.v1') return;
  const aboutPerson = fact.about.some((key) => key.startsWith('person:'));
  for (const { place, text } of [...stringsIn(withoutPrint(fact), 'body'), ...stringsIn(fact.why, 'why')]) {
    const asPerson = aboutPerson && (personPlaces.has(place) || place === 'body/new') && nineDigits.test(text);
    if (asPerson || (freeText.test(place) && withHyphens.test(text))) refuse('looksLikeSocialSecurityNumber', [place]);
  }
}
