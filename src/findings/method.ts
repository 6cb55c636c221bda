/** The analytical method that a sample is held to: named with the result, else asked for with the box. */
import type { Book, SampleRecord } from '#records/book.ts';
import { type Method, methods } from '#reference/methods.ts';
import type { FlowRange } from './flow.ts';
import { type Reason, reason } from './reason.ts';

export interface SampleMethod {
  readonly id: string | null;
  readonly flowRange: FlowRange | null;
  /** The highest flow that the method allows, or that any held method allows where this one states none. */
  readonly highestLPerMin: number;
  readonly leastL: number | null;
  readonly mostL: number | null;
  readonly reasons: readonly Reason[];
}

interface Held {
  readonly byId: ReadonlyMap<string, Method>;
  readonly highestLPerMin: number;
}

let held: Held | undefined;

function heldMethods(): Held {
  held ??= {
    byId: new Map(methods().map((method) => [method.id, method])),
    highestLPerMin: Math.max(...methods().map(({ flow }) => flow?.high ?? 0)),
  };
  return held;
}

function rangeOf({ id, flow }: Method): FlowRange | null {
  const { low = null, high = null } = flow ?? {};
  return low === null || high === null ? null : { id, flowFromLPerMin: low, flowToLPerMin: high };
}

export function methodOf(sample: SampleRecord, book: Book): SampleMethod {
  const { byId, highestLPerMin } = heldMethods();
  let id = sample.results.at(-1)?.methodId ?? null;
  if (id === null)
    for (const { packed } of book.boxes.values()) if (packed.sampleIds.includes(sample.id)) id = packed.methodId ?? id;
  const method = id === null ? undefined : byId.get(id);
  if (!method) {
    // before there is a result or a box, nobody could have named one
    const reasons = sample.results.length > 0 ? [reason('methodNotKnown', sample.factIds.slice(0, 1))] : [];
    return { id, flowRange: null, highestLPerMin, leastL: null, mostL: null, reasons };
  }
  const { volume } = method;
  return {
    id,
    flowRange: rangeOf(method),
    highestLPerMin: method.flow?.high ?? highestLPerMin,
    leastL: volume?.low ?? null,
    mostL: volume?.high ?? null,
    reasons: [],
  };
}
