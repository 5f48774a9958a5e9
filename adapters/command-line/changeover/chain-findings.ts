/** A list of more than two variants: all changes at once, each interval the wider of chain and pair, and a verdict on every car. */
import {
  type ChainChange,
  type ChainSetting,
  chainReport,
  formatInterval,
  type GroupedChangeovers,
  midpoint,
  replacementsSold,
  type Sighting,
  sightingsOfChain,
  statedChange,
} from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { type Judged, MOST_WANTED } from "./findings.ts";
import { groupsOf } from "./groups-of.ts";
import { optionRefusals } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

export interface ChangeOfChain extends ChainChange {
  readonly old: string;
  readonly new: string;
  readonly grouped: readonly GroupedChangeovers[];
}

export interface ChainFindings {
  readonly kind: "chain";
  readonly changes: readonly ChangeOfChain[];
  /** Share of each variant among the replacements; undefined when the handbook does not say what was sold. */
  readonly sold: readonly number[] | undefined;
  /** The sightings used, by build date, then as the list has them. */
  readonly judged: readonly Judged[];
  readonly outside: readonly Sighting[];
}

/** Throws OutsideError when no sighting of the chain lies within the window. */
export function chainFindings(question: ChangeoverQuestion): ChainFindings {
  const { chain: variants, setting } = question;
  const { window } = setting;
  const { whole, sold } = chainSetting(question);
  const asked = question.sightings.filter(({ variant }) => variants.includes(variant));
  const isInside = ({ built }: Sighting): boolean =>
    midpoint(built) >= window.from && midpoint(built) < window.to;
  const used = asked.filter(isInside);
  if (used.length === 0) throw new OutsideError(optionRefusals.noneBuilt(formatInterval(window)));
  const found = chainReport(whole, sightingsOfChain(used, variants));
  if (!found.ok) throw new OutsideError(found.problem.message);
  const total = sold?.reduce((sum, months) => sum + months, 0) ?? 1;
  return {
    kind: "chain",
    changes: found.value.changes.map((change, at) => ({
      ...change,
      old: variants[at] ?? "",
      new: variants[at + 1] ?? "",
      grouped: change.pair === undefined ? [] : groupsOf(change.pair.setting, change.pair.sightings, used),
      wanted: change.wanted.filter(({ informationBits }) => informationBits > 0).slice(0, MOST_WANTED),
    })),
    sold: sold?.map((months) => months / total),
    judged: judgedOf(used, found.value.judged, variants),
    outside: asked.filter((sighting) => !isInside(sighting)),
  };
}

function chainSetting({ chain: variants, setting: { window, production }, part }: ChangeoverQuestion) {
  const fitting = (at: number) => part?.variants.find(({ id }) => id === variants[at])?.fitted ?? [];
  const sold = part && replacementsSold(part, variants);
  const whole: ChainSetting = {
    window,
    ...(production === undefined ? {} : { production }),
    replacements: sold ?? variants.map(() => 1),
    stated: variants.slice(1).map((_, at) => statedChange(fitting(at), fitting(at + 1))),
  };
  return { whole, sold };
}

function judgedOf(
  used: readonly Sighting[],
  verdicts: readonly Omit<Judged, "sighting" | "isNew">[],
  variants: readonly string[],
): readonly Judged[] {
  return used
    .flatMap((sighting, at): readonly Judged[] => {
      const verdict = verdicts[at];
      if (verdict === undefined) return [];
      const { notAsBuilt, swapped } = verdict;
      return [{ sighting, isNew: sighting.variant !== variants[0], notAsBuilt, swapped }];
    })
    .sort(
      ({ sighting: one }, { sighting: other }) =>
        one.built.from - other.built.from || one.built.to - other.built.to,
    );
}
