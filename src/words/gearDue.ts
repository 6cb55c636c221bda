/** What is due of pumps, flow meters and lots, one sentence each, the most pressing first. */
import type {
  GearHeadStanding,
  GearStanding,
  LotStanding,
  MeterStanding,
  PumpStanding,
} from '#findings/gear/standings.ts';
import type { Book } from '#records/book.ts';
import { en as doubtWords } from './gearDoubt.ts';
import { lines } from './gearLines.ts';
import { type GearKind, gearTitle } from './gearScreen.ts';

export interface GearLine {
  readonly gear: GearKind;
  readonly id: string;
  readonly doubtId: string | null;
  readonly sentence: string;
  readonly detail: string | null;
}

export const gearLinePath = ({ gear: kind, id, doubtId }: GearLine): string =>
  `/gear/${kind}/${id}${doubtId === null ? '' : `?doubt=${doubtId}`}`;

const line = (kind: GearKind, id: string, sentence: string, detail: string | null = null): GearLine => ({
  gear: kind,
  id,
  doubtId: null,
  sentence,
  detail,
});

/** Open doubts, and those on which two decisions differ; one that stays doubtful is settled and stands in the list of its gear. */
export function doubtsToSettle({ pumps, meters, lots }: GearStanding, disputedIds: ReadonlySet<string>) {
  return [...pumps, ...meters, ...lots]
    .flatMap(({ doubts }) => doubts)
    .filter(({ doubt, effect }) => effect === 'open' || disputedIds.has(doubt.doubtId))
    .map(
      ({ gear: kind, gearId, gearNumber, doubt, effect }): GearLine => ({
        gear: kind,
        id: gearId,
        doubtId: doubt.doubtId,
        sentence: lines.doubt(
          gearTitle(kind, gearNumber),
          doubt.foundOn,
          effect === 'open' ? doubtWords.standing.open : lines.disputed,
        ),
        detail: doubt.found,
      }),
    );
}

/** Ids of doubts about which two decisions differ. */
export const disputedIn = ({ pumps, meters, lots }: Pick<Book, 'pumps' | 'meters' | 'lots'>): ReadonlySet<string> =>
  new Set(
    [...pumps.values(), ...meters.values(), ...lots.values()]
      .flatMap(({ conflicts }) => conflicts)
      .map(({ path }) => path)
      .filter((path) => path.startsWith('/doubts/'))
      .map((path) => path.slice('/doubts/'.length)),
  );

function meterLines({ id, number, due, dueOn, dueFrom, retired }: MeterStanding): readonly GearLine[] {
  const name = gearTitle('meter', number);
  const detail = dueFrom === 'twelveMonths' ? lines.twelveMonths : null;
  if (retired) return [];
  if (dueOn === null) return [line('meter', id, lines.certificateUnknown(name))];
  if (due === 'overdue') return [line('meter', id, lines.certificateOverdue(name, dueOn), detail)];
  return due === 'soon' ? [line('meter', id, lines.certificateSoon(name, dueOn), detail)] : [];
}

function lotLines({ id, number, expiry, expiresOn, retired }: LotStanding): readonly GearLine[] {
  const name = gearTitle('lot', number);
  if (retired || expiresOn === null) return [];
  if (expiry === 'passed') return [line('lot', id, lines.expired(name, expiresOn))];
  return expiry === 'soon' ? [line('lot', id, lines.expiresSoon(name, expiresOn))] : [];
}

const pumpLines = ({ id, number, chargedSinceWorn, lastWornOn, retired }: PumpStanding): readonly GearLine[] =>
  retired || chargedSinceWorn !== false || lastWornOn === null
    ? []
    : [line('pump', id, lines.notCharged(gearTitle('pump', number), lastWornOn))];

const backLines = (kind: GearKind, all: readonly GearHeadStanding[]): readonly GearLine[] =>
  all.flatMap(({ id, number, held, backOverdue, retired }) =>
    retired || !backOverdue || held?.backOn == null
      ? []
      : [line(kind, id, lines.backOverdue(gearTitle(kind, number), held.backOn, held.from))],
  );

/** What was found bad; what has run out; what goes back; what is due soon; what was not charged. */
export function gearDue(standing: GearStanding, disputedIds: ReadonlySet<string>): readonly GearLine[] {
  const { pumps, meters, lots } = standing;
  const isOver = ({ due }: MeterStanding): boolean => due === 'overdue';
  const isOut = ({ expiry }: LotStanding): boolean => expiry === 'passed';
  return [
    ...doubtsToSettle(standing, disputedIds),
    ...meters.filter(isOver).flatMap(meterLines),
    ...lots.filter(isOut).flatMap(lotLines),
    ...backLines('pump', pumps),
    ...backLines('meter', meters),
    ...backLines('lot', lots),
    ...meters.filter((one) => !isOver(one)).flatMap(meterLines),
    ...lots.filter((one) => !isOut(one)).flatMap(lotLines),
    ...pumps.flatMap(pumpLines),
  ];
}
