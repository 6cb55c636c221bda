/**
 * The corrections of one field as a graph: each node names what it supersedes. What nothing supersedes is a head; two heads with two
 * values are a conflict.
 */
import { canonicalJson } from './canonical.ts';
import type { Fact } from './fact.ts';
import { isWithin, segmentsOf, withValueAt } from './pointer.ts';

export type Correction = Fact<'valueCorrected.v1'> | Fact<'correctionSettled.v1'>;

export const isCorrection = (fact: Fact): fact is Correction =>
  fact.kind === 'valueCorrected.v1' || fact.kind === 'correctionSettled.v1';

/** One correction of one field, with what it makes of the whole field. */
export interface Node {
  readonly fact: Correction;
  readonly supersedes: readonly string[];
  readonly value: unknown;
}

/** Corrections of one fact, by field; a correction inside a field that another corrects as a whole belongs to that field. */
export function byField(corrections: readonly Correction[]): ReadonlyMap<string, readonly Correction[]> {
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
export function nodesOf(
  target: Fact,
  field: string,
  original: unknown,
  corrections: readonly Correction[],
  failed: string[],
) {
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
export function headsOf(nodes: readonly Node[]): readonly Node[] {
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
