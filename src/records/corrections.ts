/**
 * Corrections applied to the facts they replace. Each names what it supersedes, so that two made without knowledge of each other are
 * seen by structure: two heads. Then the more careful value stands until a person settles it. Clocks decide nothing here.
 */
import type { Conflict, Strike } from './book.ts';
import { canonicalJson } from './canonical.ts';
import { carefulOf, mostCareful } from './careful.ts';
import { instant } from './common.ts';
import { type Fact, type FactKind, factBodies } from './fact.ts';
import { isWithin, segmentsOf, valueAt, withValueAt } from './pointer.ts';

type Correction = Fact<'valueCorrected.v1'> | Fact<'correctionSettled.v1'>;

export interface Corrected {
  /** The facts with their standing values, corrections left out, in the order given. */
  readonly facts: readonly Fact[];
  readonly strikes: readonly Strike[];
  readonly conflicts: readonly Conflict[];
  /** Corrections that could not be applied: the record is doubtful. */
  readonly notApplied: readonly string[];
}

/** One correction of one field, with what it makes of the whole field. */
interface Node {
  readonly fact: Correction;
  readonly supersedes: readonly string[];
  readonly value: unknown;
}

export const isCorrection = (fact: Fact): fact is Correction =>
  fact.kind === 'valueCorrected.v1' || fact.kind === 'correctionSettled.v1';

/** What a pointer points into: the body, or `/happened/at`. */
const placesOf = (fact: Fact): unknown => ({ ...fact.body, happened: { at: fact.happened.at } });

/** Corrections of one fact, by field; a correction inside a field that another corrects as a whole belongs to that field. */
function byField(corrections: readonly Correction[]): ReadonlyMap<string, readonly Correction[]> {
  const paths = [...new Set(corrections.map(({ body }) => body.path))].sort((a, b) => a.length - b.length);
  const fields = new Map<string, Correction[]>();
  for (const path of paths) if (![...fields.keys()].some((field) => isWithin(path, field))) fields.set(path, []);
  for (const correction of corrections)
    for (const [field, list] of fields) if (isWithin(correction.body.path, field)) list.push(correction);
  return fields;
}

/** The value of the field after one correction, built on the value it superseded; null when its place does not exist. */
function fieldAfter(
  correction: Fact<'valueCorrected.v1'>,
  field: string,
  before: unknown,
): { readonly value: unknown } | null {
  const { path, new: replacement } = correction.body;
  return withValueAt(before, segmentsOf(path.slice(field.length)), replacement);
}

/** Nodes in the order of the corrections given; those that cannot be applied are named in `failed`. */
function nodesOf(target: Fact, field: string, original: unknown, corrections: readonly Correction[], failed: string[]) {
  const byId = new Map(corrections.map((fact) => [fact.id, fact]));
  const nodes = new Map<string, Node>();
  const visiting = new Set<string>();
  const fieldOf = (id: string | null): unknown => {
    const known = id === null || id === target.id ? undefined : build(id);
    return known ? known.value : original;
  };
  const settle = (fact: Fact<'correctionSettled.v1'>): Node | null => {
    const { chosen, over } = fact.body;
    if (chosen !== target.id && !build(chosen)) return null;
    const known: readonly string[] = over ?? corrections.slice(0, corrections.indexOf(fact)).map(({ id }) => id);
    return { fact, supersedes: [chosen, ...known.filter((id) => id !== fact.id)], value: fieldOf(chosen) };
  };
  const correct = (fact: Fact<'valueCorrected.v1'>): Node | null => {
    const after = fieldAfter(fact, field, fieldOf(fact.body.supersedes));
    return after && { fact, supersedes: fact.body.supersedes === null ? [] : [fact.body.supersedes], ...after };
  };
  function build(id: string): Node | null {
    const done = nodes.get(id);
    const fact = byId.get(id);
    if (done || !fact || visiting.has(id)) return done ?? null;
    visiting.add(id);
    const node = fact.kind === 'valueCorrected.v1' ? correct(fact) : settle(fact);
    visiting.delete(id);
    if (node) nodes.set(id, node);
    return node;
  }
  for (const { id } of corrections) if (!build(id)) failed.push(id);
  return corrections.flatMap(({ id }) => nodes.get(id) ?? []);
}

/** Was `node` made on top of `ancestorId`? */
function descends(node: Node, ancestorId: string, byId: ReadonlyMap<string, Node>, seen = new Set<string>()): boolean {
  if (seen.has(node.fact.id)) return false;
  seen.add(node.fact.id);
  return node.supersedes.some((id) => {
    const before = byId.get(id);
    return id === ancestorId || (before !== undefined && descends(before, ancestorId, byId, seen));
  });
}

/**
 * What nothing supersedes. Whoever replaces a value replaces it for all who, unknown to each other, corrected to that same value.
 * Corrections that supersede each other in a ring all stay heads.
 */
function headsOf(nodes: readonly Node[]): readonly Node[] {
  const byId = new Map(nodes.map((node) => [node.fact.id, node]));
  const superseded = new Set<string>();
  for (const node of nodes) {
    const replaced = new Set(node.supersedes.flatMap((id) => textOf(byId.get(id))));
    for (const id of node.supersedes) superseded.add(id);
    for (const other of nodes)
      if (other !== node && replaced.has(canonicalJson(other.value)) && !descends(other, node.fact.id, byId))
        superseded.add(other.fact.id);
  }
  const heads = nodes.filter(({ fact }) => !superseded.has(fact.id));
  return heads.length > 0 ? heads : nodes;
}

const textOf = (node: Node | undefined): readonly string[] => (node ? [canonicalJson(node.value)] : []);

interface Standing {
  readonly value: unknown;
  readonly id: string;
  readonly conflict: Conflict | null;
}

function standingOf(target: Fact, path: string, original: unknown, nodes: readonly Node[]): Standing {
  const heads = headsOf(nodes);
  const last = heads.at(-1) as Node;
  if (new Set(heads.map(({ value }) => canonicalJson(value))).size === 1)
    return { value: last.value, id: last.fact.id, conflict: null };
  const careful = mostCareful(carefulOf(target.kind, path), heads, ({ value }) => value);
  const id = careful?.fact.id ?? target.id;
  const candidates = heads.map(({ fact, value }) => ({ correctionId: fact.id, value, by: fact.by }));
  return {
    value: careful ? careful.value : original,
    id,
    conflict: { factId: target.id, path, candidates, standing: id },
  };
}

const strikeOf = (node: Node, original: unknown): Strike => {
  const { id, body, why, by } = node.fact;
  const [old, now] = 'new' in body ? [body.old, body.new] : [original, node.value];
  return { correctionId: id, factId: body.replaces, path: body.path, old, new: now, why, by };
};

/** The fact with another value in one field; null when its schema refuses that. */
function patched(target: Fact, field: string, value: unknown): Fact | null {
  if (field === '/happened/at') {
    const at = instant.safeParse(value);
    return at.success ? ({ ...target, happened: { ...target.happened, at: at.data } } as Fact) : null;
  }
  const changed = withValueAt(target.body, segmentsOf(field), value);
  const body = changed && factBodies[target.kind as FactKind].safeParse(changed.value);
  return body?.success ? ({ ...target, body: body.data } as Fact) : null;
}

interface Ledger {
  readonly strikes: Strike[];
  readonly conflicts: Conflict[];
  readonly notApplied: string[];
}

function correctField(target: Fact, field: string, corrections: readonly Correction[], ledger: Ledger): Fact {
  const place = valueAt(placesOf(target), segmentsOf(field));
  if (place === null) {
    ledger.notApplied.push(...corrections.map(({ id }) => id));
    return target;
  }
  const nodes = nodesOf(target, field, place.value, corrections, ledger.notApplied);
  if (nodes.length === 0) return target;
  const standing = standingOf(target, field, place.value, nodes);
  const result = patched(target, field, standing.value);
  // The standing one last: whoever reads the strikes of a field finds what stands at their end.
  const ordered = [...nodes].sort((a, b) => Number(a.fact.id === standing.id) - Number(b.fact.id === standing.id));
  ledger.strikes.push(...ordered.map((node) => strikeOf(node, place.value)));
  if (standing.conflict) ledger.conflicts.push(standing.conflict);
  if (result === null) ledger.notApplied.push(standing.id);
  return result ?? target;
}

/** A settlement between two statements of the same thing, not between corrections: `standingStatement` reads it. */
const settlesStatements = ({ kind, body }: Correction, here: ReadonlySet<string>): boolean =>
  kind === 'correctionSettled.v1' && 'chosen' in body && body.chosen !== body.replaces && here.has(String(body.chosen));

/** Applies all corrections among sorted facts of one record. Those of facts that are not here (yet) are named in `notApplied`. */
export function corrected(sorted: readonly Fact[]): Corrected {
  const targets = sorted.filter((fact) => !isCorrection(fact));
  const ledger: Ledger = { strikes: [], conflicts: [], notApplied: [] };
  const here = new Set(targets.map(({ id }) => id));
  const corrections = new Map<string, Correction[]>();
  for (const fact of sorted) {
    if (!isCorrection(fact) || settlesStatements(fact, here)) continue;
    const list = corrections.get(fact.body.replaces);
    if (list) list.push(fact);
    else corrections.set(fact.body.replaces, [fact]);
  }
  const facts = targets.map((target) => {
    let result: Fact = target;
    for (const [field, list] of byField(corrections.get(target.id) ?? []))
      result = correctField(result, field, list, ledger);
    return result;
  });
  for (const [id, list] of corrections) if (!here.has(id)) ledger.notApplied.push(...list.map((fact) => fact.id));
  return { facts, ...ledger };
}
