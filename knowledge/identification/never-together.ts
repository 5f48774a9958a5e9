/**
 * Two states that no kind in the handbook shows together: each is usual on some kind, and every kind makes at least one
 * of them unlikely. The two other alarms weigh numbers and stay quiet while a pair alone cancels out; a restorer sees at
 * a glance that a milled groove does not belong in a moulded housing, and so must the answer.
 */
import type { CompiledPart } from "./compiled-part.ts";
import type { Fact } from "./facts.ts";

/** A state below this share on a kind does not belong to it; a wider one would flag honest exceptions. Ours, see test/bench. */
const FOREIGN = 0.12;
/** A state above this share is at home on a kind. */
const AT_HOME = 0.5;
/** Only what was seen, not supposed. */
const SEEN = 0.75;

/** For each fact that cannot stand beside another, that other (the first in the handbook's order). */
export function neverTogether(compiled: CompiledPart, facts: readonly Fact[]): ReadonlyMap<string, string> {
  const seen = facts.flatMap((fact) => {
    const shares = sharesOfSeenState(compiled, fact);
    return shares ? [{ feature: fact.feature, shares }] : [];
  });
  const partners = new Map<string, string>();
  for (const { feature, shares } of seen) {
    const other = seen.find((one) => areForeign(one.shares, shares));
    if (other) partners.set(feature, other.feature);
  }
  return partners;
}

function areForeign(one: Float64Array, other: Float64Array): boolean {
  for (let variant = 0; variant < one.length; variant += 1) {
    if ((one[variant] as number) >= FOREIGN && (other[variant] as number) >= FOREIGN) return false;
  }
  return true;
}

/** P(state | variant) for every variant, of a state that everybody asked saw alike and that is at home somewhere. */
function sharesOfSeenState(compiled: CompiledPart, fact: Fact): Float64Array | undefined {
  const table = compiled.states.get(fact.feature);
  const [report] = fact.reports;
  if (!table || report?.value.kind !== "state") return undefined;
  const { state } = report.value;
  const agree = fact.reports.every(
    ({ value, certainty }) => certainty >= SEEN && value.kind === "state" && value.state === state,
  );
  const column = table.channel.states.indexOf(state);
  if (!agree || column < 0) return undefined;
  const width = table.channel.states.length;
  const shares = new Float64Array(table.rowOf.length);
  let greatest = 0;
  for (let variant = 0; variant < shares.length; variant += 1) {
    const share = table.rows[(table.rowOf[variant] as number) * width + column] as number;
    shares[variant] = share;
    greatest = Math.max(greatest, share);
  }
  return greatest >= AT_HOME ? shares : undefined;
}
