/** The notes of a case as one plain text for a keeper: what was seen and in which words, where it stands, what is open. */
import { featureById, type Handbook, shortEdition } from "../../../knowledge/index.ts";
import { carInWords } from "../apply-car.ts";
import type { Assessed } from "../assessed.ts";
import type { Case } from "../case.ts";
import { featuresNamed } from "../features-named.ts";
import { edition } from "../phrases/answer.ts";
import { goalWords } from "../phrases/goals.ts";
import { listed } from "../phrases/grammar.ts";
import * as notes from "../phrases/hand-over.ts";
import { hushedBans } from "../phrases/strength.ts";
import { standingItems } from "./say-standing.ts";
import { sayReported, sayValue } from "./say-value.ts";
import { shownDuel } from "./shown-duel.ts";

/** Several lines, no markup; the same text for the same case and edition. */
export function handOver(handbook: Handbook, kept: Case, assessed: Assessed): string {
  const { identification, part, facts } = assessed;
  const carWords = Object.entries(carInWords(handbook.cars, facts.car)).map(
    ([label, value]) => `${label} ${value}`,
  );
  const weights = shownDuel(assessed)?.weights ?? [];
  const telling = weights.filter((one) => Math.abs(one.bans) >= hushedBans).map((one) => one.feature);
  const byWeight = (wanted: (bans: number) => boolean) =>
    weights.filter((one) => telling.includes(one.feature) && wanted(one.bans)).map((one) => one.feature);
  return [
    notes.title(kept.number, part.name),
    notes.wants(goalWords[facts.goal]),
    carWords.length === 0 ? notes.carUnknown : notes.car(carWords.join(", ")),
    ...factLines(kept, assessed),
    notes.stands(
      standingItems(assessed)
        .map(({ name, words }) => `${name}, ${words}`)
        .join("; "),
    ),
    factsLine(
      assessed,
      byWeight((bans) => bans > 0),
      notes.speaksFor,
    ),
    factsLine(
      assessed,
      byWeight((bans) => bans < 0),
      notes.speaksAgainst,
    ),
    factsLine(
      assessed,
      identification.contradictions.map((one) => one.feature),
      notes.pullsApart,
    ),
    namesLine(
      assessed,
      identification.toldApartBy.flatMap((one) => one.features),
      notes.open,
    ),
    edition(handbook.cover.name, shortEdition(handbook.edition)),
  ]
    .filter((line) => line !== undefined)
    .join("\n");
}

function factLines(kept: Case, { part, facts }: Assessed): readonly string[] {
  const told = facts.reports.filter((report) => report.value.kind !== "cannot-tell");
  const lines = told.flatMap((report) => {
    const feature = featureById(part, report.feature);
    if (feature === undefined) return [];
    const by = report.by === kept.owner ? "" : notes.byAnother;
    return [notes.fact(feature.name, sayValue(feature, report.value), report.words, by)];
  });
  const marks = facts.marks.map(({ words }) => notes.mark(words));
  const untold = facts.reports.filter((report) => report.value.kind === "cannot-tell");
  const unsure = featuresNamed(
    part,
    untold.map(({ feature }) => feature),
  ).map(({ name }) => name);
  return [
    ...(lines.length + marks.length === 0 ? [notes.seenNothing] : [notes.seen, ...lines, ...marks]),
    ...(unsure.length === 0 ? [] : [notes.couldNotTell(listed(unsure))]),
  ];
}

function factsLine(
  { part, facts }: Assessed,
  features: readonly string[],
  say: (facts: string) => string,
): string | undefined {
  const told = featuresNamed(part, features).map((feature) => sayReported(feature, facts.reports));
  return told.length === 0 ? undefined : say(listed(told));
}

function namesLine(
  { part }: Assessed,
  features: readonly string[],
  say: (features: string) => string,
): string | undefined {
  const names = featuresNamed(part, [...new Set(features)]).map(({ name }) => name);
  return names.length === 0 ? undefined : say(listed(names));
}
