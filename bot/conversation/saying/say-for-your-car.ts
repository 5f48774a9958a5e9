/** What the works fitted to the car: a line beside a verdict, or the whole answer when that was the question. */
import { formatInterval, type Handbook, sayProbability, type Variant } from "../../../knowledge/index.ts";
import type { Block } from "../../reply.ts";
import { asBuiltShares } from "../assess.ts";
import type { Assessed } from "../assessed.ts";
import type { Knowledge } from "../knowledge.ts";
import * as words from "../phrases/answer.ts";
import { asBuiltLead } from "../phrases/standing.ts";
import { carsFittedTo } from "./cars-fitted-to.ts";
import { fittedTimes, whereItComesFrom } from "./say-variant.ts";
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
  const shares = sharesLargestFirst(assessed);
  if (shares.length === 0) return words.noneFitted(part.name, formatInterval(facts.car.built));
  const named = shares.filter((one, index) => index === 0 || one.share >= worthASentence).slice(0, 3);
  const said = named.map((one) => words.variantShare(one.variant.name, sayProbability(one.share)));
  return withSources(
    handbook,
    words.carShouldHave(formatInterval(facts.car.built), said),
    named.map((one) => one.variant),
  );
}

/** The line with the sources of the variants' fitted times behind it. */
function withSources(handbook: Handbook, line: string, variants: readonly Variant[]): string {
  const ids = variants.flatMap((variant) => variant.fitted.flatMap((period) => period.sources));
  return `${line} ${inBrackets(handbook, ids)}`.trim();
}

function asBuiltAnswer(knowledge: Knowledge, assessed: Assessed): readonly Block[] {
  const { facts } = assessed;
  const shares = sharesLargestFirst(assessed);
  const [first, second] = shares;
  const date = facts.car.built === undefined ? undefined : formatInterval(facts.car.built);
  if (first === undefined) return noneFitted(knowledge.handbook, assessed, date);
  const rows = shares
    .filter((one) => one.share >= worthARow)
    .map(({ variant, share }) => [
      variant.name,
      sayProbability(share),
      whereItComesFrom(variant),
      sourcesOfTimes(knowledge.handbook, variant),
    ]);
  const isOverlap = second !== undefined && second.share >= worthASentence && date !== undefined;
  return [
    {
      kind: "text",
      text: shouldHaveLine(first.variant.name, first.share, date !== undefined),
      tone: "answer",
    },
    ...(isOverlap
      ? [{ kind: "text", text: words.inChangeover(date, first.variant.name, second.variant.name) } as const]
      : []),
    { kind: "table", caption: asBuiltLead, head: words.asBuiltHead, rows },
  ];
}

/** That no kind was fitted to such a car, and when which was fitted to others. */
function noneFitted(handbook: Handbook, { part }: Assessed, date: string | undefined): readonly Block[] {
  const rows = part.variants
    .filter(({ fitted }) => fitted.length > 0)
    .map((variant) => [
      variant.name,
      carsFittedTo(handbook, [variant]),
      fittedTimes(variant) ?? "",
      sourcesOfTimes(handbook, variant),
    ]);
  const text = words.noneFitted(part.name, date);
  return [
    { kind: "text", text, tone: "answer" },
    ...(rows.length === 0
      ? []
      : [
          {
            kind: "table",
            caption: words.fittedToOthers,
            head: words.fittedToOthersHead,
            rows,
          } as const,
        ]),
  ];
}

function sourcesOfTimes(handbook: Handbook, { fitted }: Variant): string {
  return inBrackets(
    handbook,
    fitted.flatMap(({ sources }) => sources),
  );
}

/** Below one half there is no verdict, only a likeliest one. */
function shouldHaveLine(name: string, share: number, isDated: boolean): string {
  const probability = sayProbability(share);
  return share >= 0.5
    ? words.shouldHave(name, probability)
    : words.shouldHaveOpen(name, probability, isDated);
}

interface Share {
  readonly variant: Variant;
  readonly share: number;
}

function sharesLargestFirst({ compiled, facts, part }: Assessed): readonly Share[] {
  const shares = asBuiltShares(compiled, facts);
  return part.variants
    .map((variant) => ({ variant, share: shares.get(variant.id) ?? 0 }))
    .filter(({ share }) => share > 0)
    .toSorted((one, other) => other.share - one.share);
}
