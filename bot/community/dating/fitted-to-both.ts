/** Which cars both kinds of a change were fitted to, where not all: a car of another trim or market says nothing of it. */
import { type Handbook, type PartKind, type Succession, variantById } from "../../../knowledge/index.ts";
import { listed } from "../../conversation/phrases/grammar.ts";
import * as phrases from "../phrases/dating.ts";

const fields = ["models", "trims", "markets"] as const;

/** "Shrike S and Touring"; "any car" where nothing is left out. */
export function fittedToBoth({ cars }: Handbook, part: PartKind, { old, new: fresh }: Succession): string {
  const said = fields.flatMap((field): readonly string[] => {
    const [ofOld, ofNew] = [old, fresh].map((id) =>
      allowed(variantById(part, id)?.fitted.map((period) => period[field]) ?? []),
    );
    const both = cars[field].filter(
      ({ id }) => (ofOld?.includes(id) ?? true) && (ofNew?.includes(id) ?? true),
    );
    return both.length === cars[field].length
      ? []
      : [
          listed(
            both.map(({ name }) => name),
            "or",
          ),
        ];
  });
  return said.length === 0 ? phrases.anyCar : said.join("; ");
}

/** Ids that some period names; undefined when one of them leaves nothing out. */
function allowed(periods: readonly (readonly string[])[]): readonly string[] | undefined {
  return periods.some((ids) => ids.length === 0) ? undefined : periods.flat();
}
