/** "show the sources": the long citations behind what was said of the facts and the first two variants. */
import { needsPart, noSourcesNamed, sourcesOfHandbook } from "../conversation/phrases/commands.ts";
import { sourcesBehind } from "../conversation/saying/sources-behind.ts";
import { sourcesBlock } from "../conversation/saying/sources-of.ts";
import type { Block } from "../reply.ts";
import type { Scene } from "./scene.ts";

export function showSources(scene: Scene): readonly Block[] {
  const { assessed, knowledge, question } = scene;
  if (assessed === undefined) return [{ kind: "text", text: needsPart }];
  const block = sourcesBlock(knowledge.handbook, sourcesBehind(assessed, question));
  if (block === undefined) return [{ kind: "text", text: noSourcesNamed }];
  return [{ kind: "text", text: sourcesOfHandbook }, block];
}
