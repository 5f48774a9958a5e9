/** A wish to be erased: kept with the turn that made it and carried out before the reply, so that a crash in between leaves it to be done. */
import { z } from "zod";

const KeptRecord = z.strictObject({ kind: z.string(), id: z.string() });

export const Erasure = z
  .strictObject({
    person: z.string(),
    /** Their sightings stay, without their name, words and photographs. */
    keepsSightings: z.boolean(),
    conversations: z.array(z.string()).readonly(),
    observations: z.array(z.string()).readonly(),
    pins: z.array(z.string()).readonly(),
    handedOver: z.array(z.string()).readonly(),
    shares: z.array(z.string()).readonly(),
    /** What they were called here; of an erasure that an earlier version of this program began, none. */
    names: z.array(z.string()).readonly().default([]),
    at: z.number(),
    /** Found when it is begun: records of others that they have changed, and people who may have been shown what was theirs. */
    found: z
      .strictObject({ changed: z.array(KeptRecord).readonly(), readers: z.array(z.string()).readonly() })
      .readonly()
      .exactOptional(),
  })
  .readonly();
export type Erasure = z.output<typeof Erasure>;

/** The state is null once it is done. */
export const erasureKind = { kind: "erasure", shape: Erasure } as const;
