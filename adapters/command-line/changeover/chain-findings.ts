/** A list of more than two variants: all changes at once, each interval the wider of chain and pair. */
import {
  type ChainSetting,
  changeoverChain,
  formatInterval,
  type Interval,
  midpoint,
  pairInChain,
  replacementsSold,
  type Sighting,
  sightingsOfChain,
  statedChange,
  widerInterval,
} from "../../../knowledge/index.ts";
import { OutsideError } from "../../errors.ts";
import { optionRefusals } from "./phrases.ts";
import type { ChangeoverQuestion } from "./question.ts";

export interface ChainFindings {
  readonly changes: readonly {
    readonly old: string;
    readonly new: string;
    readonly median: number;
    /** Holds the change with 90 % at least. */
    readonly interval: Interval;
  }[];
  /** Share of each variant among the replacements; undefined when the handbook does not say what was sold. */
  readonly sold: readonly number[] | undefined;
  readonly used: readonly Sighting[];
  readonly outside: readonly Sighting[];
}

/** Throws OutsideError when no sighting of the chain lies within the window. */
export function chainFindings(question: ChangeoverQuestion): ChainFindings {
  const { chain: variants, setting, part } = question;
  const { window, production } = setting;
  const fitting = (at: number) => part?.variants.find(({ id }) => id === variants[at])?.fitted ?? [];
  const sold = part && replacementsSold(part, variants);
  const whole: ChainSetting = {
    window,
    ...(production === undefined ? {} : { production }),
    replacements: sold ?? variants.map(() => 1),
    stated: variants.slice(1).map((_, at) => statedChange(fitting(at), fitting(at + 1))),
  };
  const asked = question.sightings.filter(({ variant }) => variants.includes(variant));
  const isInside = ({ built }: Sighting): boolean =>
    midpoint(built) >= window.from && midpoint(built) < window.to;
  const used = asked.filter(isInside);
  if (used.length === 0) throw new OutsideError(optionRefusals.noneBuilt(formatInterval(window)));
  const reports = sightingsOfChain(used, variants);
  const found = changeoverChain(whole, reports);
  if (!found.ok) throw new OutsideError(found.problem.message);
  const changes = found.value.changeovers.map(({ median, interval }, at) => {
    const pair = pairInChain(whole, reports, found.value, at);
    return {
      old: variants[at] ?? "",
      new: variants[at + 1] ?? "",
      median,
      interval: pair.ok ? widerInterval(interval, pair.value.interval) : interval,
    };
  });
  const total = sold?.reduce((sum, months) => sum + months, 0) ?? 1;
  return {
    changes,
    sold: sold?.map((months) => months / total),
    used,
    outside: asked.filter((sighting) => !isInside(sighting)),
  };
}
