/** Claims and variants as a historian would write them in YAML: one line a claim, quotes only where they are needed. */
import type { NewClaim } from "./claim-of-row.ts";
import type { NewVariant } from "./new-variant.ts";

/** `{ rough: "usually, 17 of 20", smooth: rarely, sources: [parts-list] }` */
export function claimText({ said, sources }: NonNullable<NewClaim>): string {
  const pieces = Object.entries(said).map(([key, value]) => `${scalar(key)}: ${scalar(value)}`);
  const named = sources.length === 0 ? [] : [`sources: ${sourcesText(sources)}`];
  return `{ ${[...pieces, ...named].join(", ")} }`;
}

/** `[parts-list, survey]` */
export function sourcesText(sources: readonly string[]): string {
  return `[${sources.map(scalar).join(", ")}]`;
}

/** Claims in one line: `{ width: { mean: 3, spread: 1 } }`. */
export function flowClaims(claims: readonly string[]): string {
  return claims.length === 0 ? "{}" : `{ ${claims.join(", ")} }`;
}

/** A new variant as a block of a list whose dashes stand at `indent`. */
export function newVariantText(variant: NewVariant, indent: number): string {
  const { id, name, origin, summary, from, to, claims } = variant;
  const period = `      - { from: ${quoted(from)}, to: ${quoted(to)} }`;
  const tells = [...claims].flatMap(([feature, claim]) =>
    claim === undefined ? [] : [`      ${feature}: ${claimText(claim)}`],
  );
  const lines = [
    `  - id: ${scalar(id)}`,
    `    name: ${scalar(name)}`,
    `    origin: ${origin}`,
    `    summary: ${scalar(summary)}`,
    origin === "production" ? "    fitted:" : "    sold:",
    period,
    ...(tells.length === 0 ? [] : ["    tells:", ...tells]),
  ];
  const shift = " ".repeat(indent);
  return lines.map((line) => shift + line.slice(2)).join("\n");
}

/** Words that need no quotes anywhere; everything else gets them, and a number stays one. */
export function scalar(value: string | number): string {
  if (typeof value === "number") return String(value);
  const isPlain = /^[A-Za-z][A-Za-z0-9 _/-]*$/u.test(value) && value.trim() === value;
  return isPlain && !/^(?:true|false|null|yes|no|on|off|nan|inf)$/iu.test(value) ? value : quoted(value);
}

function quoted(text: string): string {
  return JSON.stringify(text);
}
