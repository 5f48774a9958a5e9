/** What accepting an observation would change, in numbers: worked out on a copy of what is known, with it and without. */
import {
  type ChangeSeen,
  type CompiledPart,
  featureById,
  formatInterval,
  identify,
  type LearntLead,
  type PartKind,
  shareOfState,
  stateName,
  variantById,
} from "../../../knowledge/index.ts";
import { findPart } from "../../conversation/knowledge.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene } from "../affair.ts";
import * as phrases from "../phrases/observations.ts";
import { kindsOf, plainFor } from "./kinds-of.ts";
import { changesSeenIn } from "./learnt-changes.ts";
import { sharpenedPart } from "./learnt-knowledge.ts";
import { learntLeads } from "./learnt-leads.ts";
import type { Observation } from "./observation.ts";
import { emptyTally, leastTaught, type PartTally, tallyKey, tallyWith } from "./observations-view.ts";

/** A share that moves by less is not worth a line. */
const leastMove = 0.0005;
const mostRows = 5;

type Row = readonly [what: string, now: string, then: string];

interface Trial {
  readonly part: PartKind;
  /** The observation as it would stand. */
  readonly accepted: Observation;
  readonly now: Taught;
  readonly after: Taught;
}

/** What a tally teaches. */
interface Taught {
  readonly compiled: CompiledPart | undefined;
  readonly seen: readonly ChangeSeen[];
  readonly leads: readonly LearntLead[];
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
  // One after the other: what is worked out of a tally is brought from one to the next.
  const taught = (tally: PartTally): Taught => ({
    compiled: sharpenedPart(plain, part, tally),
    seen: changesSeenIn(plain.handbook, part, tally),
    leads: learntLeads(part, tally),
  });
  const trial: Trial = { part, accepted, now: taught(now), after: taught(tallyWith(now, id, accepted)) };
  const rows = [...shareRows(trial), ...changeRows(trial), ...leadRows(trial)];
  if (rows.length === 0) return [{ kind: "text", text: phrases.wouldTeachNothing, tone: "aside" }];
  return [{ kind: "table", caption: phrases.wouldChange, head: phrases.wouldChangeHead, rows }];
}

/** What such a car was built with, and how often the kind shows what was seen on it. */
function shareRows({ part, accepted, now, after: then }: Trial): readonly Row[] {
  const [today, trial] = [now.compiled, then.compiled];
  if (today === undefined || trial === undefined) return [];
  return [...builtRows(part, accepted, today, trial), ...stateRows(part, accepted, today, trial)];
}

function builtRows(
  part: PartKind,
  { saw }: Observation,
  today: CompiledPart,
  trial: CompiledPart,
): readonly Row[] {
  const asked = { car: saw.car, goal: "what-should-it-have", reports: [] } as const;
  const before = new Map(identify(today, asked).classes.map((one) => [one.class, one.probability]));
  return identify(trial, asked)
    .classes.flatMap(({ class: id, probability }) => {
      const variant = variantById(part, id);
      return variant === undefined ? [] : [{ variant, now: before.get(id) ?? 0, share: probability }];
    })
    .map((one) => ({ ...one, move: Math.abs(one.share - one.now) }))
    .filter(({ move }) => move >= leastMove)
    .sort((one, other) => other.move - one.move)
    .slice(0, mostRows)
    .map((one) => [
      phrases.shareOfKind(one.variant.name),
      phrases.percent(one.now),
      phrases.percent(one.share),
    ]);
}

function stateRows(
  part: PartKind,
  { saw, kinds }: Observation,
  today: CompiledPart,
  trial: CompiledPart,
): readonly Row[] {
  const [first] = kinds;
  const variant = first && variantById(part, first.variant);
  if (first === undefined || variant === undefined || first.chance < leastTaught) return [];
  return saw.reports.flatMap(({ feature: id, value }): readonly Row[] => {
    const feature = featureById(part, id);
    if (value.kind !== "state" || feature === undefined) return [];
    const share = (compiled: CompiledPart) => shareOfState(compiled, id, variant.id, value.state) ?? 0;
    if (Math.abs(share(trial) - share(today)) < leastMove) return [];
    const what = phrases.shareOfState(variant.name, feature.name, stateName(feature, value.state));
    return [[what, phrases.percent(share(today)), phrases.percent(share(trial))]];
  });
}

/** The usual months from a date mark to the car, learnt with and without it. */
function leadRows({ part, now, after: then }: Trial): readonly Row[] {
  const before = new Map(now.leads.map((one) => [one.feature, one]));
  return then.leads.flatMap(({ feature: id, lead, cars }): readonly Row[] => {
    const feature = featureById(part, id);
    const known = before.get(id);
    if (feature?.kind !== "date" || known?.cars === cars) return [];
    const { median } = known?.lead ?? feature.lead ?? part.lead;
    const [was, is] = [phrases.inMonths(median), phrases.inMonths(lead.median)];
    return was === is ? [] : [[phrases.leadOf(feature.name), was, is]];
  });
}

/** The changes that the sighting is of, dated with and without it. */
function changeRows({ part, now, after: then }: Trial): readonly Row[] {
  return then.seen.flatMap(({ succession, seen, change }): readonly Row[] => {
    const before = now.seen.find(
      (one) => one.succession.old === succession.old && one.succession.new === succession.new,
    );
    if (before === undefined || before.seen === seen) return [];
    const name = (id: string) => variantById(part, id)?.name ?? id;
    const what = phrases.changeBetween(name(succession.old), name(succession.new));
    const [was, is] = [formatInterval(before.change.interval), formatInterval(change.interval)];
    return was === is ? [] : [[what, was, is]];
  });
}
