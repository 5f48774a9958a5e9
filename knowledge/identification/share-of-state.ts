/** How often a kind shows a state, as the compiled tables have it: from the handbook and from what was observed. */
import type { CompiledPart } from "./compiled-part.ts";

/** P(state | variant) before anybody misreads it; undefined when the part kind has no such feature, state or variant. */
export function shareOfState(
  { states, part }: CompiledPart,
  feature: string,
  variant: string,
  state: string,
): number | undefined {
  const table = states.get(feature);
  const column = table?.channel.states.indexOf(state) ?? -1;
  const row = table?.rowOf[part.variants.findIndex(({ id }) => id === variant)];
  if (table === undefined || column < 0 || row === undefined) return undefined;
  return table.rows[row * table.channel.states.length + column];
}
