/** "what would fit without drilling?": by the mounting the car left the works with, from the handbook's tried pairs. */
import type { PartKind } from "../../knowledge/index.ts";
import { sayProbability } from "../../knowledge/index.ts";
import { asBuiltShares } from "../conversation/assess.ts";
import type { Assessed } from "../conversation/assessed.ts";
import { needsPart } from "../conversation/phrases/commands.ts";
import { listed } from "../conversation/phrases/grammar.ts";
import {
  doesNotGo,
  fitLine,
  fitsForLid,
  fitsForSeveral,
  fitsUnknown,
  mountingShare,
  needsLine,
  nothingGoesOn,
  withoutDrilling,
  withWork,
} from "../conversation/phrases/variants.ts";
import { cautionsBlock } from "../conversation/saying/say-cautions.ts";
import { saysNoneFitted } from "../conversation/saying/say-standing.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

/** From here on the car's own mounting alone is answered for; below it each mounting that is likely enough. */
const sureOfMounting = 0.9;
const worthAnswering = 0.05;

type Mounting = PartKind["mountings"][number];

export function whatFits(scene: Scene): readonly Block[] {
  const { assessed } = scene;
  if (assessed === undefined) return [{ kind: "text", text: needsPart }];
  const shares = mountingShares(assessed);
  const [first] = shares;
  if (first === undefined) return [{ kind: "text", text: saysNoneFitted(assessed) ?? fitsUnknown }];
  const isSure = first.share >= sureOfMounting;
  const told = isSure ? [first] : shares.filter((one) => one.share >= worthAnswering);
  const lead: Block = {
    kind: "text",
    text: isSure
      ? fitsForLid(first.mounting.name, sayProbability(first.share))
      : fitsForSeveral(told.map(shareLine).join("; ")),
  };
  const warned = new Set<string>();
  return [lead, ...told.flatMap(({ mounting }) => fitsOn(assessed.part, mounting, warned))];
}

function shareLine({ mounting, share }: { readonly mounting: Mounting; readonly share: number }): string {
  return mountingShare(mounting.name, sayProbability(share));
}

/** Which mounting the car was built with, from the as-built mix; the likeliest first. */
function mountingShares(
  assessed: Assessed,
): readonly { readonly mounting: Mounting; readonly share: number }[] {
  const { part } = assessed;
  const shares = asBuiltShares(assessed.compiled, assessed.facts);
  return part.mountings
    .map((mounting) => ({
      mounting,
      share: part.variants
        .filter((variant) => variant.mounting === mounting.id)
        .reduce((sum, variant) => sum + (shares.get(variant.id) ?? 0), 0),
    }))
    .filter((one) => one.share > 0)
    .toSorted((one, other) => other.share - one.share);
}

/** `warned`: cautions that stand further up already; those said here are added. */
function fitsOn(part: PartKind, mounting: Mounting, warned: Set<string>): readonly Block[] {
  const by = (fit: "direct" | "with-work" | "no") => pairsOn(part, mounting, fit);
  const direct = by("direct");
  const worked = by("with-work");
  const not = by("no");
  return [
    freshCautions(direct, warned),
    direct.length === 0
      ? ({ kind: "text", text: nothingGoesOn(mounting.name) } as const)
      : list(withoutDrilling(mounting.name), [...direct.map(pairLine), ...needs(part, direct)]),
    freshCautions(worked, warned),
    worked.length === 0 ? undefined : list(withWork(mounting.name), worked.map(pairLine)),
    not.length === 0 ? undefined : list(doesNotGo(mounting.name), notLines(not)),
  ].filter((block) => block !== undefined);
}

/** What the handbook gives a reason for, with it, for it may be a warning; the others in one line. */
function notLines(pairs: readonly Pair[]): readonly string[] {
  const silent = pairs.filter(({ how }) => how === "").flatMap(({ names }) => names);
  const reasoned = pairs.filter(({ how }) => how !== "").map(pairLine);
  return silent.length === 0 ? reasoned : [...reasoned, listed(silent)];
}

function freshCautions(pairs: readonly Pair[], warned: Set<string>): Block | undefined {
  const fresh = pairs.flatMap((pair) => pair.cautions).filter((caution) => !warned.has(caution));
  for (const caution of fresh) warned.add(caution);
  return cautionsBlock(fresh);
}

interface Pair {
  readonly names: readonly string[];
  readonly variants: readonly string[];
  readonly how: string;
  readonly cautions: readonly string[];
}

// Like the identification: the same mounting fits directly, a pair that is not named does not fit.
function pairsOn(part: PartKind, mounting: Mounting, fit: "direct" | "with-work" | "no"): readonly Pair[] {
  return part.mountings.flatMap((onPart) => {
    const tried = part.fits.find((one) => one.part === onPart.id && one.car === mounting.id);
    const known = tried?.fit ?? (onPart.id === mounting.id ? "direct" : "no");
    const variants = part.variants.filter((variant) => variant.mounting === onPart.id);
    if (known !== fit || variants.length === 0) return [];
    return [
      {
        names: variants.map((variant) => variant.name),
        variants: variants.map((variant) => variant.id),
        how: tried?.how ?? "",
        cautions: tried?.cautions ?? [],
      },
    ];
  });
}

function pairLine(pair: Pair): string {
  return fitLine(listed(pair.names), pair.how);
}

function needs(part: PartKind, pairs: readonly Pair[]): readonly string[] {
  const ids = pairs.flatMap((pair) => pair.variants);
  return part.variants
    .filter((variant) => ids.includes(variant.id) && variant.needs.length > 0)
    .map((variant) => needsLine(variant.name, listed(variant.needs)));
}

function list(lead: string, items: readonly string[]): Block {
  return { kind: "list", lead, items };
}
