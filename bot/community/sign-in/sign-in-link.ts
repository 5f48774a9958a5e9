/** A link that signs somebody in to the pages once, within ten minutes. What is kept does not give it away. */
import { z } from "zod";
import { textDigest } from "../../../knowledge/index.ts";
import { standings } from "../../message.ts";

/** Who comes by a link. */
export const Guest = z
  .strictObject({
    /** An id of the platform they come from. */
    person: z.string().min(1).max(200),
    community: z.string().min(1).max(120),
    /** What their platform vouched for when the link was made; roles given by invitation count beside it. */
    standing: z.enum(standings),
    name: z.string().max(80).exactOptional(),
  })
  .readonly();
export type Guest = z.output<typeof Guest>;

export const SignInLink = z
  .strictObject({
    guest: Guest,
    /** Milliseconds since 1970, universal time. */
    until: z.number(),
    isUsed: z.boolean(),
  })
  .readonly();
export type SignInLink = z.output<typeof SignInLink>;

export const signInLinkKind = { kind: "sign-in-link", shape: SignInLink } as const;

const lifeMilliseconds = 10 * 60_000;

/** The record's id within the community. */
export function signInLinkId(secret: string): string {
  return textDigest(secret);
}

export function newSignInLink(guest: Guest, at: number): SignInLink {
  return { guest, until: at + lifeMilliseconds, isUsed: false };
}

/** Where it leads on the pages. */
export function signInPath(community: string, secret: string): string {
  return `/sign-in/${encodeURIComponent(community)}/${secret}`;
}
