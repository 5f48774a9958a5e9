/**
 * A link that signs a keeper in once and within ten minutes. What stands in the link is random; the store has its digest. Opening the
 * link only shows a button: programs that look at links in chats must not use it up.
 */
import { z } from "zod";
import type { Clock, Store } from "../../bot/index.ts";
import { digestOf, newSecret, secretForm } from "./secrets.ts";
import { Guest } from "./sessions.ts";

const Link = z.strictObject({ guest: Guest, until: z.number(), isUsed: z.boolean() });

const KIND = "sign-in-link";
const LIFE_MILLISECONDS = 10 * 60_000;

/** A new link's path. */
export async function newSignInPath(store: Store, clock: Clock, guest: Guest): Promise<string> {
  const secret = newSecret();
  const at = clock.milliseconds();
  const change = { kind: KIND, id: digestOf(secret, "sign-in"), by: guest.person, at, why: "link asked for" };
  const state = { guest, until: at + LIFE_MILLISECONDS, isUsed: false };
  await store.advance(change, () => ({ state, outcome: null }));
  return `/sign-in/${secret}`;
}

/** Whose link it is, once: the second time, too late, or for a link that never was, undefined. */
export async function useSignInLink(store: Store, clock: Clock, secret: string): Promise<Guest | undefined> {
  if (!secretForm.test(secret)) return undefined;
  const id = digestOf(secret, "sign-in");
  if ((await store.current(KIND, id)) === undefined) return undefined;
  const at = clock.milliseconds();
  const change = { kind: KIND, id, by: "web", at, why: "used" };
  const guest = await store.advance(change, (state) => {
    const parsed = Link.safeParse(state);
    const isGood = parsed.success && !parsed.data.isUsed && parsed.data.until >= at;
    if (!isGood) return { state, outcome: null };
    return { state: { ...parsed.data, isUsed: true }, outcome: parsed.data.guest };
  });
  return guest ?? undefined;
}
