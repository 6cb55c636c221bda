/** The times of a paper form, read in the order of the paper: each becomes an instant at the site, or a sentence at its field. */
import { addDays } from '#core/calendar.ts';
import type { FieldReader } from '#parts/fieldReader.ts';
import { parseClock } from '#parts/parseClock.ts';
import { type MomentPlace, parseMoment } from '#parts/parseMoment.ts';
import type { Happened } from '#records/fact.ts';
import { en as words } from '#words/keyIn.ts';
import type { KeyInDraft, LookHow, TimeText } from './keyInDraft.ts';

export interface ReadMoments {
  readonly before: Happened | null;
  readonly putOn: Happened | null;
  readonly looks: readonly { readonly how: LookHow; readonly happened: Happened; readonly field: string }[];
  readonly stopped: Happened | null;
  readonly after: Happened | null;
  /** null also where the cassette is not sealed yet. */
  readonly sealed: Happened | null;
}

const clockOf = ({ time }: TimeText): string | null => {
  const parsed = parseClock(time);
  return parsed.kind === 'value' ? parsed.value : null;
};

/** The first time on the paper: nothing of the shift lies before it. */
const firstTime = ({ before, putOn }: KeyInDraft): string | null =>
  (before.none ? null : clockOf(before.at)) ?? clockOf(putOn);

/** `workOn`: the day of the form; null while it cannot be read, and then only the forms of the times are looked at. */
export function readMoments(
  read: FieldReader,
  draft: KeyInDraft,
  workOn: string | null,
  place: MomentPlace,
): ReadMoments {
  const first = firstTime(draft);
  const from = draft.from.trim() === '' ? '' : draft.from;
  const moment = (name: string, label: string, text: TimeText): Happened | null => {
    const time = read.clock(`${name}-time`, label, text.time);
    if (time === null || workOn === null) return null;
    const isBefore = first !== null && time < first;
    if (isBefore && draft.pastMidnight === 'no') return read.add(`${name}-time`, words.beforeFirst(label, first));
    const day = isBefore ? addDays(workOn, 1) : workOn;
    const parsed = parseMoment(name, { day, time: text.time, from, which: text.which }, place);
    if (parsed.kind === 'value') return parsed.happened;
    for (const { field, text: sentence } of parsed.errors) read.add(field, sentence);
    return null;
  };
  const looks = draft.looks.flatMap(({ at, how }, i) => {
    if (at.time.trim() === '') return [];
    const happened = moment(`look-${i}`, words.look(i + 1), at);
    return happened === null ? [] : [{ how, happened, field: `look-${i}-time` }];
  });
  return {
    before: draft.before.none ? null : moment('before', words.checkedAt.before, draft.before.at),
    putOn: moment('putOn', words.putOn, draft.putOn),
    looks,
    stopped: moment('stopped', words.stopped, draft.stopped),
    after: draft.after.none ? null : moment('after', words.checkedAt.after, draft.after.at),
    sealed: draft.sealed.time.trim() === '' ? null : moment('sealed', words.sealedAt, draft.sealed),
  };
}
