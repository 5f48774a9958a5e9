/**
 * A claim that has changed, put into its YAML with as few cuts as it takes: what is said of the other states, and the comments beside
 * them, stand there as before.
 */
import { isMap, isScalar, type YAMLMap } from "yaml";
import type { NewClaim } from "./claim-of-row.ts";
import { claimText, scalar, sourcesText } from "./claim-text.ts";
import { type Cut, columnOf, endOfValue, lineEnd, lineStart, nextLine, startOf } from "./yaml-cuts.ts";

type Claim = NonNullable<NewClaim>;

/** `key`, `value`: the feature and its claim in the tree of `text`. */
export function claimCuts(text: string, key: unknown, value: unknown, claim: Claim): readonly Cut[] {
  const whole = [{ from: startOf(value), to: endOfValue(text, value), put: claimText(claim) }];
  if (!isMap(value)) return whole;
  if (value.flow === true) return sameKeys(value, claim) ? changedValues(text, value, claim) : whole;
  const kept = value.items.filter((item) => textOf(claim, nameOf(item.key)) !== undefined);
  const last = kept.at(-1);
  // Nothing of the claim is left: it goes with its comments.
  if (last === undefined)
    return [{ from: startOf(key), to: endOfValue(text, value), put: `${nameOf(key)}: ${claimText(claim)}` }];
  const gone = value.items
    .filter((item) => !kept.includes(item))
    .map((item) => ({
      from: lineStart(text, startOf(item.key)),
      to: nextLine(text, endOfValue(text, item.value)),
      put: "",
    }));
  const known = new Set(kept.map((item) => nameOf(item.key)));
  const indent = " ".repeat(columnOf(text, startOf(value.items[0]?.key)));
  const added = keysOf(claim)
    .filter((name) => !known.has(name))
    .map((name) => `\n${indent}${scalar(name)}: ${textOf(claim, name)}`)
    .join("");
  const end = lineEnd(text, endOfValue(text, last.value));
  const more = added === "" ? [] : [{ from: end, to: end, put: added }];
  return [...changedValues(text, value, claim), ...gone, ...more];
}

function sameKeys(value: YAMLMap, claim: Claim): boolean {
  const names = value.items.map(({ key }) => nameOf(key));
  return names.length === keysOf(claim).length && keysOf(claim).every((name) => names.includes(name));
}

/** The values that read otherwise now. */
function changedValues(text: string, value: YAMLMap, claim: Claim): readonly Cut[] {
  return value.items.flatMap((item): readonly Cut[] => {
    const name = nameOf(item.key);
    const put = textOf(claim, name);
    if (put === undefined || isSaid(item.value, claim, name)) return [];
    return [{ from: startOf(item.key), to: endOfValue(text, item.value), put: `${scalar(name)}: ${put}` }];
  });
}

function isSaid(node: unknown, { said, sources }: Claim, name: string): boolean {
  if (name !== "sources") return isScalar(node) && node.value === said[name];
  const listed: unknown =
    typeof node === "object" && node !== null && "toJSON" in node ? (node as YAMLMap).toJSON() : [];
  return JSON.stringify(listed) === JSON.stringify(sources);
}

function keysOf({ said, sources }: Claim): readonly string[] {
  return [...Object.keys(said), ...(sources.length === 0 ? [] : ["sources"])];
}

/** What is to stand behind a key; undefined when the claim has no such key any more. */
function textOf({ said, sources }: Claim, name: string): string | undefined {
  if (name === "sources") return sources.length === 0 ? undefined : sourcesText(sources);
  const value = said[name];
  return value === undefined ? undefined : scalar(value);
}

function nameOf(key: unknown): string {
  return String(isScalar(key) ? key.value : key);
}
