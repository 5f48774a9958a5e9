/**
 * Which deliveries of a source were answered lately: one that comes again then is a replay and is refused. Kept in the store, so that of
 * several processes, and after a restart, each counts once; for longer than its signature is good for. Noted once the answer is there: a
 * delivery that was lost on the way to it comes again under its own id, and would else be refused for good.
 */
import { z } from "zod";
import type { Clock, Store } from "../../bot/index.ts";

const Deliveries = z.strictObject({ seen: z.array(z.strictObject({ id: z.string(), at: z.number() })) });

const KIND = "webhook-deliveries";
/** Twice the five minutes either way in which a signature is taken. */
const KEPT_MILLISECONDS = 20 * 60_000;

/** Of two that come at once neither was answered yet; both are given the same reply, and the post is heard once. */
export async function wasAnswered(store: Store, clock: Clock, source: string, id: string): Promise<boolean> {
  const seen = seenAt(clock.milliseconds(), await store.current(KIND, source));
  return seen.some((one) => one.id === id);
}

export async function noteAnswered(store: Store, clock: Clock, source: string, id: string): Promise<void> {
  const at = clock.milliseconds();
  const change = { kind: KIND, id: source, by: `forum:${source}`, at, why: "answered" };
  await store.advance(change, (state) => {
    const others = seenAt(at, state).filter((one) => one.id !== id);
    return { state: { seen: [...others, { id, at }] }, outcome: null };
  });
}

function seenAt(at: number, state: unknown): z.output<typeof Deliveries>["seen"] {
  const parsed = Deliveries.safeParse(state);
  return (parsed.success ? parsed.data.seen : []).filter((one) => at - one.at < KEPT_MILLISECONDS);
}
