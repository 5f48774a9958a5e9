/** What a part kind's variants claim: on what it rests, and whether it can be true beside what else is said. */
import { notThere } from "../evidence/report.ts";
import { parseFrequency } from "../handbook/frequency.ts";
import type { Claim, Feature, PartKind, Variant } from "../handbook/schema.ts";
import type { Path } from "../handbook/yaml-reading.ts";
import { type Margin, note } from "./remark.ts";
import { shareOfText } from "./share-of-text.ts";

/** A word and a count may differ by this much before one of them must be wrong. */
const WORD_AND_COUNT = 0.35;
/** When every state is named, their shares should come to about the whole. */
const SHORT = 0.6;
/** A state that is seen less often than this is as good as not there. */
const HARDLY = 0.05;
/** Units and their factors: inches for millimetres, centimetres for millimetres, grams for kilograms, ounces, pounds. */
const UNIT_SLIPS = [10, 25.4, 1000, 28.35, 2.2046, 453.6] as const;

export function remarkClaims(margin: Margin, part: PartKind): void {
  remarkOverruled(margin, part);
  remarkMisbeliefs(margin, part);
  const features = new Map(part.features.map((feature) => [feature.id, feature]));
  for (const [index, variant] of part.variants.entries()) {
    const path = ["variants", index];
    remarkUnsourced(margin, variant, path);
    for (const [id, claim] of Object.entries(variant.tells)) {
      const feature = features.get(id);
      if (feature !== undefined) remarkClaim(margin, part, variant, feature, claim, [...path, "tells", id]);
    }
    if (Object.keys(variant.tells).length > 0 || isInCause(part, variant)) continue;
    note(margin, {
      severity: "doubt",
      code: "variant-silent",
      path: [...path, "id"],
      message: `nothing is claimed about ${variant.id}: no look at a part can ever point to it`,
      mend: "add tells: with a state and a frequency for each feature you know of",
    });
  }
}

function remarkMisbeliefs(margin: Margin, part: PartKind): void {
  for (const [index, misbelief] of part.misbeliefs.entries()) {
    const { claim, correction, sources } = misbelief;
    const path = ["misbeliefs", index];
    if (sources.length === 0) {
      note(margin, {
        severity: "doubt",
        code: "claim-unsourced",
        path,
        message: `the correction of ${misbelief.id} names no source, and somebody is about to be contradicted`,
        mend: "add sources: [ … ]",
      });
    }
    const isReal = correction.trim().split(/\s+/u).length > 2 && plain(correction) !== plain(claim);
    if (isReal) continue;
    note(margin, {
      severity: "doubt",
      code: "misbelief-uncorrected",
      path: [...path, "correction"],
      message: `the correction of ${misbelief.id} corrects nothing`,
      mend: "say in a sentence what is true instead, and how one knows",
    });
  }
}

function plain(text: string): string {
  return text.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, " ");
}

function isInCause(part: PartKind, variant: Variant): boolean {
  return part.causes.some((cause) => Object.hasOwn(cause.variants, variant.id));
}

/** A source of the variant stands for its tells, and a source of its own for a period; one line for all that is left. */
function remarkUnsourced(margin: Margin, variant: Variant, path: Path): void {
  if (variant.sources.length > 0) return;
  const tells = Object.entries(variant.tells).filter(([, { sources }]) => sources.length === 0);
  const periods = [
    ...variant.fitted.flatMap(({ sources }, index) => (sources.length === 0 ? [["fitted", index]] : [])),
    ...variant.sold.flatMap(({ sources }, index) => (sources.length === 0 ? [["sold", index]] : [])),
  ];
  const places: readonly Path[] = [...periods, ...tells.map(([id]) => ["tells", id])];
  const [first] = places;
  if (first === undefined) return;
  const names = tells.map(([id]) => id);
  const shown =
    names.length > 4 ? `${names.slice(0, 4).join(", ")} and ${names.length - 4} more` : names.join(", ");
  const what = [
    ...(periods.length > 0 ? [periods.length === 1 ? "its period" : "its periods"] : []),
    ...(names.length > 0 ? [`what is said of ${shown}`] : []),
  ].join(" and ");
  note(margin, {
    severity: "doubt",
    code: "claim-unsourced",
    path: [...path, ...first],
    at: "key",
    message: `${variant.id} names no source for ${what}`,
    mend: "add sources: [ … ] to the claim, or one for the whole variant",
  });
}

function remarkClaim(
  margin: Margin,
  part: PartKind,
  variant: Variant,
  feature: Feature,
  claim: Claim,
  path: Path,
): void {
  if (typeof claim.mean === "number") {
    remarkCondition(margin, variant, feature, path);
    remarkUnit(margin, part, variant, feature, claim.mean, path);
    return;
  }
  const row = Object.entries(claim).flatMap(([state, said]): readonly (readonly [string, string])[] =>
    state !== "sources" && typeof said === "string" ? [[state, said]] : [],
  );
  for (const [state, said] of row) remarkWordAndCount(margin, said, [...path, state]);
  if (row.some(([state, said]) => state !== notThere && shareOfText(said) > HARDLY)) {
    remarkCondition(margin, variant, feature, path);
  }
  remarkShares(margin, feature, row, path);
}

function remarkWordAndCount(margin: Margin, said: string, path: Path): void {
  const { word, count } = parseFrequency(said) ?? {};
  if (word === undefined || count === undefined || count.of < 3) return;
  const share = count.seen / count.of;
  if (Math.abs(share - word.mean) <= WORD_AND_COUNT) return;
  note(margin, {
    severity: "doubt",
    code: "claim-word-and-count",
    path,
    message: `"${said}": the count says ${Math.round(share * 100)} %, and the word says something else`,
    mend: "correct the word or the count; a count alone is enough",
  });
}

function remarkShares(
  margin: Margin,
  feature: Feature,
  row: readonly (readonly [string, string])[],
  path: Path,
): void {
  if (feature.kind !== "states") return;
  const shares = row.map(([, said]) => shareOfText(said));
  const sum = shares.reduce((total, share) => total + share, 0);
  const isComplete = feature.states.every(({ id }) => row.some(([state]) => state === id));
  if (isComplete && sum < SHORT) {
    note(margin, {
      severity: "doubt",
      code: "claim-short",
      path,
      at: "key",
      message: `every state of ${feature.id} is named, but together they come to about ${Math.round(sum * 100)} %`,
      mend: "make the commonest one usual, or add not-there if many lack it",
    });
  }
  const always = row.find(([, said]) => said.trim().toLowerCase().startsWith("always"));
  const beside = row.find(([state, said]) => state !== always?.[0] && shareOfText(said) > 0.2);
  if (always === undefined || beside === undefined || sum > 1.5) return;
  note(margin, {
    severity: "doubt",
    code: "claim-always-and-more",
    path: [...path, beside[0]],
    message: `${always[0]} is always seen, and yet ${beside[0]} ${beside[1]}`,
    mend: `make one of them rarer: "always" leaves no room`,
  });
}

/** A claim about a feature whose condition the same variant rules out. */
function remarkCondition(margin: Margin, variant: Variant, feature: Feature, path: Path): void {
  for (const [named, states] of Object.entries(feature.when)) {
    const claim = variant.tells[named];
    if (claim === undefined || typeof claim.mean === "number") continue;
    const said = Object.entries(claim).filter(
      ([state, text]) => state !== "sources" && typeof text === "string",
    );
    const open = said.reduce(
      (sum, [state, text]) => (states.includes(state) ? sum + shareOfText(String(text)) : sum),
      0,
    );
    const whole = said.reduce((sum, [, text]) => sum + shareOfText(String(text)), 0);
    if (said.length === 0 || open > HARDLY || whole < 0.7) continue;
    note(margin, {
      severity: "doubt",
      code: "claim-against-condition",
      path,
      at: "key",
      message: `${feature.id} is asked only when ${named} is ${states.join(" or ")}, which ${variant.id} never is`,
      mend: `write { not-there: always }, correct ${named} of this variant, or widen the condition`,
    });
  }
}

/** A cause replaces the tells of its features on the variants it names. */
function remarkOverruled(margin: Margin, part: PartKind): void {
  for (const cause of part.causes) {
    const places = part.variants.flatMap(({ id, tells }, index): readonly Path[] =>
      Object.hasOwn(cause.variants, id)
        ? Object.keys(tells)
            .filter((feature) => Object.hasOwn(cause.features, feature))
            .map((feature) => ["variants", index, "tells", feature])
        : [],
    );
    const [first] = places;
    if (first === undefined) continue;
    const features = [...new Set(places.map((path) => String(path.at(-1))))].join(", ");
    const variants = new Set(places.map((path) => path[1])).size;
    note(margin, {
      severity: "wish",
      code: "claim-overruled",
      path: first,
      at: "key",
      message: `the cause ${cause.id} says how ${features} looks on ${variants} variants that claim it as well: their own claims count for nothing`,
      mend: "delete the claims, or take the variants out of the cause",
    });
  }
}

/** A mean that is another variant's, but for a factor between units. */
function remarkUnit(
  margin: Margin,
  part: PartKind,
  variant: Variant,
  feature: Feature,
  mean: number,
  path: Path,
): void {
  if (feature.kind !== "measurement") return;
  const others = part.variants.flatMap((other) => {
    const claim = other === variant ? undefined : other.tells[feature.id];
    return typeof claim?.mean === "number" ? [{ id: other.id, mean: claim.mean }] : [];
  });
  const middle = others.map((other) => other.mean).toSorted((one, two) => one - two)[others.length >> 1];
  if (middle === undefined || others.length < 2) return;
  const ratio = mean / middle;
  const slip = UNIT_SLIPS.find(
    (factor) => Math.abs(Math.log(ratio / factor)) < 0.15 || Math.abs(Math.log(ratio * factor)) < 0.15,
  );
  if (slip === undefined || Math.abs(Math.log(ratio)) < 1.5) return;
  note(margin, {
    severity: "doubt",
    code: "claim-unit",
    path: [...path, "mean"],
    message: `${mean} ${feature.unit} is about ${slip} times ${ratio > 1 ? "more" : "less"} than the other variants measure (about ${middle})`,
    mend: `write it in ${feature.unit}`,
  });
}
