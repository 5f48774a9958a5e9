/** What must hold of the changes that are made together in one commit. */
import type { Advanced, Alongside, Change } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { keyOf } from "./heads.ts";

/** One statement takes so many rows in either engine: 13 values each, and SQLite takes 32766 (https://www.sqlite.org/limits.html). */
export const MOST_ROWS = 1000;

/** What is wrong with the changes alongside `change`; undefined: nothing. */
export function problemAlongside(
  change: Change,
  { alongside = [] }: Pick<Advanced<unknown>, "alongside">,
): Error | undefined {
  const changes = [change, ...alongside.map((each) => each.change)];
  const keys = new Set(changes.map(keyOf));
  // Neither change could go by what the other leaves behind, and one of the two would be lost.
  if (keys.size < changes.length) return new Error(`two changes of one record in one of ${change.kind}`);
  if (changes.length > MOST_ROWS) return new Error(`more than ${MOST_ROWS} changes in one of ${change.kind}`);
  return alongside.map((each) => problemOf(each.change)).find((problem) => problem !== undefined);
}

/** What no database keeps as it is: a zero character, half of a surrogate pair. */
export function problemOf({ kind, id, by, why, message = "" }: Change): OutsideError | undefined {
  const isSound = [kind, id, by, why, message].every(
    (text) => !text.includes("\0") && !/\p{Surrogate}/u.test(text),
  );
  if (isSound) return undefined;
  return new OutsideError(
    "store: an id or a name with a zero character or half a character in it cannot be kept",
  );
}

/** The type keeps a message out, plain data may still carry one; that of the main change guards them all. */
export function withoutMessage({ kind, id, by, at, why }: Alongside["change"]): Change {
  return { kind, id, by, at: Math.round(at), why };
}
