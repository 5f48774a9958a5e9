/** Links that sign a keeper in once: used by the pages, and made by whoever runs the program with its command. */
import { randomBytes } from "node:crypto";
import {
  type Clock,
  type Guest,
  newSignInLink,
  SignInLink,
  type Store,
  signInLinkId,
  signInLinkKind,
  signInPath,
} from "../../bot/index.ts";

const secretForm = /^[0-9a-f]{64}$/u;
const communityForm = /^[\w.:-]{1,120}$/u;
const { kind } = signInLinkKind;

/** A new link's path, for somebody whom the owner of the program names. */
export async function makeSignInPath(store: Store, clock: Clock, guest: Guest): Promise<string> {
  const secret = randomBytes(32).toString("hex");
  const at = clock.milliseconds();
  const id = `${guest.community}/${signInLinkId(secret)}`;
  const state = newSignInLink(guest, at);
  await store.advance({ kind, id, by: guest.person, at, why: "link made" }, () => ({ state, outcome: null }));
  return signInPath(guest.community, secret);
}

/** Whose link it is, once: the second time, too late, or for a link that never was, undefined. */
export async function takeSignInLink(
  store: Store,
  clock: Clock,
  community: string,
  secret: string,
): Promise<Guest | undefined> {
  if (!secretForm.test(secret) || !communityForm.test(community)) return undefined;
  const id = `${community}/${signInLinkId(secret)}`;
  if ((await store.current(kind, id)) === undefined) return undefined;
  const at = clock.milliseconds();
  const guest = await store.advance({ kind, id, by: "web", at, why: "used" }, (state) => {
    const parsed = SignInLink.safeParse(state);
    const isGood = parsed.success && !parsed.data.isUsed && parsed.data.until >= at;
    if (!isGood) return { state, outcome: null };
    return { state: { ...parsed.data, isUsed: true }, outcome: parsed.data.guest };
  });
  return guest ?? undefined;
}
