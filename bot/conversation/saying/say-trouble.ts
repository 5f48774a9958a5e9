/** Facts that pull apart, readings far from everything, dates in the wrong order: each is named, never averaged away. */

import { type BrokenDateLink, type Feature, featureById, formatInterval } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import type { Assessed, NextQuestion } from "../assessed.ts";
import type { Identified } from "../doubt.ts";
import { capitalised } from "../phrases/grammar.ts";
import {
  brokenDates,
  builtDate,
  datedMark,
  farFromAll,
  farFromEverything,
  pullApart,
  pullsAlone,
} from "../phrases/trouble.ts";
import { partnerOf } from "./contradiction-partner.ts";
import { isOfMass, lastTold, sayNumber, sayReported, sayReportedValue, sayValue } from "./say-value.ts";

/** What makes a second look necessary, to stand before its question; undefined for any other question. */
export function sayReason(identified: Identified, question: NextQuestion | null): Block | undefined {
  if (question === null || question.about !== "feature" || question.because.kind === "next") return undefined;
  const { because, feature } = question;
  const text = because.kind === "outlier" ? farAway(identified, feature) : contradiction(identified, feature);
  return { kind: "text", text };
}

/** Links of the date chain that cannot stand, by name; empty when all can. */
export function sayBrokenDates(assessed: Assessed): readonly Block[] {
  return assessed.identification.brokenLinks.map(
    (link): Block => ({ kind: "text", text: brokenLink(assessed, link) }),
  );
}

function contradiction(identified: Identified, feature: Feature): string {
  const { part, facts } = identified;
  const doubted = sayReported(feature, facts.reports);
  const partner = partnerOf(identified, feature.id);
  const other = partner === undefined ? undefined : featureById(part, partner);
  return other === undefined ? pullsAlone(doubted) : pullApart(doubted, sayReported(other, facts.reports));
}

function farAway({ part, facts }: Identified, feature: Feature): string {
  const reading = sayReportedValue(feature, facts.reports);
  const means = part.variants.flatMap((variant) => {
    const mean = variant.tells[feature.id]?.mean;
    return typeof mean === "number" ? [mean] : [];
  });
  const isMass = isOfMass(feature);
  if (means.length === 0 || feature.kind !== "measurement") return farFromEverything(reading, isMass);
  return farFromAll(
    reading,
    sayNumber(Math.min(...means)),
    `${sayNumber(Math.max(...means))} ${feature.unit}`,
    isMass,
  );
}

function brokenLink(assessed: Assessed, link: BrokenDateLink): string {
  const earlier = capitalised(dateName(assessed, link.earlier));
  const later = dateName(assessed, link.later);
  return brokenDates[link.problem](earlier, later);
}

function dateName({ part, facts }: Assessed, id: string): string {
  if (id === "built") return builtDate(facts.car.built === undefined ? "" : formatInterval(facts.car.built));
  const feature = featureById(part, id);
  const value = lastTold(id, facts.reports)?.value;
  if (feature === undefined || value === undefined) return id;
  return datedMark(feature.name, sayValue(feature, value));
}
