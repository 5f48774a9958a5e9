/** "which kinds are there?": all variants of a part with where they come from and what they are. */
import { findPart } from "../conversation/knowledge.ts";
import { compareNeedsPart, kindsCaption, kindsHead } from "../conversation/phrases/variants.ts";
import { whereItComesFrom } from "../conversation/saying/say-variant.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

export function listKinds(scene: Scene, partId: string | null): readonly Block[] {
  const part = findPart(scene.knowledge, partId) ?? scene.assessed?.part;
  if (part === undefined) return [{ kind: "text", text: compareNeedsPart }];
  return [
    {
      kind: "table",
      caption: kindsCaption(part.name, part.variants.length),
      head: kindsHead,
      rows: part.variants.map((variant) => [variant.name, whereItComesFrom(variant), variant.summary]),
    },
  ];
}
