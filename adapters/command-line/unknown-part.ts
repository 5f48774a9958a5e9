/** A part kind that the handbook does not have, and which one was probably meant. */
import type { Handbook } from "../../knowledge/index.ts";
import { closestName } from "../closest-name.ts";
import { OutsideError } from "../errors.ts";

export function unknownPart(handbook: Handbook, written: string): OutsideError {
  const ids = handbook.parts.map(({ id }) => id);
  const meant = closestName(written, ids);
  const hint = meant === undefined ? `one of ${ids.join(", ")} is needed` : `did you mean ${meant}`;
  return new OutsideError(`unknown part kind: ${JSON.stringify(written)}, ${hint}`);
}
