/** Observations as "export observations as json" writes them, back into records: whole, but held against the handbooks that serve here. */
import { z } from "zod";
import type { CommunityScene } from "../affair.ts";
import { faults as words } from "../phrases/observations.ts";
import { recordIdOf, recordIdPattern } from "../record-id.ts";
import type { FoundRows } from "./found-rows.ts";
import { Observation } from "./observation.ts";

const idShape = new RegExp(`^${recordIdPattern}$`, "iu");

/** Those that cannot be read are named by their place in the list, from 1. */
export function readJson(scene: CommunityScene, text: string): FoundRows {
  const list = listIn(text);
  if (!Array.isArray(list)) return { rows: [], faults: [{ place: words.wholeText, fault: words.noList }] };
  const read = list.map((one: unknown, at) => ({ place: words.listed(at + 1), read: readOne(scene, one) }));
  return {
    rows: read.flatMap((one) => ("fault" in one.read ? [] : [one.read])),
    faults: read.flatMap(({ place, read: one }) => ("fault" in one ? [{ place, fault: one.fault }] : [])),
  };
}

function listIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (failure) {
    if (failure instanceof SyntaxError) return undefined;
    throw failure;
  }
}

function readOne(
  scene: CommunityScene,
  one: unknown,
): FoundRows["rows"][number] | { readonly fault: string } {
  const named = z.looseObject({ id: z.string().regex(idShape) }).safeParse(one);
  if (!named.success) return { fault: words.field("id") };
  const { id, ...rest } = named.data;
  const parsed = Observation.safeParse(rest);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const unknown = issue?.code === "unrecognized_keys" ? issue.keys : [];
    return { fault: words.field([...(issue?.path ?? []), ...unknown.slice(0, 1)].join(".")) };
  }
  const fault = strangeIn(scene, parsed.data);
  return fault === undefined ? { id: recordIdOf(id), observation: parsed.data } : { fault };
}

/** What the handbooks here do not know of. */
function strangeIn({ served }: CommunityScene, { saw, kinds }: Observation): string | undefined {
  const handbook = served.find((one) => one.handbook.cover.id === saw.handbook)?.handbook;
  if (handbook === undefined) return words.handbook(saw.handbook);
  const part = handbook.parts.find(({ id }) => id === saw.part);
  if (part === undefined) return words.part(saw.part);
  const named = [...(saw.variant === null ? [] : [saw.variant]), ...kinds.map(({ variant }) => variant)];
  const strange = named.find((kind) => part.variants.every(({ id }) => id !== kind));
  if (strange !== undefined) return words.kind(strange);
  const { model, trim, market, built } = saw.car;
  if (built !== undefined && built.to <= built.from) return words.backwards;
  const { models, trims, markets } = handbook.cars;
  const isKnown = (list: readonly { readonly id: string }[], id: string) => list.some((one) => one.id === id);
  if (model !== undefined && !isKnown(models, model)) return words.car(model);
  if (trim !== undefined && !isKnown(trims, trim)) return words.car(trim);
  return market === undefined || isKnown(markets, market) ? undefined : words.car(market);
}
