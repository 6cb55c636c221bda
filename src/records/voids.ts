/**
 * Void against result. A sample may be declared void on one device while a result comes in on another. The void judges until a person
 * who knew of both says that it does not stay void. What was said forms a graph like corrections do: each review names what it knew of,
 * results and earlier reviews; what no other knew of is a head. A void is lifted only when all its heads say so with a reason and a
 * result, and between them knew of every result that is here. Clocks and order decide nothing.
 */
import type { SampleRecord } from './book.ts';
import type { Fact } from './fact.ts';
import { type FoldInput, ofKind } from './foldCase.ts';

type Review = Fact<'voidReviewed.v1'>;
type Void = Fact<'sampleVoided.v1'>;

/** Decided here: nobody reviews one void more often. Beyond it none replaces another, and two that differ leave it void. */
const mostReviewsCount = 200;

/** Every review that this one knew of, directly or through what it knew of. */
function knownTo(review: Review, byId: ReadonlyMap<string, Review>): ReadonlySet<string> {
  const known = new Set<string>();
  const open = [review];
  for (let next = open.pop(); next !== undefined; next = open.pop())
    for (const id of next.body.knew) {
      const before = byId.get(id);
      if (before === undefined || known.has(id)) continue;
      known.add(id);
      open.push(before);
    }
  return known;
}

/** What no later review knew of. Two that claim to have known each other, in a ring, both stay. */
function headsOf(reviews: readonly Review[]): readonly Review[] {
  if (reviews.length > mostReviewsCount) return reviews;
  const byId = new Map(reviews.map((review) => [review.id, review]));
  const known = new Map(reviews.map((review) => [review.id, knownTo(review, byId)]));
  const knows = (later: Review, earlier: Review): boolean => known.get(later.id)?.has(earlier.id) ?? false;
  return reviews.filter((review) => !reviews.some((other) => knows(other, review) && !knows(review, other)));
}

const hasReason = ({ why }: Review): boolean => why !== null && why.trim() !== '';

interface Judged {
  readonly fact: Void;
  /** `stands`: a person who knew of every result says so. `open`: nobody did, or two differ. */
  readonly state: 'stands' | 'lifted' | 'open';
  readonly review: Review | null;
}

function judged(fact: Void, reviews: readonly Review[], resultIds: readonly string[]): Judged {
  const heads = headsOf(reviews.filter(({ body }) => body.voidFactId === fact.id));
  const known = new Set(heads.flatMap(({ body }) => body.knew));
  const agree = new Set(heads.map(({ body }) => body.stands)).size === 1;
  const review = agree ? (heads.at(-1) ?? null) : null;
  const knewAll = resultIds.length > 0 && resultIds.every((id) => known.has(id));
  const counts = review !== null && knewAll && heads.every((head) => hasReason(head) && knewOne(head, resultIds));
  if (!counts) return { fact, state: 'open', review };
  return { fact, state: review.body.stands ? 'stands' : 'lifted', review };
}

const knewOne = ({ body }: Review, resultIds: readonly string[]): boolean =>
  resultIds.some((id) => body.knew.includes(id));

export type VoidState = Required<Pick<SampleRecord, 'voided' | 'voidReview' | 'voidAgainstResult'>>;

const said = (review: Review | null): VoidState['voidReview'] =>
  review && { stands: review.body.stands, why: review.why, factId: review.id };

/** What stands of the voids of one sample. Of several (two devices), each must be lifted; the one to be judged next is shown. */
export function voidStateOf(facts: FoldInput['facts']): VoidState {
  const reviews = ofKind(facts, 'voidReviewed.v1');
  const resultIds = ofKind(facts, 'resultReceived.v1').map(({ id }) => id);
  const voids = ofKind(facts, 'sampleVoided.v1').map((fact) => judged(fact, reviews, resultIds));
  const settled = voids.find(({ state }) => state === 'stands');
  const standing = settled ?? voids.find(({ state }) => state === 'open');
  const shown = standing ?? voids.at(-1);
  return {
    voided: standing ? { why: standing.fact.why, factId: standing.fact.id } : null,
    voidReview: said(shown?.review ?? null),
    voidAgainstResult: standing?.state === 'open' && resultIds.length > 0,
  };
}
