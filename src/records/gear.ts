/**
 * What pumps, flow meters and lots have besides their entry: whose they are, charges, newer certificates, doubts and what was decided on
 * them. Of decisions that did not know of each other the more careful one stands until somebody who knows of both says anew.
 */
import { dayOf } from '#core/calendar.ts';
import type { Certificate, Charge, Conflict, GearBeside, GearDoubt, Held } from './book.ts';
import { canonicalJson } from './canonical.ts';
import type { Careful } from './careful.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, ofKind } from './foldCase.ts';
import { saidOf, unknownToOthers } from './revised.ts';
import { besides, settledBy, standingStatement } from './statements.ts';
import { inTime } from './telling.ts';

export interface Beside {
  readonly more: GearBeside & { readonly charges?: readonly Charge[]; readonly certificates?: readonly Certificate[] };
  readonly conflicts: readonly Conflict[];
}

const found = (conflict: Conflict | null): readonly Conflict[] => (conflict === null ? [] : [conflict]);

const heldIn = ({
  body: { gear: _gear, gearId: _id, knew: _knew, ...body },
}: Fact<'gearHeld.v1'>): Omit<Held, 'factId'> => body;

/** No side of it is the careful one: what was said first stands, and the other is shown. */
function heldOf(input: FoldInput): Beside {
  const facts = unknownToOthers(ofKind(input.facts, 'gearHeld.v1'));
  const { fact, conflict } = standingStatement({
    facts,
    path: '/held',
    valueIn: heldIn,
    careful: null,
    ...saidOf(input),
  });
  return { more: fact === null ? {} : { held: { ...heldIn(fact), factId: fact.id } }, conflicts: found(conflict) };
}

function chargesOf({ facts }: FoldInput): Beside {
  const charges = inTime(facts, 'pumpCharged.v1').map(({ id, by, happened, body: { full } }) => ({
    ...{ at: happened.at, full, by, factId: id },
  }));
  return { more: charges.length > 0 ? { charges } : {}, conflicts: [] };
}

const certificateIn = ({ body: { meterId: _id, knew: _knew, ...body } }: Fact<'certificateEntered.v1'>) => body;
/** A day that nobody said is the earliest: then nobody can say that the meter is in date. */
const earlierDue: Careful = (a, b) => {
  const [one, other] = [a, b].map((value) => (value as { dueOn: string | null }).dueOn ?? '');
  return (one ?? '') < (other ?? '') ? 1 : (one ?? '') > (other ?? '') ? -1 : 0;
};

/** One certificate a day, oldest first; one entered anew follows those of its day that it knew of. */
function certificatesOf(input: FoldInput): Beside {
  const facts = ofKind(input.facts, 'certificateEntered.v1');
  const days = [...new Set(facts.map(({ body }) => body.certificateOn))].sort();
  const standing = days.map((on) =>
    standingStatement({
      facts: unknownToOthers(facts.filter(({ body }) => body.certificateOn === on)),
      path: `/certificates/${on}`,
      valueIn: certificateIn,
      careful: earlierDue,
      ...saidOf(input),
    }),
  );
  const certificates = standing.flatMap(({ fact }) =>
    fact === null ? [] : [{ ...certificateIn(fact), factId: fact.id } as Certificate],
  );
  return {
    more: certificates.length > 0 ? { certificates } : {},
    conflicts: standing.flatMap(({ conflict }) => found(conflict)),
  };
}

type Settling = Fact<'gearDoubtSettled.v1'>;
type Settled = NonNullable<GearDoubt['settled']>;

const ranks = ['noEffect', 'asFound', 'staysDoubtful'];
const decidedIn = ({
  body: { gear, decision, trueOverRead },
}: Settling): Pick<Settled, 'decision' | 'trueOverRead'> => {
  if (decision !== 'asFound') return { decision, trueOverRead: null };
  // Corrected by what was found is said of a flow meter only, and with the factor.
  const isCorrected = gear === 'meter' && trueOverRead !== null;
  return isCorrected ? { decision, trueOverRead } : { decision: 'staysDoubtful', trueOverRead: null };
};
const rankOf = (fact: Settling): number => ranks.indexOf(decidedIn(fact).decision);
const dayOfFact = ({ happened }: Settling): string => dayOf(happened.at, happened.zone);

const settledAs = (fact: Settling, decided: Pick<Settled, 'decision' | 'trueOverRead'>, onDay: string): Settled => ({
  ...{ ...decided, why: fact.why, factId: fact.id, onDay },
});

/** The most careful of several decisions; two corrections that differ correct nothing. */
function mostDoubtful(heads: readonly Settling[]): {
  readonly fact: Settling;
  readonly decided: ReturnType<typeof decidedIn>;
} {
  const worst = Math.max(...heads.map(rankOf));
  const worstOnes = heads.filter((head) => rankOf(head) === worst);
  const fact = worstOnes[0] as Settling;
  const differ = new Set(worstOnes.map((head) => decidedIn(head).trueOverRead)).size > 1;
  return { fact, decided: differ ? { decision: 'staysDoubtful', trueOverRead: null } : decidedIn(fact) };
}

function settlementOf(
  { doubtId }: Pick<GearDoubt, 'doubtId'>,
  input: FoldInput,
): { readonly settled: GearDoubt['settled']; readonly conflict: Conflict | null } {
  const withReason = ofKind(input.facts, 'gearDoubtSettled.v1').filter(
    ({ body, why }) => body.doubtId === doubtId && why !== null && why.trim() !== '',
  );
  const heads = unknownToOthers(withReason);
  if (heads.length === 0) return { settled: null, conflict: null };
  const onDay = heads.map(dayOfFact).sort().at(-1) ?? '';
  const chosen = settledBy(heads, saidOf(input));
  const differ = new Set(heads.map((head) => canonicalJson(decidedIn(head)))).size > 1;
  if (chosen !== undefined || !differ) {
    const fact = chosen ?? (heads[0] as Settling);
    return { settled: settledAs(fact, decidedIn(fact), onDay), conflict: null };
  }
  const { fact, decided } = mostDoubtful(heads);
  const conflict: Conflict = {
    factId: heads[0]?.id ?? '',
    path: `/doubts/${doubtId}`,
    candidates: heads.map((head) => ({ correctionId: head.id, value: decidedIn(head), by: head.by })),
    standing: fact.id,
    judges: 'careful',
    standingValue: decided,
    besides: besides(heads, saidOf(input)),
  };
  return { settled: settledAs(fact, decided, onDay), conflict };
}

function doubtsOf(input: FoldInput): Beside {
  const facts = inTime(input.facts, 'gearDoubted.v1');
  const settling = facts.map(({ body }) => settlementOf(body, input));
  const certifiedOn = ofKind(input.facts, 'certificateEntered.v1')
    .map(({ body }) => body.certificateOn)
    .sort();
  const doubts = facts.map(({ id, body }, at) => {
    const renewedOn = certifiedOn.find((day) => day > body.foundOn);
    const settled = settling[at]?.settled ?? null;
    return { ...body, factId: id, settled, ...(renewedOn === undefined ? {} : { renewedOn }) };
  });
  return {
    more: doubts.length > 0 ? { doubts } : {},
    conflicts: settling.flatMap(({ conflict }) => found(conflict)),
  };
}

/** Absent where nothing was said. */
export function besideOfGear(input: FoldInput): Beside {
  const parts = [heldOf(input), chargesOf(input), certificatesOf(input), doubtsOf(input)];
  return {
    more: Object.assign({}, ...parts.map(({ more }) => more)),
    conflicts: parts.flatMap(({ conflicts }) => conflicts),
  };
}
