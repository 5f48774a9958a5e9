/** "compare X and Y", "how do I tell X from Y": the two side by side, then what tells them apart, best first. */
import type { Feature, PartKind, Variant } from "../../knowledge/index.ts";
import { findPart } from "../conversation/knowledge.ts";
import { effortWords } from "../conversation/phrases/effort.ts";
import { listed } from "../conversation/phrases/grammar.ts";
import {
  byItsDate,
  compareCaption,
  compareNeedsPart,
  compareWhich,
  materialRow,
  nothingTellsApart,
  oneOnlyNamed,
  originRow,
  toldApartLead,
  toldApartLine,
} from "../conversation/phrases/variants.ts";
import { cautionsBlock } from "../conversation/saying/say-cautions.ts";
import { sayClaim, sayClaimBriefly, whereItComesFrom } from "../conversation/saying/say-variant.ts";
import { inBrackets, sourcesOfTell } from "../conversation/saying/sources-of.ts";
import { tellsBetween } from "../conversation/tells-between.ts";
import type { Block, Choice } from "../reply.ts";
import { kindsNamed } from "./kinds-named.ts";
import type { Scene } from "./scene.ts";

const mostTells = 5;

/** Lays the named variants side by side, by `said` or as they were read; with none named, the two that stand first in the case. */
export function compare(
  scene: Scene,
  partId: string | null,
  read: readonly string[],
  said: string,
): readonly Block[] {
  const part = findPart(scene.knowledge, partId) ?? scene.assessed?.part;
  if (part === undefined) return [{ kind: "text", text: compareNeedsPart }];
  const named = kindsNamed(part, said);
  const variants = chosen(scene, part, named.length > 1 ? named : read);
  const [only] = variants;
  if (variants.length > 1) return sideBySide(scene, part, variants);
  const text = only === undefined ? compareWhich : oneOnlyNamed(only.name);
  return [
    { kind: "text", text },
    { kind: "choices", choices: otherVariants(part, only) },
  ];
}

function chosen(scene: Scene, part: PartKind, named: readonly string[]): readonly Variant[] {
  const known = named.flatMap((id) => part.variants.filter((variant) => variant.id === id));
  if (known.length > 0) return known;
  const { assessed } = scene;
  if (assessed?.part.id !== part.id) return [];
  return assessed.identification.ranking
    .flatMap(({ variant: id }) => part.variants.filter((variant) => variant.id === id))
    .slice(0, 2);
}

function otherVariants(part: PartKind, only: Variant | undefined): readonly Choice[] {
  const compared = only ?? part.variants[0];
  return part.variants
    .filter((variant) => variant !== compared)
    .map(({ id, name }) => ({
      id: `compare-${id}`,
      label: name,
      say: `compare ${compared?.name ?? ""} and ${name}`,
    }));
}

function sideBySide(scene: Scene, part: PartKind, variants: readonly Variant[]): readonly Block[] {
  const names = variants.map((variant) => variant.name);
  const tells = tellsBetween(
    scene.knowledge,
    part,
    variants.map((variant) => variant.id),
  ).map((tell) => tell.feature);
  // Of what the handbook records on one of them only, nobody can say how they differ.
  const recorded = tells.filter((feature) => isRecorded(feature, variants));
  const features = (recorded.length > 0 ? recorded : tells).slice(0, mostTells);
  const rows = [
    [originRow, ...variants.map(whereItComesFrom)],
    [materialRow, ...variants.map((variant) => variant.material ?? "")],
    ...features.map((feature) => [
      feature.name,
      ...variants.map((variant) => sayClaim(feature, variant.tells[feature.id])),
    ]),
  ].filter(([name, ...cells]) => isWorthARow(name ?? "", cells));
  return [
    { kind: "table", caption: compareCaption(listed(names)), head: ["", ...names], rows },
    // The list below says how each is looked at, so what hurts in it comes first.
    ...[cautionsBlock(features.flatMap((feature) => feature.cautions))].filter(
      (block) => block !== undefined,
    ),
    apart(scene, part, variants, features),
  ];
}

function isRecorded(feature: Feature, variants: readonly Variant[]): boolean {
  return feature.kind === "date" || variants.every((variant) => variant.tells[feature.id] !== undefined);
}

/** A date mark is cut on both alike, and tells by its date: the same words in every column are no row. */
function isWorthARow(name: string, cells: readonly string[]): boolean {
  const isOfAll = name === originRow || name === materialRow;
  return cells.some((cell) => cell !== "") && (isOfAll || new Set(cells).size > 1);
}

function apart(
  scene: Scene,
  part: PartKind,
  variants: readonly Variant[],
  features: readonly Feature[],
): Block {
  if (features.length === 0) return { kind: "text", text: nothingTellsApart };
  const ids = variants.map((variant) => variant.id);
  return {
    kind: "list",
    lead: toldApartLead,
    items: features.map((feature) =>
      toldApartLine(
        feature.name,
        differences(variants, feature),
        effortWords(feature.effort),
        feature.check,
        inBrackets(scene.knowledge.handbook, sourcesOfTell(part, feature.id, ids)),
      ),
    ),
  };
}

/** What is seen on each, in order; none when one of them shows nothing that stands out, or all show the same. */
function differences(variants: readonly Variant[], feature: Feature): readonly string[] {
  if (feature.kind === "date") return [byItsDate];
  const seen = variants.flatMap((variant) => sayClaimBriefly(feature, variant.tells[feature.id]) ?? []);
  return seen.length === variants.length && new Set(seen).size > 1 ? seen : [];
}
