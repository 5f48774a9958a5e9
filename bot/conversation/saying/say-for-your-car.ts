/** What the works fitted to the car: a line beside a verdict, or the whole answer when that was the question. */
import {
  formatInterval,
  type Handbook,
  sayProbability,
  type Variant,
  variantById,
} from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { asBuiltShares } from "../assess.ts";
import type { Assessed } from "../assessed.ts";
import type { Knowledge } from "../knowledge.ts";
import * as words from "../phrases/answer.ts";
import { asBuiltLead } from "../phrases/standing.ts";
import { fittedTimes, variantName, whereItComesFrom } from "./say-variant.ts";
import { inBrackets } from "./sources-of.ts";

/** Shares of the as-built mix below this are shelf stock and not worth a row. */
const worthARow = 0.03;
const worthASentence = 0.1;

export function sayForYourCar(knowledge: Knowledge, assessed: Assessed): readonly Block[] {
  if (assessed.goal === "what-should-it-have") return asBuiltAnswer(knowledge, assessed);
  const line = besideVerdict(knowledge.handbook, assessed);
  return line === undefined ? [] : [{ kind: "text", text: line }];
}

function besideVerdict(handbook: Handbook, assessed: Assessed): string | undefined {
  const { facts, identification, part } = assessed;
  if (facts.car.isLoosePart === true) return words.loosePart;
  const [likeliest] = identification.ranking;
  const variant = part.variants.find((one) => one.id === likeliest?.variant);
  if (variant === undefined) return undefined;
  if (facts.car.built === undefined) {
    if (identification.verdict === null) return undefined;
    const times = fittedTimes(variant);
    if (times === undefined) return words.carNotToldAndNeverFitted(variant.name);
    const isUnknown = facts.unanswerable.includes("car.built");
    const line = isUnknown ? words.carNotKnown : words.carNotTold;
    return withSources(handbook, line(variant.name, times), [variant]);
  }
  const named = sharesLargestFirst(assessed)
    .filter((one, index) => index === 0 || one.share >= worthASentence)
    .slice(0, 3);
  if (named.length === 0) return undefined;
  const shares = named.map((one) =>
    words.variantShare(variantName(part, one.variant), sayProbability(one.share)),
  );
  return withSources(
    handbook,
    words.carShouldHave(formatInterval(facts.car.built), shares),
    named.flatMap((one) => variantById(part, one.variant) ?? []),
  );
}

/** The line with the sources of the variants' fitted times behind it. */
function withSources(handbook: Handbook, line: string, variants: readonly Variant[]): string {
  const ids = variants.flatMap((variant) => variant.fitted.flatMap((period) => period.sources));
  return `${line} ${inBrackets(handbook, ids)}`.trim();
}

function asBuiltAnswer(knowledge: Knowledge, assessed: Assessed): readonly Block[] {
  const { part, facts } = assessed;
  const shares = sharesLargestFirst(assessed);
  const [first, second] = shares;
  if (first === undefined) return [];
  const date = facts.car.built === undefined ? undefined : formatInterval(facts.car.built);
  const rows = shares
    .filter((one) => one.share >= worthARow)
    .map(({ variant: id, share }) => {
      const variant = part.variants.find((one) => one.id === id);
      const sources = variant?.fitted.flatMap((period) => period.sources) ?? [];
      return [
        variantName(part, id),
        sayProbability(share),
        variant === undefined ? "" : whereItComesFrom(variant),
        inBrackets(knowledge.handbook, sources),
      ];
    });
  const isOverlap = second !== undefined && second.share >= 0.1 && date !== undefined;
  const overlap: Block = {
    kind: "text",
    text: words.inChangeover(
      date ?? "",
      variantName(part, first.variant),
      variantName(part, second?.variant ?? ""),
    ),
  };
  return [
    {
      kind: "text",
      text: shouldHaveLine(variantName(part, first.variant), first.share, date !== undefined),
      tone: "answer",
    },
    ...(isOverlap ? [overlap] : []),
    { kind: "table", caption: asBuiltLead, head: words.asBuiltHead, rows },
  ];
}

/** Below one half there is no verdict, only a likeliest one. */
function shouldHaveLine(name: string, share: number, isDated: boolean): string {
  const probability = sayProbability(share);
  return share >= 0.5
    ? words.shouldHave(name, probability)
    : words.shouldHaveOpen(name, probability, isDated);
}

function sharesLargestFirst(
  assessed: Assessed,
): readonly { readonly variant: string; readonly share: number }[] {
  return [...asBuiltShares(assessed.compiled, assessed.facts)]
    .map(([variant, share]) => ({ variant, share }))
    .toSorted((one, other) => other.share - one.share);
}
