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

/** `by`: who sent it, and may have it forgotten. */
const Photograph = z
  .strictObject({ by: z.array(z.string()).readonly(), mediaType: z.literal(MEDIA_TYPE), base64: z.base64() })
  .readonly()
  .optional();
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
   * Takes the photograph from one who sent it, and erases it once all have let go; `from` left out: from everybody, at once. What was erased
   * is in no file of the store. Does nothing when it is not kept or not theirs.
   */
  forget(id: string, asked: Forgetting): Promise<void>;
}

export interface Forgetting {
  /** Who asks, as the record shall name them. */
  readonly by: string;
  readonly why: string;
  readonly from?: string;
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
      if (photograph === undefined) return undefined;
      const bytes = new Uint8Array(Buffer.from(photograph.base64, "base64"));
      return { bytes, mediaType: photograph.mediaType };
    },

    async forget(id, { by, why, from }) {
      const photograph = await kept(id);
      if (photograph === undefined) return;
      if (from !== undefined && !photograph.by.includes(from)) return;
      await store.erase(
        { kind: KIND, id, by, at: clock.milliseconds(), why },
        (state) => without(from, parsed(id, state)),
        { by: (who) => (from === undefined || who === from ? "" : who) },
      );
    },
  };
}

/** Undefined: nobody who sent it is left. */
function without(from: string | undefined, photograph: Photograph): Photograph {
  if (photograph === undefined || from === undefined) return undefined;
  const left = photograph.by.filter((holder) => holder !== from);
  return left.length === 0 ? undefined : { ...photograph, by: left };
}

function parsed(id: string, state: unknown): Photograph {
  const result = Photograph.safeParse(state);
  if (result.success) return result.data;
  throw new OutsideError(`photograph ${id}: what is kept of it is damaged`, result.error);
}
