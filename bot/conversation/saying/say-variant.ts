/** What the handbook says of a variant, in few words: a cell of a table, the time it was fitted or sold, its origin. */
import {
  type Claim,
  type Feature,
  formatInterval,
  type Interval,
  type PartKind,
  parseDateText,
  stateName,
  type Variant,
  variantById,
} from "../../../knowledge/index.ts";
import { listed } from "../phrases/grammar.ts";
import {
  aboutTime,
  fittedWords,
  neverFitted,
  notRecorded,
  originWords,
  soldWords,
} from "../phrases/variants.ts";
import { sayNumber } from "./say-value.ts";

/** "rough, fibres showing (nearly always, 15 of 16); painted (rarely)", "1180 mm ± 1.5", or that nobody recorded it. */
export function sayClaim(feature: Feature, claim: Claim | undefined): string {
  if (claim === undefined) return notRecorded;
  if (isMeasured(claim)) {
    const unit = feature.kind === "measurement" ? ` ${feature.unit}` : "";
    return `${sayNumber(claim.mean)}${unit} ± ${sayNumber(claim.spread)}`;
  }
  return Object.entries(claim)
    .flatMap(([state, frequency]) =>
      typeof frequency === "string" ? [`${stateName(feature, state)} (${frequency})`] : [],
    )
    .join("; ");
}

/** Frequencies that make the first state no more than one of several. */
const undecided = /^(about half|sometimes|rarely|never)/;

/** The claim in one state or size: what the historian names first, seen most; undefined when no state stands out. */
export function sayClaimBriefly(feature: Feature, claim: Claim | undefined): string | undefined {
  if (claim === undefined) return undefined;
  if (isMeasured(claim)) return sayClaim(feature, claim);
  const [first] = Object.entries(claim).filter(([, frequency]) => typeof frequency === "string");
  return first === undefined || undecided.test(String(first[1])) ? undefined : stateName(feature, first[0]);
}

function isMeasured(claim: Claim): claim is Extract<Claim, { mean: number }> {
  return typeof claim.mean === "number";
}

/** When the works fitted it: "about May 1977 to March 1979 and September to November 1981"; undefined when never. */
export function fittedTimes(variant: Variant): string | undefined {
  const isExact = variant.fitted.every((period) => period.start === "exact" && period.end === "exact");
  const words = spansInWords(variant.fitted);
  if (words === undefined) return undefined;
  return isExact ? words : aboutTime(words);
}

/** When it could be bought over the counter; undefined when it could not. */
function soldTimes(variant: Variant): string | undefined {
  return spansInWords(variant.sold);
}

/** Origin and times in one line: "production, fitted about May 1977 to March 1979; sold 1979 to 1988". */
export function whereItComesFrom(variant: Variant): string {
  const fitted = fittedTimes(variant);
  const sold = soldTimes(variant);
  return [
    originWords(variant.origin),
    fitted === undefined ? (variant.origin === "production" ? neverFitted : undefined) : fittedWords(fitted),
    sold === undefined ? undefined : soldWords(sold),
  ]
    .filter((piece) => piece !== undefined)
    .join("; ");
}

/** The variant's name, or the id when the handbook has changed under the case. */
export function variantName(part: PartKind, id: string): string {
  return variantById(part, id)?.name ?? id;
}

function spansInWords(
  periods: readonly { readonly from: string; readonly to: string }[],
): string | undefined {
  const spans = periods
    .flatMap(({ from, to }) => spanOf(from, to) ?? [])
    .toSorted((one, other) => one.from - other.from || one.to - other.to);
  const words = merged(spans).map(formatInterval);
  return words.length === 0 ? undefined : listed(words);
}

function spanOf(from: string, to: string): Interval | undefined {
  const first = parseDateText(from);
  const last = parseDateText(to);
  return first && last && { from: first.from, to: last.to };
}

/** Spans in order of their beginning, those that touch or overlap made one. */
function merged(spans: readonly Interval[]): readonly Interval[] {
  const done: Interval[] = [];
  for (const span of spans) {
    const last = done.at(-1);
    if (last === undefined || span.from > last.to) done.push(span);
    else done.splice(-1, 1, { from: last.from, to: Math.max(last.to, span.to) });
  }
  return done;
}
