/**
 * What a part kind's page is worth, by playing invented owners drawn from its own tables: how much is asked, how often the answer is
 * wrong and for what it is taken, which of the historian's next steps would mend most of that, and which years are not covered.
 */
import {
  bestTell,
  type CompiledPart,
  cheapestTell,
  compilePart,
  coverageByYear,
  type Handbook,
  modelTables,
  notInHandbook,
  type PartKind,
  unsaidTell,
  type Variant,
  variantById,
  type YearCoverage,
} from "../../../knowledge/index.ts";
import { chanceFrom } from "../simulation/chance.ts";
import { drawCase } from "../simulation/drawn-case.ts";
import { questionTableOf } from "../simulation/question-table-of.ts";
import { type Scores, scoresOf } from "../simulation/scores.ts";
import { type AskedCase, byWorth, player } from "../simulation/ways-of-asking.ts";

/** A pair that is taken for each other less often is not what would help most. */
const WORTH_TELLING = 0.01;

export interface Confusion {
  /** Two variants, or a variant and undefined for one that is not in the handbook; in the handbook's order. */
  readonly pair: readonly [Variant, Variant | undefined];
  /** Share of all cases in which one of them was taken for the other. */
  readonly share: number;
}

export interface NewFact {
  readonly pair: readonly [Variant, Variant];
  /** What to write, as `check` says it. */
  readonly advice: string;
  /** Share of all cases that are wrong now, and would be right if the two were told apart. */
  readonly gain: number;
}

export interface NewObservation {
  readonly feature: string;
  readonly variant: string;
  /** Share of all cases in which the feature is asked of a part that is this variant. */
  readonly use: number;
}

export interface PartReport {
  readonly part: PartKind;
  readonly cases: number;
  readonly scores: Scores;
  /** Share of cases in which each question is put, the most asked first. */
  readonly asked: readonly { readonly name: string; readonly share: number }[];
  /** At most five, the commonest first. */
  readonly confusions: readonly Confusion[];
  /** Share of all cases in which something was taken for what the handbook does not have, or the other way round. */
  readonly outside: number;
  /** Undefined when nothing in the handbook is taken for another. */
  readonly fact: NewFact | undefined;
  /** The claim that rests on a word alone and is leant on most; undefined when all are counted. */
  readonly observation: NewObservation | undefined;
  readonly coverage: readonly YearCoverage[];
}

/** The report on one part kind of a handbook, from so many cases. The same seed gives the same report. */
export function partReport(handbook: Handbook, part: PartKind, cases: number, seed: number): PartReport {
  const compiled = compilePart(handbook, part.id);
  if (compiled === undefined) throw new RangeError(`partReport: ${part.id} is no part kind`);
  const table = questionTableOf(modelTables(compiled, {}, "which-variant"));
  const chance = chanceFrom(seed);
  const play = player(table, byWorth);
  const played = Array.from({ length: cases }, () => play(drawCase(table, chance)));
  const confusions = confusionsOf(part, played);
  return {
    part,
    cases,
    scores: scoresOf(played, table.lambda),
    asked: askedOf(part, played),
    confusions: confusions.slice(0, 5),
    outside: confusions.reduce((sum, { pair, share }) => (pair[1] === undefined ? sum + share : sum), 0),
    fact: factOf(compiled, confusions),
    observation: observationOf(part, played),
    coverage: coverageByYear(handbook, part),
  };
}

function firstOf({ classes }: AskedCase): string {
  const [first = ["", 0] as const, ...others] = classes;
  return others.reduce((best, one) => (one[1] > best[1] ? one : best), first)[0];
}

function confusionsOf(part: PartKind, played: readonly AskedCase[]): readonly Confusion[] {
  const order = [...part.variants.map(({ id }) => id), notInHandbook];
  const counts = new Map<string, number>();
  for (const one of played) {
    const said = firstOf(one);
    if (said === one.trueClass) continue;
    const key = [said, one.trueClass].toSorted((a, b) => order.indexOf(a) - order.indexOf(b)).join(" ");
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return [...counts]
    .toSorted(([one, few], [other, many]) => many - few || (one < other ? -1 : 1))
    .flatMap(([key, count]): readonly Confusion[] => {
      const [first, second] = key.split(" ").map((id) => variantById(part, id));
      return first === undefined ? [] : [{ pair: [first, second], share: count / played.length }];
    });
}

function factOf(compiled: CompiledPart, confusions: readonly Confusion[]): NewFact | undefined {
  const { part } = compiled;
  for (const { pair, share } of confusions) {
    const [first, second] = pair;
    if (second === undefined || share < WORTH_TELLING) continue;
    const best = bestTell(compiled, first, second);
    const counting =
      best === undefined
        ? undefined
        : `what tells them apart best so far is ${best.name}: ${best.kind === "measurement" ? "measure" : "count"} it on ten or more of each`;
    const advice = unsaidTell(part, first, second) ?? counting ?? cheapestTell(part, first, second);
    return { pair: [first, second], advice, gain: share };
  }
  return undefined;
}

function askedOf(part: PartKind, played: readonly AskedCase[]): PartReport["asked"] {
  const counts = new Map<string, number>();
  for (const id of played.flatMap(({ asked }) => asked)) counts.set(id, (counts.get(id) ?? 0) + 1);
  return [...counts]
    .toSorted(([one, few], [other, many]) => many - few || (one < other ? -1 : 1))
    .map(([id, count]) => ({
      name: part.features.find((feature) => feature.id === id)?.name ?? carQuestionNames[id] ?? id,
      share: count / played.length,
    }));
}

const carQuestionNames: Readonly<Record<string, string>> = {
  "car.built": "build date",
  "car.trim": "trim",
  "car.market": "market",
  "car.model": "model",
};

function observationOf(part: PartKind, played: readonly AskedCase[]): NewObservation | undefined {
  const uses = part.features.flatMap((feature) =>
    part.variants.flatMap((variant) => {
      if (feature.kind !== "states" || isCounted(variant, feature.id)) return [];
      const leant = played.filter(
        ({ trueClass, asked }) => trueClass === variant.id && asked.includes(feature.id),
      );
      return [{ feature: feature.name, variant: variant.name, use: leant.length / played.length }];
    }),
  );
  const [first, ...others] = uses.filter(({ use }) => use > 0);
  return first && others.reduce((best, one) => (one.use > best.use ? one : best), first);
}

function isCounted({ tells }: Variant, feature: string): boolean {
  const said = Object.values(tells[feature] ?? {});
  return said.some((text) => typeof text === "string" && /\d of \d/u.test(text));
}
