/** The duel between the first and its rival as a balance: each fact with its weight, its strength and its sources. */
import { featureById, type Handbook } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import type { Assessed } from "../assessed.ts";
import { saysNothingEitherWay } from "../phrases/answer.ts";
import { hushedBans, strengthOf } from "../phrases/strength.ts";
import { nameInSentence } from "./say-standing.ts";
import { sayReported, sayReportedPlainly } from "./say-value.ts";
import { shownDuel } from "./shown-duel.ts";
import { shortSources, sourcesOfTell } from "./sources-of.ts";

/** More facts that say nothing are only counted. */
const mostHushed = 3;

/** The balance, heaviest first, and a line on the facts that say nothing; empty without facts or without a rival. */
export function sayEvidence(handbook: Handbook, assessed: Assessed): readonly Block[] {
  const { identification, part, facts } = assessed;
  const duel = shownDuel(assessed);
  if (duel === null || duel.weights.length === 0) return [];
  const leaders = identification.ranking.slice(0, 2).map((one) => one.variant);
  const told = duel.weights.flatMap(({ feature: id, bans }) => {
    const feature = featureById(part, id);
    if (feature === undefined) return [];
    const { reports } = facts;
    return [
      { bans, id, words: sayReportedPlainly(feature, reports), briefly: sayReported(feature, reports) },
    ];
  });
  const loud = told
    .filter((one) => Math.abs(one.bans) >= hushedBans)
    .toSorted((one, other) => Math.abs(other.bans) - Math.abs(one.bans));
  const hushed = told.filter((one) => Math.abs(one.bans) < hushedBans).map((one) => one.briefly);
  const items = loud.map(({ words, bans, id }) => ({
    words,
    bans,
    strength: strengthOf(bans),
    sources: shortSources(handbook, sourcesOfTell(part, id, leaders)),
  }));
  const balance: Block = {
    kind: "evidence",
    first: nameInSentence(assessed, duel.first),
    rival: nameInSentence(assessed, duel.rival),
    items,
  };
  const quiet: Block = {
    kind: "text",
    text: saysNothingEitherWay(hushed.slice(0, mostHushed), hushed.length - mostHushed),
  };
  return [...(items.length === 0 ? [] : [balance]), ...(hushed.length === 0 ? [] : [quiet])];
}
