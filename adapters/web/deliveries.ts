/**
 * Which deliveries a source has made lately: one that comes again is a replay and is refused. Kept in the store, so that of several
 * processes, and after a restart, each delivery counts once; for longer than its signature is good for.
 */
import { z } from "zod";
import type { Clock, Store } from "../../bot/index.ts";

const Deliveries = z.strictObject({ seen: z.array(z.strictObject({ id: z.string(), at: z.number() })) });

const KIND = "webhook-deliveries";
/** Twice the five minutes either way in which a signature is taken. */
const KEPT_MILLISECONDS = 20 * 60_000;

/** True the first time; false for a delivery that was made before. */
export async function isFirstDelivery(
  store: Store,
  clock: Clock,
  source: string,
  id: string,
): Promise<boolean> {
  const at = clock.milliseconds();
  return store.advance({ kind: KIND, id: source, by: `forum:${source}`, at, why: "delivered" }, (state) => {
    const parsed = Deliveries.safeParse(state);
    const seen = (parsed.success ? parsed.data.seen : []).filter((one) => at - one.at < KEPT_MILLISECONDS);
    const isFirst = !seen.some((one) => one.id === id);
    return { state: { seen: isFirst ? [...seen, { id, at }] : seen }, outcome: isFirst };
  });
}
