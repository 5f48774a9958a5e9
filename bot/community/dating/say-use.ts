/** "last seen": from when until when the kinds of a part were in use, by their own sightings and four published methods. */
import {
  firstSighting,
  formatInterval,
  lastSighting,
  type Refusal,
  type Result,
  type Sighting,
  sightingsOfChange,
  successionWindow,
  type UseEnd,
  type UseLimit,
} from "../../../knowledge/index.ts";
import { monthWords, oneVariantWords, sightingsCounted } from "../../conversation/phrases/changeovers.ts";
import type { Block } from "../../reply.ts";
import { text } from "../../text-blocks.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { datedSightings } from "../observations/observations-view.ts";
import * as phrases from "../phrases/dating.ts";
import { partAsked, tallyOfPart } from "./part-asked.ts";

const methods = [
  ["straussSadler", "Strauss & Sadler 1989"],
  ["solow", "Solow 1993"],
  ["robertsSolow", "Roberts & Solow 2003"],
  ["jaricRoberts", "Jarić & Roberts 2014"],
] as const;

export function sayUse(scene: CommunityScene, about: string): Handled {
  const asked = partAsked(scene, about);
  if (asked === undefined) return { blocks: [text(phrases.seenOfWhich)] };
  const { part, variants } = asked;
  const sightings = datedSightings(tallyOfPart(scene, scene.knowledge, part));
  const blocks = part.variants
    .filter(({ id, origin }) => (variants.length === 0 ? origin === "production" : variants.includes(id)))
    .flatMap(({ id, name }) => ofKind(scene, { id, name }, sightings));
  if (blocks.every(({ kind }) => kind === "text")) return { blocks };
  return { blocks: [...blocks, { kind: "text", text: phrases.useAssumptions, tone: "aside" }] };
}

function ofKind(
  { knowledge: { handbook } }: CommunityScene,
  { id, name }: { readonly id: string; readonly name: string },
  sightings: readonly Sighting[],
): readonly Block[] {
  const setting = successionWindow(handbook);
  const uses = sightingsOfChange(sightings, [id], []).map(({ built, swap, misread }) => ({
    built,
    asBuilt: (1 - swap) * (1 - misread),
  }));
  if (setting === undefined || uses.length === 0) return [text(phrases.neverSeen(name))];
  const [end, beginning] = [lastSighting(setting, uses), firstSighting(setting, uses)];
  if (!end.ok || !beginning.ok) return [text(phrases.neverSeen(name))];
  return [
    {
      kind: "list",
      lead: phrases.useLead(name, sightingsCounted(uses.length)),
      items: [...sayEnd(beginning.value, true), ...sayEnd(end.value, false)],
    },
  ];
}

function sayEnd(use: UseEnd, isBeginning: boolean): readonly string[] {
  const { inUseFrom, inUseUntil, notTrusted } = oneVariantWords;
  if (use.atLeastBuilt === undefined) return isBeginning ? [notTrusted] : [];
  const atLeast = (isBeginning ? inUseFrom : inUseUntil)(formatInterval(use.atLeastBuilt));
  const say = isBeginning ? phrases.beginningWords : phrases.endWords;
  return [atLeast, ...methods.map(([method, name]) => say(name, sayLimit(use[method], isBeginning)))];
}

function sayLimit(limit: Result<UseLimit, Refusal>, isBeginning: boolean): string {
  if (!limit.ok) return oneVariantWords.refused(limit.problem.message);
  const { isOpen, assumption, estimate, limit: outer } = limit.value;
  const open = isBeginning ? oneVariantWords.openBeginning : oneVariantWords.openEnd;
  const closed = isBeginning ? oneVariantWords.beginningLimit : oneVariantWords.endLimit;
  const said = isOpen ? open(monthWords(estimate)) : closed(monthWords(estimate), monthWords(outer));
  // The paper stands in front already.
  return `${said}, ${oneVariantWords.holdsIf(assumption.replace(/ \([^()]*\)$/u, ""))}`;
}
