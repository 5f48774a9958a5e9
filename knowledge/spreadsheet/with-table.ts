/**
 * The changes of a table put into a part kind's YAML by cutting and pasting at their places. The file is not written anew from
 * its values, because a historian's comments, order and line breaks are theirs.
 */
import { isMap, isScalar, isSeq, type Pair, parseDocument, type YAMLMap } from "yaml";
import { claimCuts } from "./claim-cuts.ts";
import type { NewClaim } from "./claim-of-row.ts";
import { claimText, flowClaims, newVariantText } from "./claim-text.ts";
import type { NewVariant } from "./new-variant.ts";
import { type Cut, columnOf, endOfValue, lineEnd, lineStart, nextLine, startOf } from "./yaml-cuts.ts";

export interface TableChanges {
  readonly claims: ReadonlyMap<string, ReadonlyMap<string, NewClaim>>;
  readonly added: readonly NewVariant[];
}

/** The text of parts/KIND.yaml with the changes in it; everything else stays byte for byte. `text` is a sound part kind. */
export function withTable(text: string, { claims, added }: TableChanges): string {
  const document = parseDocument(text);
  const variants = isMap(document.contents) ? document.contents.get("variants", true) : undefined;
  if (!isSeq(variants)) return text;
  const cuts = variants.items.flatMap((item): readonly Cut[] => {
    if (!isMap(item)) return [];
    const changes = claims.get(String(item.get("id")));
    return changes === undefined ? [] : variantCuts(text, item, changes);
  });
  const last = variants.items.at(-1);
  const end = isMap(last) ? lineEnd(text, endOfValue(text, last)) : undefined;
  if (added.length > 0 && isMap(last) && end !== undefined) {
    // A list begins with its first dash.
    const indent = columnOf(text, startOf(variants));
    const blocks = added.map((variant) => newVariantText(variant, indent));
    cuts.push({ from: end, to: end, put: `\n\n${blocks.join("\n\n")}` });
  }
  const lineBreak = text.includes("\r\n") ? "\r\n" : "\n";
  // From the end, and of two at one place the later one first: so each finds its place as it was.
  return cuts
    .toReversed()
    .toSorted((one, other) => other.from - one.from)
    .reduce(
      (rest, { from, to, put }) => rest.slice(0, from) + put.replaceAll("\n", lineBreak) + rest.slice(to),
      text,
    );
}

function variantCuts(text: string, variant: YAMLMap, changes: ReadonlyMap<string, NewClaim>): readonly Cut[] {
  const pair = variant.items.find(({ key }) => isScalar(key) && key.value === "tells");
  const tells = pair?.value;
  const fresh = [...changes].flatMap(([feature, claim]) =>
    claim === undefined ? [] : [`${feature}: ${claimText(claim)}`],
  );
  if (pair === undefined || !isMap(tells) || tells.items.length === 0) {
    return pair === undefined ? addTells(text, variant, fresh) : [rewrite(text, variant, pair, fresh)];
  }
  const kept = tells.items.filter(({ key }) => {
    const feature = String(isScalar(key) ? key.value : key);
    return !changes.has(feature) || changes.get(feature) !== undefined;
  });
  if (tells.flow === true || kept.length === 0) {
    const old = tells.items.flatMap((item) => {
      const feature = String(isScalar(item.key) ? item.key.value : item.key);
      return changes.has(feature) ? [] : [text.slice(startOf(item.key), endOfValue(text, item.value))];
    });
    return [rewrite(text, variant, pair, [...old, ...fresh])];
  }
  return blockCuts(text, tells, changes);
}

/** Claims of a block are replaced, taken out by the line, or added after the last one that stays. */
function blockCuts(text: string, tells: YAMLMap, changes: ReadonlyMap<string, NewClaim>): readonly Cut[] {
  const cuts: Cut[] = [];
  const there = new Set<string>();
  let end = 0;
  for (const { key, value } of tells.items) {
    const feature = String(isScalar(key) ? key.value : key);
    const [from, to] = [startOf(key), endOfValue(text, value)];
    there.add(feature);
    const claim = changes.get(feature);
    if (changes.has(feature) && claim === undefined) {
      cuts.push({ from: lineStart(text, from), to: nextLine(text, to), put: "" });
      continue;
    }
    end = to;
    if (claim !== undefined) cuts.push(...claimCuts(text, key, value, claim));
  }
  const indent = " ".repeat(columnOf(text, startOf(tells.items[0]?.key)));
  const put = [...changes]
    .flatMap(([feature, claim]) =>
      claim === undefined || there.has(feature) ? [] : [`\n${indent}${feature}: ${claimText(claim)}`],
    )
    .join("");
  const after = lineEnd(text, end);
  return put === "" ? cuts : [...cuts, { from: after, to: after, put }];
}

/** `tells` as a whole, a claim a line; without any claim it goes. */
function rewrite(text: string, variant: YAMLMap, pair: Pair, claims: readonly string[]): Cut {
  const from = startOf(pair.key);
  const to = pair.value === null ? from : endOfValue(text, pair.value);
  if (claims.length === 0 && variant.flow !== true) {
    return { from: lineStart(text, from), to: nextLine(text, to), put: "" };
  }
  const indent = columnOf(text, from);
  if (variant.flow === true) return { from, to, put: `tells: ${flowClaims(claims)}` };
  return { from, to, put: tellsText(claims, indent) };
}

function addTells(text: string, variant: YAMLMap, claims: readonly string[]): readonly Cut[] {
  if (claims.length === 0) return [];
  const last = variant.items.at(-1);
  const end = endOfValue(text, last?.value ?? last?.key);
  if (variant.flow === true) return [{ from: end, to: end, put: `, tells: ${flowClaims(claims)}` }];
  const indent = columnOf(text, startOf(variant.items[0]?.key));
  const after = lineEnd(text, end);
  return [{ from: after, to: after, put: `\n${" ".repeat(indent)}${tellsText(claims, indent)}` }];
}

function tellsText(claims: readonly string[], indent: number): string {
  return ["tells:", ...claims.map((claim) => `${" ".repeat(indent + 2)}${claim}`)].join("\n");
}
