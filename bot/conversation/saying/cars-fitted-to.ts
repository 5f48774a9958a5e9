/** To which cars the works fitted a kind, or each of several: a car of another model, trim or market says nothing of it. */
import type { Handbook, Variant } from "../../../knowledge/index.ts";
import { listed } from "../phrases/grammar.ts";
import { anyCar } from "../phrases/variants.ts";

const fields = ["models", "trims", "markets"] as const;

/** "Shrike S or Shrike Touring; Home market": the cars all of these kinds were fitted to; "any car" where nothing is left out. */
export function carsFittedTo({ cars }: Handbook, kinds: readonly Pick<Variant, "fitted">[]): string {
  const said = fields.flatMap((field): readonly string[] => {
    const ids = kinds.map(({ fitted }) => allowed(fitted.map((period) => period[field])));
    const all = cars[field].filter(({ id }) => ids.every((of) => of?.includes(id) ?? true));
    if (all.length === cars[field].length) return [];
    return [
      listed(
        all.map(({ name }) => name),
        "or",
      ),
    ];
  });
  return said.length === 0 ? anyCar : said.join("; ");
}

/** Ids that some period names; undefined when one of them leaves nothing out. */
function allowed(periods: readonly (readonly string[])[]): readonly string[] | undefined {
  return periods.some((ids) => ids.length === 0) ? undefined : periods.flat();
}
