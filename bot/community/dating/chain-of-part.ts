/** What the accepted sightings say of kinds that followed each other in a row: all their changes at once, and a verdict on every car. */
import {
  type ChainChange,
  type ChainSetting,
  chainReport,
  chainsOf,
  type Handbook,
  type PartKind,
  replacementsSold,
  sightingsOfChain,
  statedChange,
  successionsOf,
  successionWindow,
  variantById,
} from "../../../knowledge/index.ts";
import type { PartTally } from "../observations/observations-view.ts";
import { type JudgedSighting, judgedOf, sightingsOf } from "./changeover-findings.ts";

export interface ChainOfPart {
  /** In the order in which they followed each other, three or more. */
  readonly variants: readonly string[];
  readonly setting: ChainSetting;
  /** From each of them to the next. */
  readonly changes: readonly ChainChange[];
  readonly judged: readonly JudgedSighting[];
  /** How many dated cars of any of them were seen. */
  readonly seen: number;
}

/** The chains of a part kind of which three kinds or more were seen; none without dated models. */
export function chainsOfPart(handbook: Handbook, part: PartKind, tally: PartTally): readonly ChainOfPart[] {
  const ground = successionWindow(handbook);
  if (ground === undefined) return [];
  const sightings = sightingsOf(tally);
  const cars = new Map<string, number>();
  for (const { variant, count = 1 } of sightings) cars.set(variant, (cars.get(variant) ?? 0) + count);
  const chains = chainsOf(successionsOf(handbook, part), (variant) => cars.get(variant) ?? 0);
  return chains.flatMap((variants): readonly ChainOfPart[] => {
    const setting = { ...ground, ...handbookSays(part, variants) };
    const found = chainReport(setting, sightingsOfChain(sightings, variants));
    if (!found.ok) return [];
    const { changes, judged } = found.value;
    const verdicts = new Map(judged.map(({ id, notAsBuilt }) => [id, notAsBuilt]));
    const seen = variants.reduce((sum, variant) => sum + (cars.get(variant) ?? 0), 0);
    return [{ variants, setting, changes, judged: judgedOf(sightings, verdicts, variants.slice(1)), seen }];
  });
}

function handbookSays(
  part: PartKind,
  variants: readonly string[],
): Pick<ChainSetting, "replacements" | "stated"> {
  const fitting = (variant: string | undefined) => variantById(part, variant ?? "")?.fitted ?? [];
  return {
    replacements: replacementsSold(part, variants) ?? variants.map(() => 1),
    stated: variants.slice(1).map((variant, at) => statedChange(fitting(variants[at]), fitting(variant))),
  };
}
