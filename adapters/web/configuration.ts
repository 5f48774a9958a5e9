/** What the environment may say of the pages: where they are reached from outside, and which forums may send posts. */
import { z } from "zod";

/** An origin, without a slash at the end. */
export const PublicAddress = z
  .string()
  .refine(isWebAddress, "an address that begins with https:// or http:// and has no path is needed")
  .transform((address) => new URL(address).origin);

/** Secrets by the name of the forum that signs with them. */
export const WebhookSecrets = z
  .string()
  .transform(secretsOf)
  .refine(
    (secrets) => secrets !== undefined,
    "forum=whsec_… is needed, several separated by commas: a name in small letters, and 24 to 64 bytes in Base64",
  )
  .transform((secrets): ReadonlyMap<string, string> => secrets ?? new Map());

function isWebAddress(text: string): boolean {
  if (!/^https?:\/\/\S+$/u.test(text) || !URL.canParse(text)) return false;
  const { pathname, search, hash, username, password } = new URL(text);
  return pathname === "/" && `${search}${hash}${username}${password}` === "";
}

/** Names with their secrets (Standard Webhooks: "whsec_" and 24 to 64 random bytes in Base64); undefined when one is not so. */
function secretsOf(text: string): ReadonlyMap<string, string> | undefined {
  const entries = text.split(/[,\s]+/u).filter((entry) => entry !== "");
  const secrets = new Map<string, string>();
  for (const entry of entries) {
    const match = /^([a-z0-9][a-z0-9-]{0,39})=whsec_([A-Za-z0-9+/]{32,88}={0,2})$/u.exec(entry);
    const [, name, secret] = match ?? [];
    if (name === undefined || secret === undefined || secrets.has(name)) return undefined;
    secrets.set(name, `whsec_${secret}`);
  }
  return secrets;
}
