/** "lead times": how long parts lay from each date mark to what came next, whence that is known, and whether one's own two dates go together. */
import {
  type DateFeature,
  featureById,
  formatInterval,
  leadPlausibility,
  nextMark,
  type PartKind,
  usualLead,
} from "../../../knowledge/index.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import { leadVerdicts, pairJudged, usualLeadOf } from "../../conversation/phrases/lead-time.ts";
import { monthsOfMost } from "../../conversation/saying/say-lead-times.ts";
import { lastTold, sayValue } from "../../conversation/saying/say-value.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { learntLeads } from "../observations/learnt-leads.ts";
import * as phrases from "../phrases/dating.ts";
import { partAsked, tallyOfPart } from "./part-asked.ts";

export function sayLeads(scene: CommunityScene, about: string): Handled {
  const asked = partAsked(scene, about)?.part;
  const parts = asked === undefined ? scene.knowledge.handbook.parts : [asked];
  const blocks = parts.flatMap((part) => ofPart(scene, part));
  if (blocks.length > 0) return { blocks };
  return { blocks: [{ kind: "text", text: phrases.noDateMarks(asked?.name) }] };
}

function ofPart(scene: CommunityScene, part: PartKind): readonly Block[] {
  const dates = part.features.filter((feature) => feature.kind === "date");
  if (dates.length === 0) return [];
  const learnt = learntLeads(part, tallyOfPart(scene, scene.knowledge, part));
  const marks = dates.map((feature) => {
    const found = learnt.find((one) => one.feature === feature.id);
    const lead = found?.lead ?? feature.lead ?? part.lead;
    return { feature, lead, cars: found?.cars ?? 0, isTrade: isTradeDefault(part, feature) };
  });
  const items = marks.map(({ feature, lead, cars, isTrade }) => {
    const next = nextMark(part, feature);
    const name = next === undefined ? undefined : featureById(part, next)?.name;
    return usualLeadOf(feature.name, name, monthsOfMost(lead, cars), isTrade);
  });
  const own = marks.flatMap(({ feature, lead }) => ownPair(scene, part, feature, lead));
  return [
    { kind: "list", lead: phrases.leadsOf(part.name), items },
    ...(own.length === 0 ? [] : [{ kind: "list", lead: phrases.ownDates, items: own } as const]),
  ];
}

function isTradeDefault(part: PartKind, { lead }: DateFeature): boolean {
  return lead === undefined && part.lead.median === usualLead.median && part.lead.sigma === usualLead.sigma;
}

/** What the mark that was read and the build date that was told say of each other; only the last mark lies next to the car. */
function ownPair(
  { conversation, speaker }: CommunityScene,
  part: PartKind,
  feature: DateFeature,
  lead: PartKind["lead"],
): readonly string[] {
  const kept = caseInHand(conversation, speaker.id);
  if (kept === undefined || kept.facts.part !== part.id || nextMark(part, feature) !== undefined) return [];
  const { built, isLoosePart } = kept.facts.car;
  const value = lastTold(feature.id, kept.facts.reports)?.value;
  if (built === undefined || isLoosePart === true || value?.kind !== "date" || value.readings.length !== 1)
    return [];
  return value.readings.map(({ interval }) => {
    const { verdict } = leadPlausibility(lead, interval, built);
    return pairJudged(feature.name, sayValue(feature, value), formatInterval(built), leadVerdicts[verdict]);
  });
}
