// Where the draws of one attempt come from, written so that it can be tried again: a number to start from, and changes of the draws.
// What is changed is what a generator decided, not its text, so that what comes out stays well formed (R. Padhye et al. 2019, "Semantic
// fuzzing with Zest", ISSTA).
import { type Chance, chanceFrom } from "../support/random-tables.ts";

export interface Change {
  /** Before the draw of this number; the first is 0. */
  readonly at: number;
  /** "=": so many draws are others; "+": so many others come in between; "-": so many are left out. */
  readonly kind: "=" | "+" | "-";
  readonly draws: number;
  /** Where the other draws start from. */
  readonly start: number;
}

export interface Recipe {
  readonly start: number;
  /** Each changes what those before it came to. */
  readonly changes: readonly Change[];
}

/** "17,5=4:99,12+1:7,30-2:0": no space in it, to be given on a command line. */
export function written({ start, changes }: Recipe): string {
  return [
    `${start}`,
    ...changes.map(({ at, kind, draws, start: from }) => `${at}${kind}${draws}:${from}`),
  ].join(",");
}

/** undefined for what `written` does not write. */
export function readRecipe(text: string): Recipe | undefined {
  const [start = "", ...rest] = text.split(",");
  if (!/^\d+$/u.test(start)) return undefined;
  const changes = rest.map((word) => /^(\d+)([=+-])(\d+):(\d+)$/u.exec(word));
  if (changes.includes(null)) return undefined;
  return {
    start: Number(start),
    changes: changes.map((found) => ({
      at: Number(found?.[1]),
      kind: found?.[2] as Change["kind"],
      draws: Number(found?.[3]),
      start: Number(found?.[4]),
    })),
  };
}

export function chanceOf({ start, changes }: Recipe): Chance {
  return changes.reduce(changed, chanceFrom(start));
}

function changed(before: Chance, { at, kind, draws, start }: Change): Chance {
  const other = chanceFrom(start);
  let number = -1;
  return () => {
    number += 1;
    if (number < at) return before();
    if (kind === "-") {
      if (number === at) for (let left = draws; left > 0; left -= 1) before();
      return before();
    }
    if (number >= at + draws) return before();
    if (kind === "=") before();
    return other();
  };
}
