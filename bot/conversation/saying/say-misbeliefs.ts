/** A misbelief that somebody states is corrected at once, with the source, and without blame. */
import type { Handbook, MessageReading } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { correction, misbeliefLead } from "../phrases/understood.ts";
import { inBrackets } from "./sources-of.ts";

export function sayMisbeliefs(handbook: Handbook, found: MessageReading["misbeliefs"]): readonly Block[] {
  return found.flatMap(({ part: partId, misbelief: id }) => {
    const part = handbook.parts.find((one) => one.id === partId);
    const misbelief = part?.misbeliefs.find((one) => one.id === id);
    if (misbelief === undefined) return [];
    const text = `${misbeliefLead(misbelief.claim)} ${correction(misbelief.correction, inBrackets(handbook, misbelief.sources))}`;
    return [{ kind: "text", text } as const];
  });
}
