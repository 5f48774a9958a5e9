/** A wish to be erased: kept with the turn that made it and carried out before the reply, so that a crash in between leaves it to be done. */
import { z } from "zod";

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
    at: z.number(),
  })
  .readonly();
export type Erasure = z.output<typeof Erasure>;

/** The state is null once it is done. */
export const erasureKind = { kind: "erasure", shape: Erasure } as const;
