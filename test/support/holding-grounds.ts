/** Tables of sentences about the mirror with the grounds that hold in them, one sentence a line. */
import { gatherObservations } from "../../knowledge/language/gather-observations.ts";
import { type GroundName, groundNames, groundsOf } from "../../knowledge/language/grounds.ts";
import { wholeOf } from "../../knowledge/language/seen-candidate.ts";
import { mirrorView } from "./tarn-mirror.ts";

type Row = readonly [text: string, state: string, expected: string, about: string];

/** Lines of "sentence -> state: grounds that hold", in brackets before the colon what the message is about where that is not the mirror. */
export function groundRows(table: string): readonly Row[] {
  return table
    .trim()
    .split("\n")
    .map((line) => {
      const [, text, state, about, expected] =
        /^\s*(.+) -> ([\w-]+)(?: \(([\w -]*)\))?:\s*(.*)$/.exec(line) ?? [];
      if (text === undefined || state === undefined) throw new Error(`no row of a table: ${line}`);
      return [text, state, expected ?? "", about ?? "mirror"];
    });
}

/** Of the grounds in question those that hold for the first candidate that tells the state, with their values where these are not 1. */
export function holding(asked: readonly GroundName[], text: string, state: string, about: string): string {
  const view = mirrorView(text, about);
  const { candidates } = gatherObservations(view);
  const candidate = candidates.find((each) => each.state === state);
  if (candidate === undefined) throw new Error(`${state} is not found in: ${text}`);
  const { values } = groundsOf(view, candidate, wholeOf(view, candidates, 0));
  return groundNames
    .flatMap((name, at) => {
      const value = values[at] ?? 0;
      if (!asked.includes(name) || value === 0) return [];
      return [value === 1 ? name : `${name} ${Number(value.toFixed(3))}`];
    })
    .join("; ");
}
