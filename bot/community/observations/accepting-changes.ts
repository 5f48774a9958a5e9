/** What accepting an observation would change, in numbers: worked out on a copy of what is known, with it and without. */
import {
  type CompiledPart,
  featureById,
  formatInterval,
  identify,
  type PartKind,
  sayProbability,
  shareOfState,
  stateName,
  variantById,
} from "../../../knowledge/index.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene } from "../affair.ts";
import * as phrases from "../phrases/observations.ts";
import { kindsOf, plainFor } from "./kinds-of.ts";
import { changesSeen } from "./learnt-changes.ts";
import { sharpenedPart } from "./learnt-knowledge.ts";
import type { Observation } from "./observation.ts";
import { emptyTally, leastTaught, type PartTally, tallyKey, tallyWith } from "./observations-view.ts";

type Row = readonly [what: string, now: string, then: string];

interface Trial {
  readonly plain: Knowledge;
  readonly part: PartKind;
  /** The observation as it would stand. */
  readonly accepted: Observation;
  readonly now: PartTally;
  readonly after: PartTally;
}

/** A table of what changes; a sentence when nothing does. */
export function acceptingChanges(
  scene: CommunityScene,
  id: string,
  observation: Observation,
): readonly Block[] {
  const plain = plainFor(scene, observation.saw);
  const part = plain && findPart(plain, observation.saw.part);
  if (plain === undefined || part === undefined) return [];
  const accepted: Observation = {
    ...observation,
    stands: "accepted",
    kinds: kindsOf(scene, observation.saw),
  };
  const now = scene.memory.observations.parts.get(tallyKey(observation.saw)) ?? emptyTally();
  const trial: Trial = { plain, part, accepted, now, after: tallyWith(now, id, accepted) };
  const rows = [...shareRows(trial), ...changeRows(trial)];
  if (rows.length === 0) return [{ kind: "text", text: phrases.wouldTeachNothing, tone: "aside" }];
  return [{ kind: "table", caption: phrases.wouldChange, head: phrases.wouldChangeHead, rows }];
}

/** How often such a car has the kind, and how often the kind shows what was seen. */
function shareRows({ plain, part, accepted, now, after: then }: Trial): readonly Row[] {
  const [first] = accepted.kinds;
  const variant = first && variantById(part, first.variant);
  const [before, after] = [sharpenedPart(plain, part, now), sharpenedPart(plain, part, then)];
  if (first === undefined || variant === undefined || before === undefined || after === undefined) return [];
  const { saw } = accepted;
  const chance = (compiled: CompiledPart) =>
    identify(compiled, { car: saw.car, goal: "which-variant", reports: [] }).ranking.find(
      (one) => one.variant === variant.id,
    )?.probability ?? 0;
  const ofKind = row(phrases.shareOfKind(variant.name), chance(before), chance(after));
  if (first.chance < leastTaught) return ofKind;
  const ofStates = saw.reports.flatMap(({ feature: id, value }) => {
    const feature = featureById(part, id);
    if (value.kind !== "state" || feature === undefined) return [];
    const shares = [before, after].map((compiled) => shareOfState(compiled, id, variant.id, value.state));
    const what = phrases.shareOfState(variant.name, feature.name, stateName(feature, value.state));
    return row(what, shares[0] ?? 0, shares[1] ?? 0);
  });
  return [...ofKind, ...ofStates];
}

function row(what: string, now: number, then: number): readonly Row[] {
  return now === then ? [] : [[what, sayShare(now), sayShare(then)]];
}

/** To the tenth of a per cent, for a single sighting rarely moves more. */
function sayShare(share: number): string {
  return `${sayProbability(share).replace(/ \([^()]*\)$/u, "")} (${(100 * share).toFixed(1)} %)`;
}

/** The changes that the sighting is of, dated with and without it. */
function changeRows({ plain: { handbook }, part, now, after: then }: Trial): readonly Row[] {
  const nowSeen = changesSeen(handbook, part, now, 0);
  return changesSeen(handbook, part, then, 0).flatMap(({ succession, seen, change }): readonly Row[] => {
    const before = nowSeen.find(
      (one) => one.succession.old === succession.old && one.succession.new === succession.new,
    );
    if (before === undefined || before.seen === seen) return [];
    const name = (id: string) => variantById(part, id)?.name ?? id;
    const what = phrases.changeBetween(name(succession.old), name(succession.new));
    return [[what, formatInterval(before.change.interval), formatInterval(change.interval)]];
  });
}
