/**
 * The keeper of members' photographs: takes them in without metadata, gives them out, forgets them. They lie in the community's memory like
 * everything else, as text, so that both databases, backups and erasing hold for them too; a folder of files would need all that again.
 */
import { createHash } from "node:crypto";
import { z } from "zod";
import { type Clock, type PhotographRefusal, photographRefusals, type Store } from "../../bot/index.ts";
import { OutsideError } from "../errors.ts";
import { developed } from "./developed.ts";

const KIND = "photograph";
const MEDIA_TYPE = "image/jpeg";

/** `by`: who sent it, and may have it forgotten. A photograph that is forgotten is null. */
const Photograph = z
  .strictObject({ by: z.array(z.string()).readonly(), mediaType: z.literal(MEDIA_TYPE), base64: z.base64() })
  .readonly()
  .nullish();
type Photograph = z.output<typeof Photograph>;

export type Taken =
  | { readonly ok: true; readonly id: string }
  /** `message` is a sentence for whoever sent it. */
  | { readonly ok: false; readonly problem: { readonly code: PhotographRefusal; readonly message: string } };

export interface PhotographKeeper {
  /** The id under which the photograph is kept; the same pixels have the same, whoever sends them. `by`: a person's id. */
  take(bytes: Uint8Array, by: string): Promise<Taken>;
  /** Undefined of one that never was or is forgotten. */
  read(id: string): Promise<{ readonly bytes: Uint8Array; readonly mediaType: string } | undefined>;
  /**
   * Lets go of a photograph for one who sent it: it is gone once all have who did. For everybody: gone at once, for keepers to ask.
   * Only its history still has it then, until that is erased.
   */
  forget(id: string, by: string, why: string, whose?: "own" | "everybody"): Promise<void>;
}

export function photographKeeper(store: Store, clock: Clock): PhotographKeeper {
  /** Settled once none is being developed: one at a time, since a large one takes 200 MB. */
  let isFree: Promise<unknown> = Promise.resolve();

  async function kept(id: string): Promise<Photograph> {
    return parsed(id, await store.current(KIND, id));
  }

  async function keep(id: string, by: string, base64: string): Promise<void> {
    if ((await kept(id))?.by.includes(by)) return;
    const change = { kind: KIND, id, by, at: clock.milliseconds(), why: "photograph taken in" };
    await store.advance(change, (state) => {
      const holders = parsed(id, state)?.by.filter((holder) => holder !== by) ?? [];
      return { state: { by: [...holders, by], mediaType: MEDIA_TYPE, base64 }, outcome: null };
    });
  }

  return {
    async take(bytes, by) {
      const turn = isFree.then(() => developed(bytes));
      isFree = turn.catch(() => undefined);
      const result = await turn;
      if (!result.ok) {
        return { ok: false, problem: { code: result.refusal, message: photographRefusals[result.refusal] } };
      }
      const id = createHash("sha256").update(result.jpeg).digest("hex").slice(0, 32);
      await keep(id, by, Buffer.from(result.jpeg).toString("base64"));
      return { ok: true, id };
    },

    async read(id) {
      const photograph = await kept(id);
      if (!photograph) return undefined;
      const bytes = new Uint8Array(Buffer.from(photograph.base64, "base64"));
      return { bytes, mediaType: photograph.mediaType };
    },

    async forget(id, by, why, whose = "own") {
      const isHeld = (photograph: Photograph) =>
        whose === "everybody" || photograph?.by.includes(by) === true;
      const before = await kept(id);
      if (!before || !isHeld(before)) return;
      await store.advance({ kind: KIND, id, by, at: clock.milliseconds(), why }, (state) => {
        const photograph = parsed(id, state);
        const left = photograph?.by.filter((holder) => holder !== by) ?? [];
        const isGone = !photograph || whose === "everybody" || left.length === 0;
        return { state: isGone ? null : { ...photograph, by: left }, outcome: null };
      });
    },
  };
}

function parsed(id: string, state: unknown): Photograph {
  const result = Photograph.safeParse(state);
  if (result.success) return result.data;
  throw new OutsideError(`photograph ${id}: what is kept of it is damaged`, result.error);
}
