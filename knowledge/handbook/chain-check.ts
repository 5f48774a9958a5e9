/** Chains of "this comes before that": each may fork or turn back on itself only by mistake. */

/**
 * The ids that lie on a circle, each circle once, in order from its first id; `next` names the successors of an id.
 * Depth-first with three colours; cost: ids + links.
 */
export function circles(
  ids: readonly string[],
  next: (id: string) => readonly string[],
): readonly (readonly string[])[] {
  const found: string[][] = [];
  const state = new Map<string, "open" | "done">();
  for (const start of ids) {
    const trail: { readonly id: string; readonly rest: string[] }[] = [];
    const enter = (id: string): void => {
      if (state.get(id) === "done") return;
      if (state.get(id) === "open") {
        const from = trail.findIndex((step) => step.id === id);
        found.push(trail.slice(from).map((step) => step.id));
        return;
      }
      state.set(id, "open");
      trail.push({ id, rest: [...next(id)].reverse() });
    };
    enter(start);
    for (let last = trail.at(-1); last !== undefined; last = trail.at(-1)) {
      const following = last.rest.pop();
      if (following !== undefined) enter(following);
      else {
        state.set(last.id, "done");
        trail.pop();
      }
    }
  }
  return found;
}
