/**
 * What an observation would change if it were accepted: the community's knowledge is worked out a second time with it, and the numbers that
 * move are laid beside those of today.
 */
import {
  type ClassProbability,
  type CompiledPart,
  formatInterval,
  identify,
  notInHandbook,
} from "../../../knowledge/index.ts";
import { findPart, type Knowledge } from "../../conversation/knowledge.ts";
import { variantName } from "../../conversation/saying/say-variant.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene } from "../affair.ts";
import { kindsOf } from "../observations/kinds-of.ts";
import { changesSeen, learntKnowledge } from "../observations/learnt-knowledge.ts";
import type { Observation } from "../observations/observation.ts";
import { type ObservationsView, observationKind, type PartTally } from "../observations/observations-view.ts";
import * as phrases from "../phrases/if-accepted.ts";

/** A share that moves by less is not worth a line. */
const leastMove = 0.0005;
const mostLines = 5;

/** Blocks that say what would move; one line when nothing would. */
export function ifAccepted(scene: CommunityScene, id: string, observation: Observation): readonly Block[] {
  const { saw } = observation;
  const plain = scene.served.find(({ handbook }) => handbook.cover.id === saw.handbook);
  if (plain === undefined || findPart(plain, saw.part) === undefined) return [];
  const now = scene.memory.observations;
  const then = viewWith(now, id, { ...observation, stands: "accepted", kinds: kindsOf(scene, saw) });
  const blocks = [
    ...shareBlocks(plain, now, then, observation),
    ...kindBlocks(plain, now, then, observation),
    ...changeBlocks(plain, now, then, observation),
  ];
  return blocks.length === 0 ? [{ kind: "text", text: phrases.changesNothing }] : blocks;
}

/** A view of its own with the observation in it; only the part's sums are copied. */
function viewWith(view: ObservationsView, id: string, accepted: Observation): ObservationsView {
  const key = keyOf(accepted);
  const tally = view.parts.get(key);
  const copy: ObservationsView = {
    ...view,
    byId: new Map(),
    bySerial: new Map(),
    parts: new Map(tally === undefined ? [] : [[key, copied(tally)]]),
  };
  observationKind.take(copy, id, undefined, accepted);
  return copy;
}

function copied({ version, states, sightings }: PartTally): PartTally {
  const entries = [...states].map(([key, state]) => [key, { ...state }] as const);
  return { version, states: new Map(entries), sightings: new Map(sightings) };
}

function keyOf({ saw }: Observation): string {
  return `${saw.handbook} ${saw.part}`;
}

/** What such a car should have had, before and after. */
function shareBlocks(
  plain: Knowledge,
  now: ObservationsView,
  then: ObservationsView,
  { saw }: Observation,
): readonly Block[] {
  const { isLoosePart: _, ...car } = saw.car;
  const asked = { car, goal: "what-should-it-have", reports: [] } as const;
  const { built } = car;
  const lead = built === undefined ? phrases.sharesLeadUndated : phrases.sharesLead(formatInterval(built));
  return movedBlocks(plain, saw.part, lead, [now, then], (compiled) => identify(compiled, asked).classes);
}

/** Which kind a part that looks so is, before and after. */
function kindBlocks(
  plain: Knowledge,
  now: ObservationsView,
  then: ObservationsView,
  { saw }: Observation,
): readonly Block[] {
  const asked = { car: { isLoosePart: true }, goal: "which-variant", reports: saw.reports } as const;
  if (saw.reports.length === 0) return [];
  return movedBlocks(plain, saw.part, phrases.kindsLead, [now, then], (compiled) =>
    identify(compiled, asked).ranking.map(({ variant, probability }) => ({ class: variant, probability })),
  );
}

/** The shares that move most between two views, one line each; nothing when none moves. */
function movedBlocks(
  plain: Knowledge,
  partId: string,
  lead: string,
  [now, then]: readonly [ObservationsView, ObservationsView],
  sharesOf: (compiled: CompiledPart) => readonly ClassProbability[],
): readonly Block[] {
  const part = findPart(plain, partId);
  const shares = (view: ObservationsView) => {
    const compiled = learntKnowledge(plain, view).compiled(partId);
    const found = compiled === undefined ? [] : sharesOf(compiled);
    return new Map(found.map(({ class: variant, probability }) => [variant, probability]));
  };
  const before = shares(now);
  const moved = [...shares(then)]
    .map(([variant, share]) => ({ variant, share, was: before.get(variant) ?? 0 }))
    .filter(({ share, was }) => Math.abs(share - was) >= leastMove)
    .toSorted((one, other) => Math.abs(other.share - other.was) - Math.abs(one.share - one.was))
    .slice(0, mostLines);
  if (part === undefined || moved.length === 0) return [];
  const items = moved.map(({ variant, share, was }) =>
    phrases.shareChange(
      variant === notInHandbook ? phrases.somethingElse : variantName(part, variant),
      phrases.percent(was),
      phrases.percent(share),
    ),
  );
  return [{ kind: "list", lead, items }];
}

/** When one kind gave way to the next, before and after. */
function changeBlocks(
  plain: Knowledge,
  now: ObservationsView,
  then: ObservationsView,
  observation: Observation,
): readonly Block[] {
  const part = findPart(plain, observation.saw.part);
  const key = keyOf(observation);
  if (part === undefined) return [];
  const intervals = (view: ObservationsView): ReadonlyMap<string, string> => {
    const tally = view.parts.get(key);
    const seen = tally === undefined ? [] : changesSeen(plain, part, tally);
    return new Map(
      seen.map(({ succession, change }) => [
        JSON.stringify([succession.old, succession.new]),
        formatInterval(change.interval),
      ]),
    );
  };
  const before = intervals(now);
  const items = [...intervals(then)].flatMap(([names, interval]) => {
    const was = before.get(names) ?? phrases.tooFewYet;
    if (was === interval) return [];
    const [old = "", fresh = ""]: readonly string[] = JSON.parse(names);
    return [phrases.changeChange(variantName(part, old), variantName(part, fresh), was, interval)];
  });
  return items.length === 0 ? [] : [{ kind: "list", lead: phrases.changesLead, items }];
}
