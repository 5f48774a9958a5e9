/**
 * Secrets that are handed out (visitors, sessions, links, shared pages) and what is kept of them: a digest, so that whoever reads the
 * store cannot use them. They are random and long, so a plain digest does; passwords, which need more, are not used here.
 */
import { createHash, randomBytes, timingSafeEqual } from "node:crypto";

/** 256 random bits, as 43 characters that fit an address. */
export function newSecret(): string {
  return randomBytes(32).toString("base64url");
}

/** 128 random bits, as 22 characters: an address that is meant to be passed on, and cannot be guessed. */
export function newAddressId(): string {
  return randomBytes(16).toString("base64url");
}

export const secretForm = /^[A-Za-z0-9_-]{43}$/u;
export const addressIdForm = /^[A-Za-z0-9_-]{22}$/u;

/** What stands for a secret in the store; `purpose` keeps the digests of one use from serving for another. */
export function digestOf(secret: string, purpose: string): string {
  return createHash("sha256").update(`${purpose}:${secret}`).digest("base64url");
}

/** Takes the same time wherever two texts differ. */
export function isSameSecret(one: string, other: string): boolean {
  const bytes = [one, other].map((text) => createHash("sha256").update(text).digest());
  const [first, second] = bytes;
  return first !== undefined && second !== undefined && timingSafeEqual(first, second);
}
