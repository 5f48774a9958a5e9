/**
 * A keeper's session: a new random secret each time somebody signs in, so that one who knew the cookie before knows nothing after. The
 * store has its digest, whose it is and until when; signing out ends it there too.
 */
import type { Context } from "hono";
import { z } from "zod";
import { Guest } from "../../bot/index.ts";
import { giveSecret, secretIn, takeSecret } from "./cookies.ts";
import { digestOf, newSecret } from "./secrets.ts";
import type { Site } from "./site.ts";

const Session = z.strictObject({ guest: Guest, until: z.number(), isEnded: z.boolean() });

export interface OpenSession {
  readonly guest: Guest;
  /** Goes with every form of the session. */
  readonly formToken: string;
  /** Stands for it in the store and names its conversation. */
  readonly id: string;
}

const KIND = "web-session";
const LIFE_MILLISECONDS = 12 * 3_600_000;

/** Opens a session and gives its cookie; one that this browser had before is ended. */
export async function openSession(context: Context, site: Site, guest: Guest): Promise<void> {
  await endSession(context, site);
  const secret = newSecret();
  const at = site.clock.milliseconds();
  const change = { kind: KIND, id: digestOf(secret, "session"), by: guest.person, at, why: "signed in" };
  const state = { guest, until: at + LIFE_MILLISECONDS, isEnded: false };
  await site.store.advance(change, () => ({ state, outcome: null }));
  giveSecret(context, "session", secret, site.isSecure);
}

/** The session of a request; undefined without one, or when it has run out or was ended. */
export async function sessionOf(context: Context, site: Site): Promise<OpenSession | undefined> {
  const secret = secretIn(context, "session", site.isSecure);
  if (secret === undefined) return undefined;
  const id = digestOf(secret, "session");
  const parsed = Session.safeParse(await site.store.current(KIND, id));
  if (!parsed.success || parsed.data.isEnded || parsed.data.until < site.clock.milliseconds())
    return undefined;
  return { guest: parsed.data.guest, id, formToken: digestOf(secret, "form") };
}

/** Ends the session of a request, here and in the store. */
export async function endSession(context: Context, site: Site): Promise<void> {
  const session = await sessionOf(context, site);
  if (session === undefined) return;
  const at = site.clock.milliseconds();
  const change = { kind: KIND, id: session.id, by: session.guest.person, at, why: "signed out" };
  await site.store.advance(change, (state) => {
    const parsed = Session.safeParse(state);
    return { state: parsed.success ? { ...parsed.data, isEnded: true } : state, outcome: null };
  });
  takeSecret(context, "session", site.isSecure);
}
