/**
 * Corrections applied to the facts they replace. Each names what it supersedes, so that two made without knowledge of each other are
 * seen by structure: two heads. Then the more careful value stands until a person settles it. Clocks decide nothing here.
 */
import type { Conflict, Strike } from './book.ts';
import { canonicalJson } from './canonical.ts';
import { carefulOf, mostCareful } from './careful.ts';
import { instant } from './common.ts';
import { byField, type Correction, headsOf, isCorrection, type Node, nodesOf } from './correctionNodes.ts';
import { type Fact, type FactKind, factBodies } from './fact.ts';
import { fitted } from './fitting.ts';
import { segmentsOf, valueAt, withValueAt } from './pointer.ts';

export interface Corrected {
  /** The facts with their standing values, corrections left out, in the order given. */
  readonly facts: readonly Fact[];
  readonly strikes: readonly Strike[];
  readonly conflicts: readonly Conflict[];
  /** Corrections that could not be applied: the record is doubtful. */
  readonly notApplied: readonly string[];
}

/** What a pointer points into: the body, or `/happened/at`. */
const placesOf = (fact: Fact): unknown => ({ ...fact.body, happened: { at: fact.happened.at } });

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
  const value = careful ? careful.value : original;
  const candidates = heads.map((head) => ({ correctionId: head.fact.id, value: head.value, by: head.fact.by }));
  const judges = careful ? 'careful' : 'first';
  return { value, id, conflict: { factId: target.id, path, candidates, standing: id, judges, standingValue: value } };
}

const strikeOf = (node: Node, original: unknown): Strike => {
  const { id, body, why, by } = node.fact;
  const [old, now] = 'new' in body ? [body.old, body.new] : [original, node.value];
  return { correctionId: id, factId: body.replaces, path: body.path, old, new: now, why, by };
};

/** The fact with another value in one field; null when its schema refuses that. */
function patched(target: Fact, field: string, value: unknown): Fact | null {
  if (field === '/happened/at') {
    const at = fitted(instant, value);
    return at.success ? ({ ...target, happened: { ...target.happened, at: at.data } } as Fact) : null;
  }
  const changed = withValueAt(target.body, segmentsOf(field), value);
  const body = changed && fitted(factBodies[target.kind as FactKind], changed.value);
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
function settlesStatements({ kind, body }: Correction, here: ReadonlySet<string>): boolean {
  if (kind !== 'correctionSettled.v1' || !('chosen' in body) || !here.has(body.chosen)) return false;
  // Chosen may be the very statement that the others stand against: then what it was chosen over tells.
  return body.chosen !== body.replaces || (body.over ?? []).some((id) => id !== body.replaces && here.has(id));
}

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
